import type { WritingSettings } from '../settings.ts';
import { writeNumber } from './number.ts';
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
  const over = 1 / value;
  const whole = Math.abs(over - Math.round(over)) <= 1e-9 * over;
  const fraction = value > 1e-9 && (value < 0.1 || (value < 1 && whole));
  return fraction ? `1/${writeNumber(over, settings)}` : writeNumber(value, settings);
}
