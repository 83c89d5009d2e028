import type { WritingSettings } from '../settings.ts';
import { rounded, signed, writeNumber } from './number.ts';
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

/** A thousandth of a stop (and a hair of grace) is far below what a meter tells apart. */
const near = 1e-3 + 1e-9;

/** "+1 ⅔ stops", "−⅓ stop", and in decimals what is no usual fraction: "−0.56 stop". */
export function writeStops(value: number, settings: WritingSettings, decimals?: number): Written {
  const said = decimals === undefined ? sayFraction(value) : undefined;
  return said ?? writeDecimalStops(value, settings, decimals);
}

/** "+1.67 stops" */
export function writeDecimalStops(
  value: number,
  settings: WritingSettings,
  decimals?: number,
): Written {
  const number = writeNumber(value, settings, decimals, { decimals: 2 });
  const shown = rounded(value, { decimals: decimals ?? 2 });
  return written(signed(number, value), unitOf(Math.abs(shown)));
}

function unitOf(size: number): string {
  return size > 1 || size === 0 ? 'stops' : 'stop';
}

/** Undefined where no usual fraction is near. */
function sayFraction(value: number): Written | undefined {
  if (!(Math.abs(value) < 1000)) return undefined;
  // What the decimals would show counts too, so that 0.75 is never written beside ¾.
  const sizes = [value, rounded(value, { decimals: 2 })].map(Math.abs);
  const [found] = sizes.flatMap(fractionsNear);
  if (found === undefined) return undefined;
  const { below, fraction, character } = found;
  const whole = fraction === 1 ? below + 1 : below;
  const saidSize = below + fraction;
  const sign = saidSize === 0 ? '' : value < 0 ? '−' : '+';
  const words = character === '' ? `${whole}` : `${whole === 0 ? '' : `${whole} `}${character}`;
  return written(`${sign}${words}`, unitOf(saidSize));
}

function fractionsNear(size: number) {
  const below = Math.floor(size);
  return fractions
    .filter(([fraction]) => Math.abs(size - below - fraction) <= near)
    .map(([fraction, character]) => ({ below, fraction, character }));
}
