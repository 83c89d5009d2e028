import { bookFrom } from '../book/form/read.ts';
import type { Document, Refusal } from '../book/types.ts';
import { waitingBox } from '../panels/files/waiting.ts';
import { longWork } from './long-work.ts';
import type { OpeningAnswer } from './opening-work.ts';
import { words } from '../words/words.ts';

/** Megabytes of a book as a file: some hundred photos in it, or a million cells. */
const most = 100;

const stopped: Refusal = { ok: false, reason: words.exchange.stopped };
const failed: Refusal = { ok: false, reason: words.exchange.tooMuch };

/** Reads a file of a book. It is parsed and looked over on a thread of its own, and can be stopped. */
export async function readApart(
  file: File,
): Promise<{ readonly ok: true; readonly document: Document } | Refusal> {
  if (file.size > most * 1e6) return { ok: false, reason: words.bookFile.larger(most) };
  const worker = new Worker(new URL('./opening.worker.ts', import.meta.url), { type: 'module' });
  const reading = longWork<OpeningAnswer, Refusal>(worker, file, () => undefined, {
    stopped,
    failed,
  });
  const done = waitingBox(
    words.bookFile.opening,
    words.exchange.reading(file.name),
    reading.cancel,
  );
  const answer = await reading.result.finally(done);
  return 'json' in answer ? bookFrom(answer.json) : answer;
}
