import type { WritingSettings } from '../settings.ts';
import { writeNumber } from './number.ts';
import { written } from './written.ts';
import type { Written } from './written.ts';

const stop = Math.log10(2);

/** "ND 0.6" where it is a label's nominal half or third stops, else the density itself. */
export function writeDensity(value: number, settings: WritingSettings, decimals?: number): Written {
  const sixths = Math.round((value / stop) * 6);
  const nominal = Math.abs((sixths / 6) * stop - value) <= 1e-9;
  const onScale = nominal && (sixths % 2 === 0 || sixths % 3 === 0) && sixths > 0;
  if (decimals !== undefined || !onScale) {
    return written(writeNumber(value, settings, decimals, { decimals: 4 }));
  }
  const label = String(Number((sixths * 0.05).toFixed(2)));
  // A whole label would be taken for a factor.
  const shown = label.includes('.') ? label : `${label}.0`;
  return written(`ND ${shown.replace('.', settings.decimal)}`);
}

/** "CC 30 M", "CC 7 G". */
export function writeGreen(value: number, settings: WritingSettings, decimals?: number): Written {
  const size = writeNumber(Math.abs(value), settings, decimals);
  if (!/[1-9]/u.test(size)) return written(`CC ${size}`);
  return written(`CC ${size} ${value < 0 ? 'M' : 'G'}`);
}
