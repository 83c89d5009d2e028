/** Functions that OpenFormula does not name; programs store them under the name of their maker. */
const later = new Set(
  (
    'BETA.DIST BETA.INV BINOM.DIST BINOM.INV CEILING CEILING.MATH CEILING.PRECISE CHISQ.DIST ' +
    'CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHISQ.TEST CONCAT CONFIDENCE.NORM CONFIDENCE.T ' +
    'COVARIANCE.P COVARIANCE.S EXPON.DIST F.DIST.RT F.INV.RT F.TEST FILTER FLOOR FLOOR.MATH ' +
    'FLOOR.PRECISE GAMMA.DIST GAMMA.INV GAMMALN.PRECISE HSTACK HYPGEOM.DIST IFS ISO.CEILING ' +
    'LOGNORM.DIST LOGNORM.INV MAXIFS MINIFS NEGBINOM.DIST NETWORKDAYS.INTL NORM.DIST NORM.INV ' +
    'NORM.S.DIST NORM.S.INV PERCENTILE.EXC PERCENTILE.INC POISSON.DIST QUARTILE.EXC ' +
    'QUARTILE.INC SEQUENCE SORT STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV ' +
    'T.INV.2T T.TEST TEXTJOIN UNIQUE VAR.P VAR.S VSTACK WEIBULL.DIST WORKDAY.INTL XLOOKUP Z.TEST'
  ).split(' '),
);

/** Older forms, which OpenFormula (ISO/IEC 26300, part 2) keeps under this prefix. */
const legacy = new Set('CHIDIST CHIINV CHITEST FDIST FINV NORMSDIST NORMSINV TDIST'.split(' '));

/** Other names for the same. */
const named: Readonly<Record<string, string>> = {
  'F.DIST': 'FDIST',
  'F.INV': 'FINV',
  'SKEW.P': 'SKEWP',
};
const ours = new Map(Object.entries(named).map(([our, stored]) => [stored, our]));

export function storedName(name: string): string {
  if (later.has(name)) return `COM.MICROSOFT.${name}`;
  if (legacy.has(name)) return `LEGACY.${name}`;
  return named[name] ?? name;
}

export function bareName(stored: string): string {
  const name = stored.toUpperCase();
  return ours.get(name) ?? name.replace(/^(?:COM\.MICROSOFT|LEGACY|ORG\.OPENOFFICE)\./, '');
}
