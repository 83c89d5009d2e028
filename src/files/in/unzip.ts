import { Unzip, UnzipInflate } from 'fflate';
import { most, Refused } from './refused.ts';
import { words } from '../../words/words.ts';

const slice = 32_768;
const free = 1_000_000;

/** What is unpacked at most; see `most`. */
export type UnzipLimits = Readonly<Record<'packed' | 'unpacked' | 'ratio' | 'parts', number>>;

/** The parts of a packed file, and the names of those that were left as they are. */
export interface Unzipped {
  readonly parts: ReadonlyMap<string, Uint8Array>;
  readonly others: readonly string[];
}

/**
 * Unpacks the parts that are wanted, a slice at a time, and counts what comes out: what a file says
 * of its own size is not believed.
 */
export function unzip(
  bytes: Uint8Array,
  wanted: (name: string) => boolean,
  limits: UnzipLimits = most,
): Unzipped {
  if (bytes.length > limits.packed) throw new Refused(words.files.largerThan50);
  const found = new Map<string, Uint8Array[]>();
  const others: string[] = [];
  let out = 0;
  let given = 0;
  const count = (size: number) => {
    out += size;
    if (out > limits.unpacked || (out > free && out > limits.ratio * given))
      throw new Refused(words.files.unpacksTooFar);
  };
  const unzipper = new Unzip((file) => {
    if (found.size + others.length >= limits.parts) throw new Refused(words.files.tooManyParts);
    if (!wanted(file.name)) {
      others.push(file.name);
      return;
    }
    if (found.has(file.name)) throw new Refused(words.files.partTwice);
    const chunks: Uint8Array[] = [];
    found.set(file.name, chunks);
    file.ondata = (fault, chunk) => {
      if (fault) throw fault;
      count(chunk.length);
      chunks.push(chunk);
    };
    file.start();
  });
  unzipper.register(UnzipInflate);
  for (let at = 0; at < bytes.length; at += slice) {
    given = Math.min(bytes.length, at + slice);
    unzipper.push(bytes.subarray(at, given), given === bytes.length);
  }
  return { parts: new Map([...found].map(([name, chunks]) => [name, joined(chunks)])), others };
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
