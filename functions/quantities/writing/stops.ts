import type { WritingSettings } from '../settings.ts';
import { signed, writeNumber } from './number.ts';
import { written } from './written.ts';
import type { Written } from './written.ts';

/** Fractions that people say; anything else is written in decimals. */
const fractions: readonly (readonly [number, string])[] = [
  [0, ''],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [1 / 2, '½'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [1, ''],
];

/** A thousandth of a stop is far below what a meter tells apart. */
const near = 1e-3;

/** "+1 ⅔ stops", "−⅓ stop", and in decimals what is no usual fraction: "−0.56 stop". */
export function writeStops(value: number, settings: WritingSettings, decimals?: number): Written {
  const said = decimals === undefined ? sayFraction(value) : undefined;
  return said === undefined
    ? writeDecimalStops(value, settings, decimals)
    : written(signed(said, value), unitOf(value));
}

/** "+1.67 stops" */
export function writeDecimalStops(
  value: number,
  settings: WritingSettings,
  decimals?: number,
): Written {
  const number = writeNumber(value, settings, decimals, { decimals: 2 });
  return written(signed(number, value), unitOf(value));
}

function unitOf(value: number): string {
  return Math.abs(value) > 1 + near || Math.abs(value) <= near ? 'stops' : 'stop';
}

/** "1 ⅔", "−⅓" or undefined where no usual fraction is near. */
function sayFraction(value: number): string | undefined {
  if (!(Math.abs(value) < 1000)) return undefined;
  const size = Math.abs(value);
  const below = Math.floor(size);
  const found = fractions.find(([fraction]) => Math.abs(size - below - fraction) <= near);
  if (found === undefined) return undefined;
  const [fraction, character] = found;
  const whole = fraction === 1 ? below + 1 : below;
  const minus = value < 0 && (whole > 0 || character !== '') ? '−' : '';
  if (character === '') return `${minus}${whole}`;
  return whole === 0 ? `${minus}${character}` : `${minus}${whole} ${character}`;
}
