/** The command line. */
export const commandLine = {
  usage: 'Usage:',
  noCommand: (name: string) => `There is no command ${name}.`,
  noOption: (name: string) => `There is no option --${name} here.`,
  wants: (name: string, what: string) => `--${name} wants ${what}.`,
  aValue: 'a value',
  aFile: 'a file',
  sheetName: 'the name of a sheet',
  pointOrComma: '. or ,',
  nameAndFile: 'NAME=FILE, a photometric file',
  nameAndSpectrum: 'NAME=FILE, a file with a spectrum',
  severalSpectra: (path: string, names: string) =>
    `${path} holds several spectra; name one of ${names}.`,
  wantsNot: (name: string, what: string, got: string) => `--${name} wants ${what} and not ${got}.`,
  nameFile: 'NAME=FILE',
  noSheet: (name: string) => `There is no sheet ${name}.`,
  noFile: 'A file is missing.',
  oneFile: 'One file at a time; options come before it.',
  twoFiles: 'Two files are wanted: IN and OUT.',
  notMore: 'Two files at a time; options come before them.',
  ending: (path: string, endings: string) => `${path} ends in none of ${endings}.`,
  noFormula: 'A formula is missing.',
  dashAlone: '- stands alone: the formulas come from standard input.',
  unreadable: (path: string) => `${path} cannot be read.`,
  neither: (path: string) => `${path} is neither a book nor a table of text.`,
  withoutSheet: (name: string) => `${name} has no sheet.`,
  check: {
    usage: '[--json] [--notes] FILE',
    summary:
      'Names each cell whose formula mixes up what cells measure; with --notes also what is only worth a look.',
  },
  convert: {
    usage: '[--values] [--decimal . or ,] IN OUT',
    summary:
      'Turns a book into xlsx, ods, csv or tsv and back, by the endings of the files (json is a book); csv and tsv get a file for each sheet, OUT-<sheet>.csv. With --values formulas go out as what they come to.',
  },
  evaluate: {
    usage:
      '[--book FILE] [--sheet NAME] [--decimal . or ,] [--fixture NAME=FILE]… [--spectrum NAME=FILE]… FORMULA… (or - to read them from standard input)',
    summary: 'Works out formulas and prints one JSON object a line.',
  },
  values: {
    usage: '[--sheet NAME] FILE',
    summary: 'Prints what a book, or a table with formulas, comes to: as CSV, in base units.',
  },
} as const;
