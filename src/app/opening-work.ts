import type { BookJson } from '../book/form/bookschema.ts';
import { checkBook } from '../book/form/read.ts';
import type { Refusal } from '../book/types.ts';
import { words } from '../words/words.ts';

export type OpeningAnswer =
  { readonly kind: 'checked'; readonly json: BookJson } | ({ readonly kind: 'refused' } & Refusal);

/** Looks a file of a book over, down to the last formula. */
export async function answerTo(file: Blob): Promise<OpeningAnswer> {
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return { kind: 'refused', ok: false, reason: words.bookFile.gone };
  const checked = checkBook(text);
  return checked.ok ? { kind: 'checked', json: checked.json } : { kind: 'refused', ...checked };
}

export function take(file: File): void {
  void answerTo(file).then((answer) => postMessage(answer), reportError);
}
