import type { WritingSettings } from '../settings.ts';

/** How many digits a calculated number gets; one that ends by itself is shown to its end. */
export interface Digits {
  readonly significant?: number;
  readonly decimals?: number;
  /** A number that ends within so many digits was typed so, and is shown whole; nine unless said. */
  readonly typed?: number;
}

/**
 * Writes a number without loss where it ends by itself, as anything typed does, and rounded where
 * it does not. Figures before the decimal sign are never rounded away.
 */
export function writeNumber(
  value: number,
  settings: WritingSettings,
  fixed?: number,
  digits: Digits = {},
): string {
  if (!Number.isFinite(value)) return String(value);
  const text = fixed === undefined ? String(rounded(value, digits)) : value.toFixed(places(fixed));
  return withSigns(/^-0(?:\.0*)?$/u.test(text) ? text.slice(1) : text, settings);
}

/** The number that is shown for a value: as typed, or rounded where it does not end by itself. */
export function rounded(
  value: number,
  { significant = 4, decimals, typed = 9 }: Digits = {},
): number {
  const asTyped = Number(value.toPrecision(typed));
  if (Math.abs(asTyped - value) <= 1e-12 * Math.abs(value)) return asTyped;
  if (decimals !== undefined) return Number(value.toFixed(places(decimals))) + 0;
  const wholeDigits = Math.floor(Math.log10(Math.abs(value))) + 1;
  return Number(value.toPrecision(Math.max(significant, Math.min(wholeDigits, 15))));
}

function places(decimals: number): number {
  return Math.max(0, Math.min(20, Math.trunc(decimals)));
}

function withSigns(text: string, { decimal }: WritingSettings): string {
  return text.replace('.', decimal).replace(/^-/u, '−');
}

/** With a plus where it is over. */
export function signed(text: string, value: number): string {
  return value > 0 && /[1-9\p{No}]/u.test(text) ? `+${text}` : text;
}

/** Parts the thousands with the sign that is not the decimal sign: `1,250.00`. */
export function withThousands(text: string, { decimal }: WritingSettings): string {
  const [whole = '', fraction] = text.split(decimal);
  const grouped = whole.replace(/(?<=\d)(?=(?:\d{3})+$)/gu, decimal === '.' ? ',' : '.');
  return fraction === undefined ? grouped : `${grouped}${decimal}${fraction}`;
}
