import { createBook } from '../book/book.ts';
import { readBook } from '../book/form/read.ts';
import type { Refusal } from '../book/types.ts';
import { connectEngine, isFunction, valuesFor } from '../engine/index.ts';
import { readForeign, type Imported } from '../files/in/read.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { filesOf, type OutFile, type OutForm } from '../files/out/forms.ts';
import { words } from '../words/words.ts';

/** A file to read, or a book to write in the form of other programs. */
export type ExchangeTask =
  | {
      readonly kind: 'read';
      readonly file: File;
      readonly decimal?: '.' | ',';
    }
  | {
      readonly kind: 'write';
      /** The text of its file. */
      readonly book: string;
      readonly form: OutForm;
      readonly formulas: 'live' | 'values';
    };

export type ExchangeAnswer =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'read'; readonly imported: Imported }
  | { readonly kind: 'written'; readonly files: readonly OutFile[] }
  | ({ readonly kind: 'refused' } & Refusal);

const answer = (message: ExchangeAnswer) => postMessage(message);

async function read({ file, decimal }: Extract<ExchangeTask, { kind: 'read' }>): Promise<void> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const result = readForeign(bytes, file.name, { isFunction, ...(decimal && { decimal }) });
  if (result.ok) answer({ kind: 'read', imported: result.imported });
  else answer({ kind: 'refused', ...result });
}

async function write(task: Extract<ExchangeTask, { kind: 'write' }>): Promise<void> {
  const { book, form, formulas } = task;
  const opened = readBook(book);
  if (!opened.ok) return answer({ kind: 'refused', ...opened });
  const { document } = opened;
  const engine = connectEngine(createBook(document), {
    clock: () => new Date(),
    chance: Math.random,
    fixtures: fixturesIn,
    spectra: spectraIn,
  });
  const progress = (share: number) => answer({ kind: 'progress', share });
  const files = await filesOf(document, valuesFor(document, engine), form, { formulas, progress });
  answer({ kind: 'written', files });
}

export function take(task: ExchangeTask): void {
  const reason = task.kind === 'read' ? words.exchange.notRead : words.exchange.notWritten;
  void (task.kind === 'read' ? read(task) : write(task)).catch(() =>
    answer({ kind: 'refused', ok: false, reason }),
  );
}
