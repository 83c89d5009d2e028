/** What a cell should come to. */
export const target = {
  shouldComeTo: (address: string, label: string) =>
    `${[address, label].filter(Boolean).join(', ')} should come to`,
  title: 'What it should come to',
  help: 'A value such as f/2.8 or 250 lx, or a formula. Empty for nothing.',
  keep: 'Keep',
} as const;
