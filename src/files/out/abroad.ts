import { words } from '../../words/words.ts';

/** Functions of our calculator that no other spreadsheet has under this name. */
const onlyHere = new Set(
  (
    'ARRAYFORMULA ARRAY_CONSTRAIN CHIDISTRT CHIINVRT COUNTUNIQUE COVARIANCEP COVARIANCES FDISTRT ' +
    'FINVRT INTERVAL ISBINARY LOGNORMINV MAXPOOL MEDIANPOOL POISSONDIST SKEWP SPLIT STDEVS ' +
    'TDIST2T TDISTRT TINV2T VARS VERSION WEIBULLDIST'
  ).split(' '),
);

/** Why a formula with this function does not go out, as a sentence; undefined where it does. */
export const faultAbroad = (name: string): string | undefined =>
  onlyHere.has(name) ? words.files.noFunctionElsewhere(name) : undefined;
