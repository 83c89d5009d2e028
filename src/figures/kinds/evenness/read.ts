import type { QuantityName } from '../../../../functions/quantities/names.ts';
import type { Datum, Given, Undrawn } from '../../figure.ts';
import { numberOf } from '../cells.ts';
import { words } from '../../../words/words.ts';

/** A place of the area. Without a reading it stays a blank place. */
export interface Patch {
  readonly reading?: number;
  /** From zero: the mean or the highest. */
  readonly stops?: number;
  /** Its cell. */
  readonly at: string;
}

export interface Lit extends Patch {
  readonly reading: number;
  readonly stops: number;
}

export interface Evenness {
  readonly rows: readonly (readonly Patch[])[];
  readonly quantity: QuantityName;
  /** As a reading: for f-numbers the one that the mean of the light gives. */
  readonly mean: number;
  readonly highest: Lit;
  readonly lowest: Lit;
  /** Lowest light over the mean, 0 to 1. */
  readonly share: number;
  /** Highest over lowest, in stops. */
  readonly spread: number;
}

export const zeros = [
  { value: 'mean', words: words.evenness.mean },
  { value: 'highest', words: words.evenness.highest },
] as const;

export function readEvenness({ inputs, options }: Given): Evenness | Undrawn {
  const block = inputs['values'] ?? [];
  const trouble = block.flat().find(({ reason, waits }) => reason !== undefined && !waits)?.reason;
  if (trouble !== undefined) return { reason: trouble };
  const isRead = (datum: Datum | undefined) => numberOf(datum) !== undefined;
  // Captions of rows and columns are no places.
  const lines = block.filter((row) => row.some(isRead));
  const columns = (lines[0] ?? []).flatMap((_, column) =>
    lines.some((row) => isRead(row[column])) ? [column] : [],
  );
  const read = lines.flat().filter(isRead);
  const kinds = new Set(read.flatMap(({ quantity }) => quantity ?? []));
  if (kinds.size > 1) return { reason: words.evenness.mixed };
  const quantity = [...kinds][0] ?? 'number';
  const values = read.flatMap((datum) => numberOf(datum) ?? []);
  if (values.length < 2) return { reason: words.evenness.tooFew };
  if (values.some((value) => value <= 0)) return { reason: words.evenness.notAboveZero };
  // Light goes with the square of the f-number that it asks for.
  const power = quantity === 'fNumber' ? 2 : 1;
  const light = values.map((value) => value ** power);
  const mean = light.reduce((sum, value) => sum + value, 0) / light.length;
  const [most, least] = [Math.max(...light), Math.min(...light)];
  const zero = options['from'] === 'highest' ? most : mean;
  const rows = lines.map((row) =>
    columns.map((column): Patch => {
      const [datum, at] = [row[column], row[column]?.at ?? ''];
      const reading = numberOf(datum);
      return reading === undefined
        ? { at }
        : { at, reading, stops: Math.log2(reading ** power / zero) };
    }),
  );
  const lit = rows.flat().filter((patch): patch is Lit => patch.stops !== undefined);
  const by = (extreme: number) => lit.find(({ reading }) => reading ** power === extreme);
  const [highest, lowest] = [by(most), by(least)];
  if (!highest || !lowest) return { reason: words.evenness.tooFew };
  return {
    ...{ rows, quantity, highest, lowest },
    mean: mean ** (1 / power),
    share: least / mean,
    spread: Math.log2(most / least),
  };
}
