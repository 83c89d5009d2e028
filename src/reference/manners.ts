/** How every function takes its arguments and says what cannot be. Code stands between backticks. */
export const manners: readonly string[] = [
  'A bare number is in the unit that the function names; a text may name another: `"250 fc"`, `"f/5.6"`, `"1/50 s"`, `"172.8°"`, `"10 ft"`, `"4:1"`, `"ND 0.6"`.',
  'An f-number that is a mark means the mark’s exact value: 5.6 is 2^(5/2), and from f/5.6 to f/8 is exactly one stop.',
  'An empty cell is a reading still missing: the result waits. Zero light where a logarithm needs some is `no light`.',
  'Losses are positive. Differences are reading minus reference, so under is negative. Mired shifts that warm are positive, Duv and corrections towards green are positive.',
  'A plain formula uses standard OpenFormula functions only, so any spreadsheet can work it out; the names in it stand for the arguments in base units.',
];
