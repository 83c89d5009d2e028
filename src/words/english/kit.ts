/** What boxes of every kind say. */
export const kit = {
  close: 'Close',
  undo: 'Undo',
} as const;
