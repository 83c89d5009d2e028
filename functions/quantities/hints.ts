import { readAmount } from './amount.ts';
import type { QuantityName } from './names.ts';
import { readAs } from './read.ts';
import type { WritingSettings } from './settings.ts';
import { units } from './units.ts';

/** Quantities whose writing could be something else, so that a plain cell keeps it as text. */
const unsure: readonly QuantityName[] = [
  'fNumber',
  'ratio',
  'dateTime',
  'duration',
  'factor',
  'greenCorrection',
];

/** What a text in a plain cell could be read as, once the cell has a quantity. */
export function plainHint(text: string, settings: WritingSettings): string | undefined {
  const amount = readAmount(text, settings);
  const kinds: readonly QuantityName[] =
    amount?.fraction === true && amount.rest === ''
      ? ['time', 'stops']
      : unsure.filter((quantity) => {
          const reading = readAs(quantity, text, settings);
          return reading.ok && reading.unitWritten;
        });
  if (kinds.length === 0) return undefined;
  const names = kinds.map((quantity) => `“${units[quantity].words}”`).join(' or ');
  return `Kept as text. In a cell with the quantity ${names} it is a number.`;
}

/** Dials show the denominator alone, so a bare 50 is more often a fiftieth than 50 seconds. */
export function typedHint(quantity: QuantityName, text: string, value: number): string | undefined {
  const dial = quantity === 'time' && /^\d+$/u.test(text) && value === Number(text) && value >= 15;
  return dial ? `Taken as ${text} seconds. A fraction is written 1/${text}.` : undefined;
}
