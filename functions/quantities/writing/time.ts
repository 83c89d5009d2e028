import type { WritingSettings } from '../settings.ts';
import { rounded, writeNumber } from './number.ts';
import { written } from './written.ts';
import type { Written, WritingFormat } from './written.ts';

/** "1/50 s", "0.4 s", "2 s"; as an angle where the workbook says so and a frame rate is given. */
export function writeTime(
  value: number,
  settings: WritingSettings,
  format: WritingFormat = {},
): Written {
  const { fps, decimals } = format;
  if (settings.shutter === 'angle' && fps !== undefined && fps > 0) {
    return written(writeNumber(value * fps * 360, settings, decimals), '°');
  }
  return written(decimals === undefined ? asFraction(value, settings) : plain(), 's');

  function plain(): string {
    return writeNumber(value, settings, decimals);
  }
}

/** Under a tenth of a second always a fraction; up to a second only if it is one of a whole number. */
function asFraction(value: number, settings: WritingSettings): string {
  if (value < 1e-9 || value >= 1) return writeNumber(value, settings);
  const whole = [value, rounded(value)].map((time) => 1 / time).find(isWhole);
  if (whole === undefined && value >= 0.1) return writeNumber(value, settings);
  return `1/${writeNumber(whole ?? 1 / value, settings)}`;
}

function isWhole(number: number): boolean {
  return Math.abs(number - Math.round(number)) <= 1e-9 * number;
}
