import { plural } from './plural.ts';

/** The start page. */
export const start = {
  justBegin: 'begin',
  binHolds: (count: number) => plural(count, 'book'),
  name: 'Halfstop',
  what: 'A lighting workbook',
  how: 'Write down what the meter says. See how far each point is from the plan, in stops, and what closes the gap.',
  begin: 'or begin',
  sample:
    'A sample book to look round in: the light of a documentary in a sail loft and a boat shed.',
  blank: 'Blank book',
  blankHelp: 'One sheet with nothing in it.',
  open: 'Open a file',
  openHelp: 'A book somebody saved, or a sheet of another program: xlsx, ods, CSV.',
  kept: 'Books are kept on this device and nothing is sent anywhere.',
  about: 'About and licences',
  staysAsItIs: 'What is kept of it stays as it is.',
  saveAsItIs: 'Save it as a file, as it is',
  goOn: 'go on where you left off',
  toBin: (title: string) => `Put ${title} in the bin`,
  toTheBin: 'Put in the bin',
  showAll: (count: number) => `Show all ${String(count)} books`,
  bin: 'Bin:',
  saveEverything: 'Save everything as an archive',
  takeInArchive: 'Take in an archive',
  openSaved: 'Open a saved file',
  missNoMore: 'Say no more of it',
} as const;
