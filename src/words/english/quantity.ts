/** What a cell measures. */
export const quantity = {
  title: 'What it measures',
  readAgain: (address: string) => `${address}. What was typed is read again as what you choose.`,
  such: (example: string) => `such as ${example}`,
  leave: 'Leave it to what is typed',
} as const;
