import type { Ephemeris } from '../ephemeris.ts';

/** Day 0 of spreadsheets, so that day 1 is the last of 1899; milliseconds since 1970. */
const dayZero = Date.UTC(1899, 11, 30);
const dayLength = 86_400_000;
const hourLength = 3_600_000;

/**
 * How far a clock is ahead of universal time, in hours, when it shows a spreadsheet’s date and time: as
 * far as was said, else as far as the clock in use is.
 */
export function aheadAt(
  sky: Pick<Ephemeris, 'ahead'>,
  when: number,
  said: number | undefined,
): number {
  return said ?? sky.ahead(dayZero + when * dayLength);
}

/** The moment at which a clock set `utcOffset` hours before universal time shows a spreadsheet’s date and time. */
export function momentOf(when: number, utcOffset: number): number {
  return dayZero + when * dayLength - utcOffset * hourLength;
}

/** The date and time that such a clock shows at a moment. */
export function clockAt(
  sky: Pick<Ephemeris, 'ahead'>,
  moment: number,
  said: number | undefined,
): number {
  const shown = (ahead: number) => (moment - dayZero + ahead * hourLength) / dayLength;
  if (said !== undefined) return shown(said);
  // What the clock is ahead goes by what it shows, which is sought: nearer the second time.
  const near = shown(sky.ahead(moment));
  return shown(aheadAt(sky, near, undefined));
}
