import { plural } from './plural.ts';

const several = 3;

const listed = (titles: readonly string[]): string =>
  titles.length > several
    ? `${titles.slice(0, several).join(', ')} and ${plural(titles.length - several, 'other book')}`
    : titles.join(', ');

/** The books kept on this device. */
export const shelf = {
  binTimes: (since: string, until: string) => `since ${since}, until ${until}`,
  notKept:
    'What you changed is not kept on this device. Save the book to a file first, or do this once more to leave the changes behind.',
  nothingKept: 'Nothing is kept of this book.',
  book: 'Book',
  savedFile: 'Saved as a file. What is kept here stays as it is.',
  saving: 'Saving',
  notSaved: (reason: string) => `Not saved. ${reason}`,
  saved: (at: string) => `Saved${at}, nothing leaves this device`,
  halfWritten:
    'The last change was only half written when this book was kept, so it is left out. Everything before it is here.',
  damaged:
    'One change in this book cannot be read. Here is the book up to that change, as a book of its own; the damaged one stays as it is.',
  damagedBefore:
    'One change in this book cannot be read. Here is the book that was made of it before, up to that change; the damaged one stays as it is.',
  inBin: 'This book is in the bin. Take it out of there first.',
  upToDamage: (title: string) => `${title}, up to the damage`,
  rename: 'Rename the book',
  gone: 'This book is no longer kept on this device.',
  keptHere: 'This tab keeps the book already.',
  notLetGo:
    'The other tab has not let go of the book. It may have something that is not kept yet: go there first.',
  goneFor:
    'The book of this address is no longer kept on this device. It comes back from an archive, or from a file that was saved.',
  cleared:
    'This browser has cleared what it kept. The open book is kept again, without its earlier versions; other books come back from an archive or from files that were saved.',
  missing: (titles: readonly string[]) =>
    `This browser has cleared ${listed(titles)}. ${titles.length === 1 ? 'It comes' : 'They come'} back from an archive, or from files that were saved.`,
} as const;
