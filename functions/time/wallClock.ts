/** Day 0 of spreadsheets, so that day 1 is the last of 1899; milliseconds since 1970. */
const dayZero = Date.UTC(1899, 11, 30);
const dayLength = 86_400_000;
const hourLength = 3_600_000;

/** The moment at which a clock set `utcOffset` hours before universal time shows a spreadsheet’s date and time. */
export function momentOf(when: number, utcOffset: number): number {
  return dayZero + when * dayLength - utcOffset * hourLength;
}

/** The date and time that such a clock shows at a moment. */
export function wallClock(moment: number, utcOffset: number): number {
  return (moment - dayZero + utcOffset * hourLength) / dayLength;
}
