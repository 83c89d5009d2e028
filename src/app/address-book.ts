import { fixturesOf, keyOf } from '../book/fixtures.ts';
import { copyOf } from '../book/content.ts';
import { addFixtures } from '../book/make/fixtures.ts';
import type { Made } from '../book/make/made.ts';
import { placeSheet } from '../book/make/sheets.ts';
import type { Book, Document, Means } from '../book/types.ts';

/** The template of its sheet. */
export const addressBook = 'address-book';

/**
 * Puts into a new book what the planner’s own address book has: the fixtures of its shelf that the
 * book lacks, and its sheet. Gives how many fixtures came; undefined where nothing did.
 */
export function startFrom(
  book: Book,
  own: Document,
  means: Pick<Means, 'newId'>,
): number | undefined {
  const carry = (made: Made): boolean => made.ok && book.run(made.transaction).ok;
  const there = new Set(fixturesOf(book.document).map(({ name }) => keyOf(name)));
  const missing = fixturesOf(own).filter(({ name }) => !there.has(keyOf(name)));
  const came =
    missing.length > 0 && carry(addFixtures(book.document, means, missing)) ? missing.length : 0;
  const sheet = own.sheets.find(({ properties }) => properties.template === addressBook);
  const content = sheet && copyOf(own, sheet.id, means.newId());
  const placed = content ? carry(placeSheet(book.document, content)) : false;
  return placed || came > 0 ? came : undefined;
}
