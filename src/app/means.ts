import { readEntry } from '../../functions/quantities/index.ts';
import { writingSettings } from '../book/settings.ts';
import type { Means } from '../book/types.ts';

const letters = 'abcdefghijklmnopqrstuvwxyz0123456789';

/** Ten letters: among a million ids of one book, two alike come once in some thousand books. */
const idLength = 10;

export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(idLength));
  return Array.from(bytes, (byte) => letters[byte % letters.length]).join('');
}

/** What makers of transactions need of this browser. */
export function createMeans(isFunction: (name: string) => boolean): Means {
  return {
    newId,
    isFunction,
    readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
  };
}
