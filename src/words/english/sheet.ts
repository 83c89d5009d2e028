/** What a sheet says about itself. */
export const sheet = {
  title: 'This sheet',
  titleField: 'Title',
  purpose: 'What it is for, in one line',
  phase: 'Phase of the work',
  noPhase: 'none',
  name: 'Name in formulas',
  rows: 'Rows that stay in view',
  columns: 'Columns that stay in view',
  leave: 'Leave as it was',
  keep: 'Keep',
  add: 'Add a sheet',
  blank: 'Blank sheet',
  exercise: 'An exercise',
  exerciseHelp: 'Twelve of ours, from stops to spectra, or ask on a sheet of your own.',
  blankHelp: 'Rows and columns, and nothing in them.',
} as const;
