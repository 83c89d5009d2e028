import { tokensOf } from '../../formula/tokens.ts';

/**
 * Functions that came after 2007 are stored with a prefix (ISO/IEC 29500 names none of them; every
 * program that writes the format does it so).
 */
const later = new Set(
  (
    'ACOT ACOTH ARABIC BASE BETA.DIST BETA.INV BINOM.DIST BINOM.INV BITAND BITLSHIFT BITOR ' +
    'BITRSHIFT BITXOR CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV ' +
    'CHISQ.INV.RT CHISQ.TEST COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P ' +
    'COVARIANCE.S CSC CSCH DAYS DECIMAL EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST ' +
    'FLOOR.MATH FLOOR.PRECISE GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK ' +
    'HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC IMSECH IMSINH IMTAN ISFORMULA ' +
    'ISOWEEKNUM LOGNORM.DIST LOGNORM.INV MAXIFS MINIFS NEGBINOM.DIST NORM.DIST NORM.INV ' +
    'NORM.S.DIST NORM.S.INV PDURATION PERCENTILE.EXC PERCENTILE.INC PHI POISSON.DIST ' +
    'QUARTILE.EXC QUARTILE.INC RRI SEC SECH SEQUENCE SKEW.P STDEV.P STDEV.S SWITCH T.DIST ' +
    'T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TEXTJOIN UNICHAR UNICODE UNIQUE VAR.P VAR.S ' +
    'VSTACK WEIBULL.DIST XLOOKUP XOR Z.TEST'
  ).split(' '),
);

const onWorksheets = new Set(['FILTER', 'SORT']);

/** The name that is stored for a function. */
export function storedName(name: string): string {
  if (onWorksheets.has(name)) return `_xlfn._xlws.${name}`;
  return later.has(name) ? `_xlfn.${name}` : name;
}

const bareName = (stored: string): string => stored.replace(/^(?:_xlfn\.|_xlws\.)+/i, '');

/** The formula with the bare names of its functions. */
export function bare(stored: string): string {
  if (!/_xl/i.test(stored)) return stored;
  return tokensOf(`=${stored}`)
    .map(({ kind, text }) => (kind === 'function' ? bareName(text) : text))
    .join('')
    .slice(1);
}
