/** What versions of a book are called. */
export const versions = {
  gone: 'This version is no longer kept.',
  byName: 'Kept by name',
  savedToFile: 'Saved to a file',
  beforeRestore: 'Before a version was restored',
  whileWorking: 'While working',
  now: 'The book as it is now',
  aVersion: 'A version',
  nothingChanged: 'Nothing has changed since the last version, so there is no other one.',
  kept: (title: string) => `Kept a version: ${title}.`,
  restore: (name: string) => `Restore “${name}”`,
  restored: (name: string) =>
    `The book is as it was: ${name}. What stood there before is kept as a version, and undo brings it back.`,
  already: 'The book is as it was then already.',
  versionGone: 'The version is gone.',
  unreadable: 'The book cannot be read.',
} as const;
