import { book } from './english/book.ts';
import { bookFile } from './english/bookFile.ts';
import { commands } from './english/commands.ts';

/** Everything the product says, in English: one file for each part of the house. */
export const english = {
  book,
  bookFile,
  commands,
} as const;
