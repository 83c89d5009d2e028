import { createBook } from '../../book/book.ts';
import { newDocument } from '../../book/newdocument.ts';
import type { Document, Means, Refusal, Settings } from '../../book/types.ts';
import { taking, type Choice } from './build.ts';
import type { Imported } from './read.ts';
import { words } from '../../words/words.ts';

/** A book made of what a file holds, and nothing else. */
export function newBookFrom(
  imported: Imported,
  means: Means,
  {
    choices = new Map<string, Choice>(),
    settings = {},
  }: {
    readonly choices?: ReadonlyMap<string, Choice>;
    readonly settings?: Partial<Settings>;
  } = {},
): { readonly ok: true; readonly document: Document } | Refusal {
  const { book: plain, guessed } = imported;
  const title = plain.title === '' ? words.files.untitledBook : plain.title;
  // The sheet that every new book has makes way, and its name with it.
  const document = newDocument(means, { title, settings, sheet: { name: '-' } });
  const book = createBook(document);
  const [placeholder] = document.sheets;
  const taken = taking(document, means, { book: plain, guessed, choices }, words.files.import);
  const steps = placeholder
    ? [...taken.steps, { kind: 'removeSheet', sheet: placeholder.id } as const]
    : taken.steps;
  const ran = book.run({ ...taken, steps });
  return ran.ok ? { ok: true, document } : ran;
}
