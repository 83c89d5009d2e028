/** What is said about files of other programs. */
export const files = {
  noTable: 'This is no table: a walk has a line for each point, with columns.',
  noHead: 'The first line of a walk names its columns; "point", "meter" and "reading" are wanted.',
  lineNoPoint: (line: number) => `Line ${String(line)} names no point.`,
  lineNoMeter: (line: number, meter: string) =>
    `Line ${String(line)}: "${meter}" is no meter known here.`,
  noFunctionElsewhere: (name: string) => `Other programs have no function ${name}.`,
  working: 'Working',
  comesToElse: 'Written out, it comes to something else with these entries.',
  formulaNote: (formula: string, reason: string) => `Formula in Halfstop: ${formula}\n${reason}`,
  tooLongElsewhere: 'It is too long for other programs.',
  largerThan50: 'The file is larger than 50 MB.',
  neither: 'The file is neither a book of sheets nor a table of text.',
  sheetLimits: (rows: number, columns: number) =>
    `A sheet has at most ${String(rows)} rows and ${String(columns)} columns.`,
  table: 'Table',
  untitled: 'Untitled',
  notXlsx: 'The file is not a spreadsheet in the form xlsx.',
  sheets200: 'The file has more than 200 sheets.',
  from1904: 'The file counts days from 1904: its dates are four years and a day early here.',
  formulaLanguage: (sheet: string) => `A formula of ${sheet} is in a language not known here.`,
  notOds: 'The file is not a spreadsheet in the form ods.',
  formulaLeft: (sheet: string, address: string, fault: string) =>
    `${sheet}, ${address}: ${fault} Its value is kept.`,
  nameLeft: (name: string, fault: string) => `The name ${name}: ${fault}`,
  moreLeft: (count: number) =>
    `${String(count)} more formulas could not be taken; their values are kept.`,
  noSheet: (name: string) => `There is no sheet “${name}”.`,
  noFunction: (name: string) => `There is no function ${name} here.`,
  formulasWork:
    'Formulas of the file work with these numbers as they stand, so they stay plain unless you choose otherwise.',
  lettersBroken: (part: string) => `The letters in ${part} are broken: they are not UTF-8.`,
  nothingTaken: 'Nothing was taken in, and the open book is as it was.',
  damaged: (kept: string) => `The file is damaged and cannot be read. ${kept}`,
  unpacksTooFar: 'The file unpacks to far more than it holds, as one made to do harm would.',
  tooManyParts: 'The file has more parts than a book of sheets ever has.',
  partTwice: 'The file holds one of its parts twice.',
  partDamaged: (part: string) => `The part ${part} is damaged.`,
  partDeclares: (part: string) =>
    `The part ${part} declares a document type, which no book of sheets needs.`,
  partTooDeep: (part: string) => `The part ${part} nests too deep.`,
  untitledBook: 'Untitled book',
  import: 'Import',
  olderForm:
    'The file is in an older form (xls) or closed with a password. Save it as xlsx or ods without a password.',
  tooManyCells: (most: number) => `The file has more than ${String(most)} cells.`,
  beyond: (sheet: string, cells: number, rows: number, column: string) =>
    `${sheet}: ${String(cells)} cells lie beyond row ${String(rows)} or column ${column}, where a sheet ends here.`,
  noSheets: 'The file has no sheet.',
  pivots: 'pivot tables',
  links: 'links to other files',
  embedded: 'embedded documents',
  leftOut: (what: string) => `The file’s ${what} are left out.`,
  sheet: 'Sheet',
} as const;
