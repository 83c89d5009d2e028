/** The entry line above the grid. */
export const entry = {
  whatIsIn: (address: string, label: string) =>
    `What is in ${address}${label === '' ? '' : `, ${label}`}`,
  noMoreArguments: (name: string, most: number) =>
    `${name} takes no more than ${String(most)} arguments.`,
  goTo: 'Go to an address or a name',
  result: 'Result',
  suggestions: 'Suggestions',
} as const;
