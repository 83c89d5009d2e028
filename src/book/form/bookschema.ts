import * as v from 'valibot';
import {
  entrySettings,
  finite,
  held,
  id,
  lineProperties,
  photoHash,
  quantity,
  said,
  settings,
  sheetProperties,
  shelfItem,
  text,
} from './schema.ts';
import { form, version } from './version.ts';
import { words } from '../../words/words.ts';

const index = v.pipe(
  v.number(),
  v.integer(words.bookFile.aWholeNumber),
  v.minValue(0, words.bookFile.zeroOrMore),
);

const cell = v.strictObject({
  at: v.string(),
  ...held,
  formula: v.exactOptional(v.string()),
  under: v.exactOptional(index),
  ...said,
  target: v.exactOptional(v.union([finite, v.string()])),
});

const line = v.strictObject({ id, ...lineProperties.entries });

const sheet = v.strictObject({
  id,
  properties: sheetProperties,
  rows: v.array(v.string()),
  columns: v.array(v.string()),
  rowProperties: v.array(line),
  columnProperties: v.array(line),
  areas: v.array(v.strictObject({ id, range: v.string(), quantity })),
  cells: v.array(cell),
});

const shelf = v.strictObject({ version: v.literal(1), items: v.array(shelfItem) });

/** Eight megabytes in base64: many times what a photo of 1,600 pixels takes. */
export const jpeg = v.pipe(
  v.string(),
  v.maxLength(11_000_000, words.bookFile.photoTooLarge),
  // The first three bytes of every JPEG are FF D8 FF.
  v.check((text) => /^\/9j\/[A-Za-z0-9+/]*={0,2}$/.test(text), words.bookFile.aPhoto),
);

/** The file form, version 1. README.md beside this folder says the same in words. */
export const bookSchema = v.strictObject({
  form: v.literal(form),
  version: v.literal(version),
  title: text,
  settings,
  typedUnder: v.array(entrySettings),
  sheets: v.pipe(v.array(sheet), v.minLength(1, words.bookFile.oneSheet)),
  names: v.array(v.strictObject({ id, name: v.string(), formula: v.string() })),
  figures: shelf,
  fixtures: shelf,
  spectra: shelf,
  records: shelf,
  exercises: v.exactOptional(shelf),
  photos: v.exactOptional(v.array(v.strictObject({ hash: photoHash, jpeg }))),
});

export type BookJson = v.InferOutput<typeof bookSchema>;
export type SheetJson = v.InferOutput<typeof sheet>;
