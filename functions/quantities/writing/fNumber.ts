import { exactAt, exactMark, isMark, nominalMark, wholeAndTenths } from '../../marks/index.ts';
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
  if (decimals !== undefined) return `f/${writeNumber(exact, settings, decimals)}`;
  if (fNumbers === 'decimals' || !(exact > 0) || exact === Infinity) {
    return `f/${writeNumber(inDecimals(exact), settings)}`;
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

/** Four digits, or as many as it takes not to be read as a mark: 2.79996 is not f/2.8. */
function inDecimals(exact: number): number {
  for (let places = 4; places <= 9; places += 1) {
    const rounded = Number(exact.toPrecision(places));
    if (!isMark(rounded) || exactMark(rounded) === exact) return rounded;
  }
  return exact;
}
