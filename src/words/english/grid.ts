/** What the grid says to a screen reader. */
export const grid = {
  leave: 'Escape, then Tab, leaves the grid.',
  answer: 'your answer',
  remark: 'has a remark',
  note: 'has a note',
  cell: 'Cell',
  whole: 'Whole sheet',
  entry: (column: string, row: string) => `Entry, ${column}${row}`,
  noteOf: (note: string) => `Note: ${note}`,
} as const;
