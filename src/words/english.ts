import { about } from './english/about.ts';
import { bar } from './english/bar.ts';
import { book } from './english/book.ts';
import { bookFile } from './english/bookFile.ts';
import { check } from './english/check.ts';
import { commands } from './english/commands.ts';
import { contents } from './english/contents.ts';
import { engine } from './english/engine.ts';
import { find } from './english/find.ts';
import { format } from './english/format.ts';
import { formula } from './english/formula.ts';
import { instead } from './english/instead.ts';
import { keyboard } from './english/keyboard.ts';
import { kinds } from './english/kinds.ts';
import { kit } from './english/kit.ts';
import { names } from './english/names.ts';
import { page } from './english/page.ts';
import { photo } from './english/photo.ts';
import { quantity } from './english/quantity.ts';
import { remarks } from './english/remarks.ts';
import { settings } from './english/settings.ts';
import { sheet } from './english/sheet.ts';
import { slip } from './english/slip.ts';
import { storage } from './english/storage.ts';
import { target } from './english/target.ts';

/** Everything the product says, in English: one file for each part of the house. */
export const english = {
  about,
  bar,
  book,
  bookFile,
  check,
  commands,
  contents,
  engine,
  find,
  format,
  formula,
  instead,
  keyboard,
  kinds,
  kit,
  names,
  page,
  photo,
  quantity,
  remarks,
  settings,
  sheet,
  slip,
  storage,
  target,
} as const;
