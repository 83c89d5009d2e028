import { agreed, type Kind } from './kinds.ts';

type ResultOf = (kinds: readonly Kind[]) => Kind;

const first: ResultOf = ([kind]) => kind;
const all: ResultOf = (kinds) => agreed(kinds);
/** A sum or mean of f-numbers is no f-number: light adds as their squares. */
const summed: ResultOf = (kinds) => {
  const kind = agreed(kinds);
  return kind === 'fNumber' ? undefined : kind;
};
const always =
  (kind: Kind): ResultOf =>
  () =>
    kind;

function each(names: string, result: ResultOf): Record<string, ResultOf> {
  return Object.fromEntries(names.split(' ').map((name) => [name, result]));
}

/** What ordinary spreadsheet functions make of the quantities they are given. */
export const ordinary: Readonly<Record<string, ResultOf>> = {
  ...each('ABS ROUND ROUNDUP ROUNDDOWN INT TRUNC MROUND CEILING FLOOR EVEN ODD', first),
  ...each('INDEX LARGE SMALL PERCENTILE QUARTILE', first),
  ...each('MIN MAX MEDIAN', all),
  ...each('SUM AVERAGE', summed),
  IF: ([, yes, no = 'any']) => agreed([yes, no]),
  ...each('IFERROR IFNA', all),
  CHOOSE: ([, ...choices]) => agreed(choices),
  ...each(
    'COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS MATCH ROW ROWS COLUMN COLUMNS',
    always('number'),
  ),
  ...each('LEN FIND SEARCH YEAR MONTH DAY HOUR MINUTE SECOND WEEKDAY', always('number')),
  ...each('TEXT CONCATENATE TEXTJOIN LEFT RIGHT MID UPPER LOWER PROPER TRIM', always('text')),
  ...each('SUBSTITUTE REPLACE REPT CHAR', always('text')),
  ...each('AND OR NOT XOR ISBLANK ISNUMBER ISTEXT ISERROR ISNA EXACT', always('truth')),
  ...each('TRUE FALSE', always('truth')),
  ...each('DATE TODAY NOW EDATE EOMONTH DATEVALUE', always('dateTime')),
  SQRT: ([kind]) => (kind === 'area' ? 'length' : kind === 'any' ? 'any' : undefined),
};
