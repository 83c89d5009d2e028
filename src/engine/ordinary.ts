import { isPlain, isWords, together } from './algebra.ts';
import { combined, dimensionsOf, kindWith } from './dimensions.ts';
import type { Part } from './findings.ts';
import { fits } from './fits.ts';
import type { Handed } from './handed.ts';
import type { Kind } from './kinds.ts';
import { writtenNumber } from './written.ts';

type Rule = (handed: Handed) => Kind;

const first: Rule = ({ kind }) => kind(0);
const always =
  (kind: Kind): Rule =>
  () =>
    kind;

/** One kind for several arguments. */
function joined(handed: Handed, indices: readonly number[]): Kind {
  const parts = indices.flatMap((index) =>
    handed.kinds(index).map((kind) => (kind === undefined ? undefined : handed.part(index, kind))),
  );
  return oneKind(handed, parts);
}

/**
 * The same where words may stand for a number: `IF(B2=0,"no light",B2)` is plain and no mistake.
 * A cell with words in its place is one.
 */
function chosen(handed: Handed, indices: readonly number[]): Kind {
  const isWorded = (index: number) =>
    handed.node(index)?.kind !== 'reference' && handed.kinds(index).some(isWords);
  const numbers = indices.filter((index) => !isWorded(index));
  if (numbers.length === 0) return joined(handed, indices);
  const kind = joined(handed, numbers);
  return numbers.length < indices.length && kind !== 'any' ? undefined : kind;
}

/** The kind that all parts have; hears the first that has another. */
function oneKind(handed: Handed, parts: readonly (Part | undefined)[]): Kind {
  let common: Kind = 'any';
  let named: Part | undefined;
  let isKnown = true;
  for (const part of parts) {
    isKnown &&= part !== undefined;
    if (!part || common === undefined) continue;
    const both = together(common, part.kind);
    if ('clash' in both) {
      if (named) handed.hear({ about: 'joined', call: handed.call.name, parts: [named, part] });
      return undefined;
    }
    if (!isPlain(part.kind)) named ??= part;
    common = both.kind;
  }
  return isKnown ? common : undefined;
}

/** The arguments from one on, or every second one. */
function indicesFrom({ count }: Handed, start: number, step = 1): readonly number[] {
  const indices: number[] = [];
  for (let index = start; index < count; index += step) indices.push(index);
  return indices;
}

const allOf: Rule = (handed) => joined(handed, indicesFrom(handed, 0));

const choice =
  (start: number, step = 1): Rule =>
  (handed) =>
    chosen(handed, indicesFrom(handed, start, step));

/** Sums and means that do not give more of the same: light adds as the square of an f-number. */
const untotalled: Readonly<Record<string, readonly Kind[]>> = {
  SUM: ['fNumber', 'colourTemperature', 'ev'],
  AVERAGE: ['fNumber', 'colourTemperature'],
};

function totalled(handed: Handed, kind: Kind, index: number): Kind {
  const total = handed.call.name.startsWith('SUM') ? 'SUM' : 'AVERAGE';
  if (kind === undefined || untotalled[total]?.includes(kind) !== true) return kind;
  handed.hear({ about: 'totalled', call: handed.call.name, given: handed.part(index, kind) });
  return undefined;
}

const total: Rule = (handed) => totalled(handed, allOf(handed), 0);

/** `SUMIF(range, criterion, sum_range)`: what is added up is the last range. */
const totalIf: Rule = (handed) => {
  const index = handed.count > 2 ? 2 : 0;
  sought(handed, 1, 0, handed.kinds(0));
  return totalled(handed, joined(handed, [index]), index);
};

/** `SUMIFS(sum_range, range, criterion, …)`. */
const totalIfs: Rule = (handed) => totalled(handed, joined(handed, [0]), 0);

/** Hears when what is looked for is of another kind than what it is looked for among. */
function sought(handed: Handed, key: number, among: number, kinds: readonly Kind[]): void {
  const kind = handed.kind(key);
  if (kind === undefined || isWords(kind)) return;
  const known = kinds.filter((each) => each !== undefined);
  const [other] = known;
  if (other === undefined || known.some((each) => 'kind' in together(kind, each))) return;
  handed.hear({
    about: 'sought',
    call: handed.call.name,
    key: handed.part(key, kind),
    among: handed.part(among, other),
  });
}

/** `VLOOKUP(key, table, column)` and `HLOOKUP(key, table, row)`. */
const lookUp =
  (axis: 'rows' | 'columns'): Rule =>
  (handed) => {
    sought(handed, 0, 1, handed.line(1, axis, 1));
    const node = handed.node(2);
    const line = node && writtenNumber(node);
    return line === undefined || line === null
      ? undefined
      : found(handed, handed.line(1, axis, line));
  };

/** One of several cells: of their kind where they have one, and remarked on where they have not. */
function found(handed: Handed, kinds: readonly Kind[]): Kind {
  return oneKind(
    handed,
    kinds.map((kind) => (kind === undefined ? undefined : handed.part(1, kind))),
  );
}

const match: Rule = (handed) => {
  sought(handed, 0, 1, handed.kinds(1));
  return 'number';
};

const xLookUp: Rule = (handed) => {
  sought(handed, 0, 1, handed.kinds(1));
  return chosen(handed, handed.count > 3 ? [2, 3] : [2]);
};

/** `INDEX(table, row, column)`: of the column where it is written. */
const index: Rule = (handed) => {
  const node = handed.node(2);
  const column = node && writtenNumber(node);
  if (column) return joinedLine(handed.line(0, 'columns', column));
  return handed.kind(0);
};

function joinedLine(kinds: readonly Kind[]): Kind {
  return kinds.every((kind) => kind === kinds[0]) ? kinds[0] : undefined;
}

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
  ...each('MINIFS MAXIFS', ({ kind }) => kind(0)),
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
  ...each('COUNT COUNTA COUNTBLANK COUNTIFS ROW ROWS COLUMN COLUMNS', always('number')),
  ...each('LEN FIND SEARCH YEAR MONTH DAY HOUR MINUTE SECOND WEEKDAY SIGN', always('number')),
  ...each('TEXT CONCATENATE TEXTJOIN LEFT RIGHT MID UPPER LOWER PROPER TRIM', always('text')),
  ...each('SUBSTITUTE REPLACE REPT CHAR', always('text')),
  ...each('AND OR NOT XOR ISBLANK ISNUMBER ISTEXT ISERROR ISNA EXACT', always('truth')),
  ...each('TRUE FALSE', always('truth')),
  ...each('DATE TODAY NOW EDATE EOMONTH DATEVALUE', always('dateTime')),
  ...each('SIN COS TAN', ofRadians),
  ...each('ASIN ACOS ATAN ATAN2', always('any')),
  DEGREES: always('angle'),
  RADIANS: radians,
  PI: always('~pi1'),
  SQRT: root,
  LOG: logarithm(secondArgument),
  LOG10: logarithm(() => 10),
  ...each('LN EXP', ({ kind }) => (isPlain(kind(0)) ? 'any' : undefined)),
};
