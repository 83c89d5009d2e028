import type { Refusal } from '../../book/types.ts';
import { readCsv } from '../csv/read.ts';
import { readOds } from '../ods/read.ts';
import { readXlsx } from '../xlsx/read.ts';
import type { Foreign } from './collected.ts';
import { guess, type Guessed } from './guess.ts';
import { withKnownFormulas } from './known.ts';
import { reading, Refused } from './refused.ts';
import { words } from '../../words/words.ts';

/** A file of another program, read and looked at. */
export interface Imported extends Foreign {
  readonly guessed: Guessed;
  /** In tables of text: the decimal sign that was read by. */
  readonly decimal?: '.' | ',';
}

export interface ReadOptions {
  isFunction(name: string): boolean;
  /** For tables of text, where what they say themselves is not what is meant. */
  readonly decimal?: '.' | ',';
}

/** Reads xlsx, ods, CSV or TSV. What it is, its first bytes say. Never throws. */
export function readForeign(
  bytes: Uint8Array,
  fileName: string,
  { isFunction, decimal }: ReadOptions,
): { readonly ok: true; readonly imported: Imported } | Refusal {
  const read = reading(() => {
    const title = fileName.replace(/^.*[/\\]/, '').replace(/\.[^.]*$/, '');
    const found = byKind(bytes, title, decimal);
    const foreign = withKnownFormulas(found, isFunction);
    const sign = 'decimal' in found ? { decimal: found.decimal as '.' | ',' } : {};
    return { ...foreign, guessed: guess(foreign.book), ...sign };
  });
  return read.ok ? { ok: true, imported: read.result } : read;
}

function byKind(bytes: Uint8Array, title: string, decimal: '.' | ',' | undefined): Foreign {
  if (begins(bytes, [0xd0, 0xcf, 0x11, 0xe0])) throw new Refused(words.files.olderForm);
  if (!begins(bytes, [0x50, 0x4b])) return readCsv(bytes, title, decimal);
  return isOds(bytes) ? readOds(bytes, title) : readXlsx(bytes, title);
}

const begins = (bytes: Uint8Array, signs: readonly number[]) =>
  signs.every((sign, index) => bytes[index] === sign);

/** Its first part is its kind, not packed; programs that do not keep to that still name content.xml. */
function isOds(bytes: Uint8Array): boolean {
  const start = String.fromCharCode(...bytes.subarray(0, 120));
  return start.includes('opendocument') || !/\[Content_Types\]|_rels|xl\/|docProps/.test(start);
}
