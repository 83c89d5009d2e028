import { plural } from './plural.ts';

/** The list of sheets by phase of the work. */
export const contents = {
  sheets: 'sheets',
  firstOfPhase: 'It is the first of its phase.',
  lastOfPhase: 'It is the last of its phase.',
  off: (count: number) => `${String(count)} off`,
  wait: (count: number) => `${String(count)} ${count === 1 ? 'waits' : 'wait'}`,
  remarks: (count: number) => plural(count, 'remark'),
  sheet: (title: string) => `Sheet ${title}`,
  describe: 'Title, purpose, phase',
  copy: 'Copy the sheet',
  moveUp: 'Move up',
  moveDown: 'Move down',
  delete: 'Delete the sheet',
  lastSheet: 'A book has at least one sheet.',
  title: 'Contents',
  close: 'Close the contents',
  inWholeBook: (whole: string) => `In the whole book ${whole}.`,
  addSheet: 'Add a sheet',
  show: 'Contents: show or fold away',
  menuFor: (sheet: string) => `Menu for ${sheet}`,
} as const;
