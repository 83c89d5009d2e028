import { rename as renameBook, settings, unitCommands } from './book.ts';
import { bold, format, italic, note, quantity, roleCommands, target } from './cells.ts';
import type { AnyCommand } from './command.ts';
import { clear, type } from './entry.ts';
import { figureCommands } from './figures.ts';
import { fixtureCommands } from './fixtures.ts';
import { fill, fillDown, fillRight } from './fill.ts';
import { redo, undo } from './history.ts';
import { filterCommands } from './filter.ts';
import { lineCommands } from './lines.ts';
import * as names from './names.ts';
import { find, replaceAll } from './replace.ts';
import { sheetCommands } from './sheets.ts';
import { spectrumCommands } from './spectra.ts';
import { sortDown, sortUp } from './sort.ts';

/** Every command that needs nothing but the book, the engine and the session. */
export const bookCommands: readonly AnyCommand[] = [
  undo,
  redo,
  type,
  clear,
  fill,
  fillDown,
  fillRight,
  find,
  replaceAll,
  sortUp,
  sortDown,
  ...filterCommands,
  format,
  bold,
  italic,
  note,
  quantity,
  ...roleCommands,
  target,
  ...lineCommands,
  ...sheetCommands,
  ...figureCommands,
  ...fixtureCommands,
  ...spectrumCommands,
  names.define,
  names.rename,
  names.remove,
  names.manage,
  renameBook,
  settings,
  ...unitCommands,
];
