import { exactFrameRate } from '../frameRate.ts';
import type { WritingSettings } from '../settings.ts';
import { rounded, writeNumber } from './number.ts';
import { written } from './written.ts';
import type { Written } from './written.ts';

/** "25 fps", and "23.976 fps" for 24000/1001. */
export function writeFrameRate(
  value: number,
  settings: WritingSettings,
  decimals?: number,
): Written {
  const exact = exactFrameRate(value);
  // Three decimals, or as many as it takes not to be read as a rate of 1000/1001.
  const shorter = [3, 4, 5, 6, 7, 8].map((places) => rounded(exact, { decimals: places }));
  const shown = shorter.find((each) => [each, exact].includes(exactFrameRate(each))) ?? exact;
  return written(writeNumber(shown, settings, decimals, { typed: 17 }), 'fps');
}
