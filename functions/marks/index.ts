export { exactMark, isMark } from './exactMark.ts';
export { inTenths, wholeAndTenths } from './inTenths.ts';
export type { WholeAndTenths } from './inTenths.ts';
export { nominalMark } from './nominalMark.ts';
export { exactAt, marks } from './series.ts';
export type { Mark, Parts } from './series.ts';
