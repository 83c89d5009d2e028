import { exactAt, exactMark, nominalMark, wholeAndTenths } from '../../marks/index.ts';
import type { WritingSettings } from '../settings.ts';
import { writeNumber } from './number.ts';

const behind: Readonly<Record<'thirds' | 'halves', readonly string[]>> = {
  thirds: ['', ' ⅓', ' ⅔'],
  halves: ['', ' ½'],
};

/** "f/2.8 ⅓", "f/2.8 ½", "f/2.8 + 0.3" or "f/3.175", as the workbook says f-numbers. */
export function writeFNumber(value: number, settings: WritingSettings, decimals?: number): string {
  const exact = exactMark(value);
  const { fNumbers } = settings;
  if (fNumbers === 'decimals' || decimals !== undefined || !(exact > 0) || exact === Infinity) {
    return `f/${writeNumber(exact, settings, decimals)}`;
  }
  if (fNumbers === 'tenths') {
    const { whole, tenths } = wholeAndTenths(exact);
    const mark = `f/${writeNumber(whole, settings)}`;
    return tenths === 0 ? mark : `${mark} + ${writeNumber(tenths / 10, settings)}`;
  }
  const parts = behind[fNumbers].length;
  const steps = Math.round(2 * Math.log2(exact) * parts);
  const stops = Math.floor(steps / parts);
  const mark = nominalMark(exactAt(stops), 1);
  return `f/${writeNumber(mark, settings)}${behind[fNumbers][steps - stops * parts] ?? ''}`;
}
