import { isPlain } from './algebra.ts';
import { combined, dimensionsOf, kindWith } from './dimensions.ts';
import { fits } from './fits.ts';
import type { Handed, Rule } from './handed.ts';
import { allOf, choice } from './joining.ts';
import type { Kind } from './kinds.ts';
import { index, lookUp, match, sought, soughtInPairs, xLookUp } from './lookups.ts';
import { total, totalIf, totalIfs } from './totals.ts';
import { writtenNumber } from './written.ts';

const first: Rule = ({ kind }) => kind(0);
const always =
  (kind: Kind): Rule =>
  () =>
    kind;

/** Sine, cosine and tangent of an angle kept in degrees. */
const ofRadians: Rule = (handed) => {
  if (handed.kind(0) === 'angle') {
    const given = handed.part(0, 'angle');
    handed.hear({ about: 'radians', call: handed.call.name, given });
  }
  return 'any';
};

const radians: Rule = (handed) => {
  const kind = handed.kind(0);
  if (kind !== undefined && !fits('angle', kind)) {
    const given = handed.part(0, kind);
    handed.hear({
      about: 'argument',
      call: 'RADIANS',
      parameter: 'angle',
      wanted: ['angle'],
      given,
    });
  }
  return 'any';
};

const root: Rule = ({ kind }) => {
  const given = kind(0);
  if (given === undefined || isPlain(given)) return given;
  const dimensions = dimensionsOf(given);
  return Object.keys(dimensions).length === 0 ? 'number' : kindWith(combined({}, dimensions, 0.5));
};

/** To base 2 a ratio of light comes to stops, to base 10 a transmission to a density. */
const logarithm =
  (base: (handed: Handed) => number | undefined): Rule =>
  (handed) => {
    const given = handed.kind(0);
    if (given === 'any' || given === 'number') return 'any';
    if (given !== 'ratio' && given !== 'factor' && given !== 'share') return undefined;
    const to = base(handed);
    if (to === 2) return 'stops';
    return to === 10 ? 'density' : undefined;
  };

const secondArgument = ({ node }: Handed): number | undefined => {
  const written = node(1);
  return written ? writtenNumber(written) : 10;
};

const product: Rule = ({ kinds, count }) => {
  let dimensions = {};
  for (let at = 0; at < count; at++) {
    // A range of one kind is as many factors as it has cells: only plain numbers stay what they are.
    const [only, ...more] = kinds(at);
    if (only === undefined || more.length > 0) return undefined;
    dimensions = combined(dimensions, dimensionsOf(only), 1);
  }
  return count === 1 ? undefined : kindWith(dimensions);
};

/** Days between two dates. */
const days: Rule = (handed) => {
  for (const [at, parameter] of ['end', 'start'].entries()) {
    const kind = handed.kind(at);
    if (kind === undefined || fits('dateTime', kind)) continue;
    const given = handed.part(at, kind);
    handed.hear({ about: 'argument', call: 'DAYS', parameter, wanted: ['dateTime'], given });
  }
  return 'number';
};

function each(names: string, rule: Rule): Record<string, Rule> {
  return Object.fromEntries(names.split(' ').map((name) => [name, rule]));
}

/** What ordinary spreadsheet functions make of the quantities they are given. */
export const ordinary: Readonly<Record<string, Rule>> = {
  ...each('ABS ROUND ROUNDUP ROUNDDOWN INT TRUNC MROUND CEILING FLOOR EVEN ODD MOD', first),
  ...each('LARGE SMALL PERCENTILE QUARTILE STDEV STDEV.S STDEV.P STDEVP', first),
  ...each('MIN MAX MEDIAN MINA MAXA', allOf),
  ...each('SUM AVERAGE AVERAGEA', total),
  ...each('SUMIF AVERAGEIF', totalIf),
  ...each('SUMIFS AVERAGEIFS', totalIfs),
  ...each('MINIFS MAXIFS', (handed) => {
    soughtInPairs(handed, 1);
    return handed.kind(0);
  }),
  SUMPRODUCT: product,
  INDEX: index,
  VLOOKUP: lookUp('columns'),
  HLOOKUP: lookUp('rows'),
  XLOOKUP: xLookUp,
  MATCH: match,
  IF: choice(1),
  IFS: choice(1, 2),
  ...each('IFERROR IFNA', choice(0)),
  CHOOSE: choice(1),
  COUNTIF: (handed) => {
    sought(handed, 1, 0, handed.kinds(0));
    return 'number';
  },
  COUNTIFS: (handed) => {
    soughtInPairs(handed, 0);
    return 'number';
  },
  ...each('COUNT COUNTA COUNTBLANK ROW ROWS COLUMN COLUMNS', always('number')),
  ...each('LEN FIND SEARCH YEAR MONTH DAY HOUR MINUTE SECOND WEEKDAY SIGN', always('number')),
  ...each('TEXT CONCATENATE TEXTJOIN LEFT RIGHT MID UPPER LOWER PROPER TRIM', always('text')),
  ...each('SUBSTITUTE REPLACE REPT CHAR', always('text')),
  ...each('AND OR NOT XOR ISBLANK ISNUMBER ISTEXT ISERROR ISNA EXACT', always('truth')),
  ...each('TRUE FALSE', always('truth')),
  ...each('DATE TODAY NOW EDATE EOMONTH DATEVALUE', always('dateTime')),
  ...each('SIN COS TAN', ofRadians),
  ...each('ASIN ACOS ATAN ATAN2', always('any')),
  DAYS: days,
  N: first,
  DEGREES: always('angle'),
  RADIANS: radians,
  PI: always('~pi1'),
  SQRT: root,
  LOG: logarithm(secondArgument),
  LOG10: logarithm(() => 10),
  ...each('LN EXP', ({ kind }) => (isPlain(kind(0)) ? 'any' : undefined)),
};
