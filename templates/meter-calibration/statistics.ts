import { heading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { letterOf, type ColumnName } from './columns.ts';
import { constantOf, nameOf, receptorOf } from './meters.ts';

/** Row of the captions of the pairs, and how many pairs there is room for. */
export const head = 11;
export const count = 12;

const down = (column: ColumnName): string =>
  `$${letterOf(column)}$${head + 1}:$${letterOf(column)}$${head + count}`;

/** Where the results stand that rows and sentence ask for. */
export const at = {
  mean: '$B$7',
  spread: '$D$7',
  apart: '$B$8',
  taken: '$B$9',
  pairs: '$D$9',
} as const;

const offsets = down('offset');
const once = (formula: string): string => `=IF(${at.pairs}<2,"",${formula})`;

const isTold = `ABS(${at.mean})>${at.apart}`;
const ofPairs = `" in "&${at.pairs}&" pairs"`;
const names = (one: 'first' | 'second', other: 'first' | 'second') =>
  [nameOf(one), nameOf(other)] as const;
const [second, first] = names('second', 'first');

/** What the pairs say, in a sentence. */
const sentence =
  `=IF(${at.pairs}<2,"Two pairs at least; eight or more, from dim to bright, say something.",` +
  `IF(NOT(${isTold}),${second}&" and "&${first}&" cannot be told apart: less than "&TEXT(${at.apart},"0.00")&" stop"&${ofPairs}&".",` +
  `${second}&" reads "&TEXT(ABS(${at.mean}),"0.00")&IF(${at.mean}>0," stop over "," stop under ")&${first}&": it can be told from the spread of "&TEXT(${at.spread},"0.00")&" stop"&${ofPairs}&"."))`;

const stops = (typed: string): PlannedCell => ({ typed, quantity: 'stops', decimals: 2 });

/** Mean, spread and range of the offsets, and whether the one can be told from the other. */
export const statistics: Readonly<Record<string, PlannedCell>> = {
  A6: heading('In a sentence'),
  B6: { typed: sentence, quantity: 'text' },
  A7: words('Mean offset'),
  B7: stops(`=IF(${at.pairs}=0,"",AVERAGE(${offsets}))`),
  C7: words('Spread'),
  D7: {
    ...stops(once(`STDEV(${offsets})`)),
    note: 'The standard deviation of a sample, with the number of pairs less one.',
  },
  E7: words('Range'),
  F7: {
    ...stops(once(`MAX(${offsets})-MIN(${offsets})`)),
    note: 'The highest offset less the lowest.',
  },
  A8: words('Told apart from'),
  B8: {
    ...stops(once(`ROUND(TINV(0.05,${at.pairs}-1),2)*${at.spread}/SQRT(${at.pairs})`)),
    note: 'Student’s t for 95 in 100 (JCGM 100, table G.2), times the spread, by the root of the number of pairs.',
  },
  C8: words('By the constants'),
  D8: {
    ...stops(
      `=IF((${receptorOf('first')}="spot")<>(${receptorOf('second')}="spot"),"unlike",STOPS(${constantOf('first')},${constantOf('second')}))`,
    ),
    note: 'What the constants alone put between two f-numbers of the same light.',
  },
  E8: words('Would agree at'),
  F8: {
    typed: `=IF(${at.pairs}=0,"",${constantOf('second')}*STOPFACTOR(${at.taken}))`,
    quantity: 'number',
    decimals: 1,
    note: 'The constant of the second meter, C or K, with which its f-numbers would be those of the first.',
  },
  A9: words('Taken off'),
  B9: {
    ...stops(`=IF(${at.pairs}<2,0,IF(${isTold},${at.mean},0))`),
    note: 'Off the second meter’s readings: the mean offset, or nothing where it cannot be told from the spread.',
  },
  C9: words('Pairs'),
  D9: { typed: `=COUNT(${offsets})`, quantity: 'number' },
};
