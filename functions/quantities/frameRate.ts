import { readWithUnits } from './withUnits.ts';
import type { Reader } from './parsed.ts';

/** Rates of 1000/1001, by the rounded names that cameras show. */
const rounded: ReadonlyMap<number, number> = new Map(
  [24, 30, 48, 60, 120].flatMap((whole): [number, number][] => {
    const exact = (whole * 1000) / 1001;
    return [2, 3].map((decimals) => [Number(exact.toFixed(decimals)), exact]);
  }),
);

/** What a frame rate means: 23.976 and 23.98 are 24000/1001; any other number is itself. */
export function exactFrameRate(fps: number): number {
  return rounded.get(fps) ?? fps;
}

export const readFrameRate: Reader = (text, settings) => {
  const rate = readWithUnits('frameRate', text, settings);
  return rate !== undefined && 'value' in rate
    ? { ...rate, value: exactFrameRate(rate.value) }
    : rate;
};
