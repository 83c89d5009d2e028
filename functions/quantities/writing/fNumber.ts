import { exactAt, exactMark, isMark, nominalMark, wholeAndTenths } from '../../marks/index.ts';
import type { WritingSettings } from '../settings.ts';
import { rounded, writeNumber } from './number.ts';

const behind: Readonly<Record<'thirds' | 'halves', readonly string[]>> = {
  thirds: ['', ' ⅓', ' ⅔'],
  halves: ['', ' ½'],
};

/** No further rounding: a double holds seventeen digits. */
const asItIs = { typed: 17 } as const;

/** Where the nearest tenth is farther than this from the mark, in stops, the mark would mislead. */
const misleading = 0.05;

/**
 * "f/2.8 ⅓", "f/2.8 ½", "f/2.8 + 0.3" or "f/3.175", as the workbook says f-numbers. What lies
 * between the marks of its scale is said in tenths.
 */
export function writeFNumber(value: number, settings: WritingSettings, decimals?: number): string {
  const exact = exactMark(value);
  const { fNumbers } = settings;
  if (decimals !== undefined) return `f/${writeNumber(exact, settings, decimals)}`;
  if (fNumbers === 'decimals' || !(exact > 0) || exact === Infinity) {
    return `f/${writeNumber(inDecimals(exact), settings, undefined, asItIs)}`;
  }
  if (fNumbers === 'tenths') return inTenths(exact, settings);
  const parts = behind[fNumbers].length;
  const opening = 2 * Math.log2(exact);
  const steps = Math.round(opening * parts);
  const tenths = Math.round(opening * 10);
  if (Math.abs(tenths / 10 - steps / parts) > misleading) return inTenths(exact, settings);
  const stops = Math.floor(steps / parts);
  const mark = nominalMark(exactAt(stops), 1);
  return `f/${writeNumber(mark, settings)}${behind[fNumbers][steps - stops * parts] ?? ''}`;
}

function inTenths(exact: number, settings: WritingSettings): string {
  const { whole, tenths } = wholeAndTenths(exact);
  const mark = `f/${writeNumber(whole, settings)}`;
  return tenths === 0 ? mark : `${mark} + ${writeNumber(tenths / 10, settings)}`;
}

/** Four digits, or as many as it takes not to be read as a mark: 2.79996 is not f/2.8. */
function inDecimals(exact: number): number {
  const shorter = [4, 5, 6, 7, 8, 9].map((significant) => rounded(exact, { significant }));
  return shorter.find((each) => !isMark(each) || exactMark(each) === exact) ?? exact;
}
