/** What stands where something broke that should not have. */
export const broken = {
  part: 'This part could not be drawn. The book is unharmed: go on with it, it is kept.',
  figure: 'This figure could not be drawn. The book is unharmed: go on with it, it is kept.',
  unexpected: 'Something went wrong that should not have. The book is as it was.',
  copy: 'Copy details',
  copied: 'Details copied. They hold no reading of yours but what the fault itself names.',
  notCopied: 'The browser does not let the details be copied.',
} as const;
