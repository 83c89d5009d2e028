import { plural } from './plural.ts';

/** All books in one file. */
export const archive = {
  readMe: [
    'An archive of Halfstop: every book that was kept on a device, with its versions.',
    'Each file in books and in versions is a whole book and opens by itself.',
  ],
  fileName: (day: string) => `Halfstop archive ${day}`,
  saved: (count: number) =>
    `Saved ${plural(count, 'book')} with their versions as an archive. The undo history is not in it.`,
  savedWithout: (count: number, unreadable: string) =>
    `Saved ${plural(count, 'book')} with their versions as an archive. The undo history is not in it. Left out, because they cannot be read: ${unreadable}.`,
  taken: (added: number, beside: number, same: number) =>
    `${[
      ...(added > 0 ? [`${plural(added, 'book')} taken in`] : []),
      ...(beside > 0
        ? [`${plural(beside, 'book')} taken in beside the one that is here in another state`]
        : []),
      ...(same > 0 ? [`${plural(same, 'book')} here already`] : []),
    ].join(', ')}.`,
  empty: 'The archive is empty.',
  lacksFile: 'The archive lacks one of its files',
  bookDamaged: (reason: string) => `A book in the archive is damaged (${reason})`,
  noArchive: 'The file is not an archive of Halfstop',
  nothingTaken: (reason: string) => `${reason}, so nothing was taken in.`,
  larger: 'The archive is larger than any of ours',
  newer: 'The archive is of a newer Halfstop',
  listDamaged: 'The list in the archive is damaged',
} as const;
