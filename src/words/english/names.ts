/** The names of the book. */
export const names = {
  offerBefore: 'A name lets a formula say',
  offerAfter: 'instead of an address. The book has none yet.',
  title: 'Names',
  name: 'Name',
  means: 'Means',
  comesTo: 'Comes to',
  nameOf: (name: string) => `Name ${name}`,
  delete: (name: string) => `Delete ${name}`,
  newName: 'New name',
  for: 'for',
  add: 'Add',
} as const;
