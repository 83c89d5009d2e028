import { isFunction, valuesFor } from '../../src/engine/index.ts';
import type { Document } from '../../src/book/types.ts';
import { newBookFrom } from '../../src/files/in/newBook.ts';
import { readForeign } from '../../src/files/in/read.ts';
import { filesOf, type OutForm } from '../../src/files/out/forms.ts';
import { countingMeans, type openBook } from '../unit/engine/support/openBook.ts';

/** The book that comes of a book which went out as a file of another program and in again. */
export async function throughFile(
  { document, engine }: Pick<ReturnType<typeof openBook>, 'document' | 'engine'>,
  form: OutForm,
): Promise<Document> {
  const [file] = await filesOf(document, valuesFor(document, engine), form, { formulas: 'live' });
  const content = file?.content ?? '';
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const read = readForeign(bytes, `walk.${form}`, { isFunction });
  if (!read.ok) throw new Error(read.reason);
  const made = newBookFrom(read.imported, countingMeans());
  if (!made.ok) throw new Error(made.reason);
  return made.document;
}
