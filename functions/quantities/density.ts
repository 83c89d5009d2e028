import { readAmount } from './amount.ts';
import { readNumber } from './number.ts';
import type { Reader } from './parsed.ts';

const label = /^(?:nd ?(\d*[.,]?\d+)|(\d*[.,]?\d+) ?nd)$/iu;
const factorLabel = /^nd ?(?:(\d+) ?[x×]|[x×] ?(\d+))$/iu;

/** What a label promises: one stop for each 0.3, whatever the glass does. */
const labelPerStop = 0.3;

/** Density of exactly one stop. */
const stop = Math.log10(2);

/**
 * `0.6` is a density and means itself. `ND 0.6` is a label and means its nominal two stops,
 * kept as a density of 2 · log10 2. `ND 8` is refused: it may be either.
 */
export const readDensity: Reader = (text, settings) => {
  if (/^(?:none|clear|nd none|no nd|nd 0)$/iu.test(text)) return { value: 0, unitWritten: false };
  const written = readNdLabel(text, settings, {});
  if (written !== undefined) return written;
  const amount = readAmount(text, { decimal: settings.decimal, small: true });
  if (amount?.rest !== '' || amount.fraction) return undefined;
  return { value: amount.value, unitWritten: false };
};

/** Text that says ND, wherever it stands. */
export const readNdLabel: Reader = (text) => {
  const factor = factorLabel.exec(text);
  if (factor !== null) return fromFactor(Number(factor[1] ?? factor[2]));
  const found = label.exec(text);
  const digits = found?.[1] ?? found?.[2];
  if (digits === undefined) return undefined;
  const number = readNumber(digits, { decimal: '.', small: true });
  if (number === undefined) return undefined;
  if (/^\d+$/u.test(digits)) return { reason: question(number) };
  return { value: (number / labelPerStop) * stop, unitWritten: true };
};

function fromFactor(factor: number): { value: number; unitWritten: true } | undefined {
  return factor >= 1 ? { value: Math.log10(factor), unitWritten: true } : undefined;
}

function question(number: number): string {
  const stops = Math.round(3 * Math.log2(Math.max(1, number))) / 3;
  const asLabel = (stops * labelPerStop).toFixed(1);
  return `ND ${number}: density or factor? Write ND ${asLabel} for a factor of ${number}, or ${number}.0 for a density.`;
}
