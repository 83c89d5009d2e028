import type { QuantityName } from '../../functions/quantities/names.ts';
import type { Content, Means, Refusal, Settings } from '../book/types.ts';
import { words } from '../words/words.ts';

/** What a person wrote about the values that a cell is to take. */
export interface WrittenValues {
  /** Values with semicolons between; if empty, the range counts. */
  readonly list: string;
  readonly first: string;
  readonly last: string;
  readonly count: string;
}

/** How a cell's texts are read: what it measures, under the settings of the book. */
export interface Reader {
  readonly quantity: QuantityName | undefined;
  readonly means: Pick<Means, 'readEntry'>;
  readonly settings: Settings;
}

export type Values = { readonly ok: true; readonly values: readonly Content[] } | Refusal;

/** A typed text as content, or why it cannot be read as the cell's quantity. */
export function contentFrom(
  text: string,
  { quantity, means, settings }: Reader,
): Content | Refusal {
  const entry = means.readEntry(text.trim(), quantity, settings);
  if ('reason' in entry) return { ok: false, reason: entry.reason };
  return entry.content;
}

const most = 10_000;

/** The values to try: a list as it was typed, or steps between two ends. */
export function valuesFrom(written: WrittenValues, reader: Reader): Values {
  const texts = written.list.split(';').filter((text) => text.trim() !== '');
  if (texts.length > 0) return listed(texts, reader);
  const [first, last] = [written.first, written.last].map((text) => contentFrom(text, reader));
  for (const end of [first, last]) if (end && 'reason' in end) return end;
  const count = Number(written.count.trim());
  if (first === undefined || last === undefined)
    return { ok: false, reason: words.choose.noValues };
  if (!('kind' in first) || !('kind' in last) || first.kind !== 'number' || last.kind !== 'number')
    return { ok: false, reason: words.choose.noValues };
  if (!Number.isInteger(count) || count < 2) return { ok: false, reason: words.choose.badCount };
  if (count > most) return { ok: false, reason: words.choose.tooMany(most) };
  return { ok: true, values: between(first.value, last.value, count, reader.quantity) };
}

function listed(texts: readonly string[], reader: Reader): Values {
  if (texts.length > most) return { ok: false, reason: words.choose.tooMany(most) };
  const values: Content[] = [];
  for (const text of texts) {
    const content = contentFrom(text, reader);
    if ('reason' in content) return content;
    values.push(content);
  }
  return { ok: true, values };
}

/** Even steps; f-numbers in even stops, as the ring is engraved. */
function between(
  first: number,
  last: number,
  count: number,
  quantity: QuantityName | undefined,
): Content[] {
  const inStops = quantity === 'fNumber' && first > 0 && last > 0;
  return Array.from({ length: count }, (_, index) => {
    const share = index / (count - 1);
    const even = index === count - 1 ? last : first + (last - first) * share;
    const value = inStops ? first * (last / first) ** share : Number(even.toPrecision(12));
    return { kind: 'number', value };
  });
}
