import { plural } from './plural.ts';

/** Rows of a table left out of view by what stands in one of its columns. */
export const filter = {
  name: 'Filter rows by this column',
  alike: 'Show only rows like this one',
  showAll: 'Show all rows',
  title: (column: string) => `Rows by ${column}`,
  by: (column: string) => `Filter rows by ${column}`,
  help: 'What is ticked stays in view. The others are only out of sight: every sum still counts them.',
  apply: 'Filter',
  all: 'All',
  none: 'None',
  containing: 'Tick those that contain',
  blank: '(blank)',
  rows: (count: number) => plural(count, 'row'),
  noTable: 'Go to a cell of a table whose columns have captions.',
  notFiltered: 'All rows of this sheet are in view.',
  nothingLeft: 'Nothing is ticked, so no row would be left.',
  shown: (column: string, shown: number, of: number) =>
    `${String(shown)} of ${plural(of, 'row')} shown, by ${column}`,
  between: 'Rows are out of view there. Show all rows first, so that none is changed unseen.',
} as const;
