import { buildBook } from '../../../templates/build.ts';
import type { PlannedSheet } from '../../../templates/plan.ts';
import { copyOf } from '../../book/content.ts';
import { refused } from '../../book/make/made.ts';
import { placeSheet } from '../../book/make/sheets.ts';
import type { Document, Means } from '../../book/types.ts';
import { words } from '../../words/words.ts';

/** A planned sheet at the end of the book: one gesture, taken back by one undo. */
export function makeSheet(
  document: Document,
  means: Means,
  plan: PlannedSheet,
  label: string,
): ReturnType<typeof placeSheet> {
  // Planned with lux, metres and decimal points, and laid into a book of any settings afterwards.
  const built = buildBook({ title: plan.title, sheets: [plan] }, means).document;
  const [sheet] = built.sheets;
  const content = sheet && copyOf(built, sheet.id, means.newId());
  if (!content) return refused(words.book.sheetGone);
  return placeSheet(document, content, document.sheets.length, label);
}
