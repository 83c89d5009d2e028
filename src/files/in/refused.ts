import type { Refusal } from '../../book/types.ts';
import { words } from '../../words/words.ts';

/** Ends the reading of a file. The message is a sentence for people. */
export class Refused extends Error {}

/** What is taken at most from a file of another program: more would fill the memory of a phone. */
export const most = {
  /** Bytes of the file as it lies there. */
  packed: 50_000_000,
  /** Bytes of its parts together, unpacked. */
  unpacked: 200_000_000,
  /** Unpacked to packed, once more than a megabyte has come out: text packs to a tenth. */
  ratio: 250,
  parts: 5_000,
  sheets: 200,
  cells: 300_000,
  /** Elements within each other. */
  depth: 60,
} as const;

const kept = words.files.nothingTaken;

/** Runs what reads a file: whatever it comes upon becomes one sentence. */
export function reading<Result>(
  read: () => Result,
): { readonly ok: true; readonly result: Result } | Refusal {
  try {
    return { ok: true, result: read() };
  } catch (fault) {
    if (fault instanceof Refused) return { ok: false, reason: `${fault.message} ${kept}` };
    return { ok: false, reason: words.files.damaged(kept) };
  }
}
