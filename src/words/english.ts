import { book } from './english/book.ts';
import { bookFile } from './english/bookFile.ts';
import { check } from './english/check.ts';
import { commands } from './english/commands.ts';
import { engine } from './english/engine.ts';
import { formula } from './english/formula.ts';
import { instead } from './english/instead.ts';
import { storage } from './english/storage.ts';

/** Everything the product says, in English: one file for each part of the house. */
export const english = {
  book,
  bookFile,
  check,
  commands,
  engine,
  formula,
  instead,
  storage,
} as const;
