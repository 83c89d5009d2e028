import * as v from 'valibot';
import { quantityNames } from '../../../functions/quantities/names.ts';
import { isId } from '../../formula/ids.ts';
import type { Json } from '../types.ts';
import { mostText } from '../texts.ts';
import { phases, shelves } from '../types.ts';
import { faultOfJson } from './openjson.ts';
import { words } from '../../words/words.ts';

/** The parts that files and journals have in common. A rule's message ends “… must be”. */
export const id = v.pipe(v.string(), v.check(isId, words.bookFile.anId));
export const finite = v.pipe(v.number(), v.finite(words.bookFile.aFiniteNumber));
export const quantity = v.picklist(quantityNames);
export const receptor = v.picklist(['dome', 'flat']);
export const role = v.picklist(['reading', 'choice', 'given', 'answer']);
/** What people write; other texts have limits of their own. */
export const text = v.pipe(v.string(), v.maxLength(mostText, words.bookFile.atMostText(mostText)));
const positive = v.pipe(
  v.number(),
  v.finite(words.bookFile.aFiniteNumber),
  v.gtValue(0, words.bookFile.aboveZero),
);
const whole = v.pipe(
  v.number(),
  v.integer(words.bookFile.aWholeNumber),
  v.minValue(0, words.bookFile.zeroOrMore),
);

export const format = v.strictObject({
  decimals: v.exactOptional(v.pipe(whole, v.maxValue(12, words.bookFile.atMost12))),
  bold: v.exactOptional(v.boolean()),
  italic: v.exactOptional(v.boolean()),
  align: v.exactOptional(v.picklist(['left', 'centre', 'right'])),
  wrap: v.exactOptional(v.boolean()),
  unit: v.exactOptional(v.string()),
});

export const entrySettings = v.strictObject({
  decimal: v.picklist(['.', ',']),
  illuminance: v.picklist(['lx', 'fc']),
  length: v.picklist(['m', 'ft']),
  shutter: v.picklist(['time', 'angle']),
});

/** Any object that JSON can say, within reason. */
export const openRecord = v.pipe(
  v.custom<{ readonly [key: string]: Json }>(
    (value) =>
      typeof value === 'object' &&
      value !== null &&
      !Array.isArray(value) &&
      faultOfJson(value) === undefined,
    words.bookFile.plainJson,
  ),
);

export const settings = v.strictObject({
  ...entrySettings.entries,
  fNumber: v.picklist(['thirds', 'halves', 'tenths', 'decimals']),
  // Books from before there was a choice do not say.
  clock: v.optional(v.picklist(['24', '12']), '24'),
  receptor,
  domeConstant: positive,
  flatConstant: positive,
  reflectedConstant: positive,
  mainsHertz: positive,
  mainsVolts: positive,
  continuousShare: v.pipe(positive, v.maxValue(1, words.bookFile.atMost1)),
  currency: v.pipe(v.string(), v.maxLength(10, words.bookFile.atMost10Characters)),
  tolerance: v.pipe(
    v.number(),
    v.finite(words.bookFile.aFiniteNumber),
    v.minValue(0, words.bookFile.zeroOrMore),
  ),
  zone: v.pipe(v.string(), v.maxLength(100, words.bookFile.atMost100Characters)),
  page: v.picklist(['A4', 'A3', 'Letter', 'Legal', 'Tabloid']),
  more: openRecord,
});

const rowFilter = v.strictObject({
  head: id,
  column: id,
  hides: v.pipe(v.array(v.string()), v.minLength(1, words.bookFile.atLeastOne)),
});

export const sheetProperties = v.strictObject({
  name: text,
  title: text,
  purpose: text,
  phase: v.nullable(v.picklist(phases)),
  template: v.nullable(v.string()),
  tolerance: v.nullable(
    v.pipe(
      v.number(),
      v.finite(words.bookFile.aFiniteNumber),
      v.minValue(0, words.bookFile.zeroOrMore),
    ),
  ),
  frozenRows: whole,
  frozenColumns: whole,
  // A sheet that shows all its rows does not say so.
  filter: v.optional(v.nullable(rowFilter), null),
});

export const lineProperties = v.strictObject({
  size: v.exactOptional(
    v.pipe(
      v.number(),
      v.finite(words.bookFile.aFiniteNumber),
      v.gtValue(0, words.bookFile.aboveZero),
    ),
  ),
  quantity: v.exactOptional(quantity),
  role: v.exactOptional(role),
  format: v.exactOptional(format),
});

export const shelfItem = v.pipe(
  openRecord,
  v.check((item) => typeof item['id'] === 'string' && isId(item['id']), words.bookFile.itemWithId),
);
export const shelfName = v.picklist(shelves);

export const photoHash = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, words.bookFile.hash));

export const photo = v.strictObject({
  hash: photoHash,
  name: v.pipe(v.string(), v.maxLength(200, words.bookFile.atMost200Characters)),
  size: v.pipe(
    v.number(),
    v.integer(words.bookFile.aWholeNumber),
    v.minValue(1, words.bookFile.atLeast1),
  ),
});

const dayForm = /^\d{4}-\d{2}-\d{2}$/;
const timeForm = /^\d{2}:\d{2}$/;

/** By the clock on the wall: `2026-09-23`, `14:05`. */
export const day = v.pipe(v.string(), v.regex(dayForm, words.bookFile.aDay));
export const timeOfDay = v.pipe(v.string(), v.regex(timeForm, words.bookFile.aTime));

const taken = v.strictObject({
  date: day,
  time: timeOfDay,
  meter: v.exactOptional(v.pipe(v.string(), v.maxLength(200, words.bookFile.atMost200Characters))),
});

/** What a cell says about itself, the same in files and in journals. */
export const said = {
  quantity: v.exactOptional(quantity),
  yields: v.exactOptional(v.literal(true)),
  role: v.exactOptional(role),
  format: v.exactOptional(format),
  note: v.exactOptional(text),
  tolerance: v.exactOptional(
    v.pipe(
      v.number(),
      v.finite(words.bookFile.aFiniteNumber),
      v.minValue(0, words.bookFile.zeroOrMore),
    ),
  ),
  receptor: v.exactOptional(receptor),
  pointed: v.exactOptional(v.string()),
  taken: v.exactOptional(taken),
  photos: v.exactOptional(
    v.pipe(
      v.array(photo),
      v.minLength(1, words.bookFile.atLeastOne),
      v.maxLength(50, words.bookFile.atMost50),
    ),
  ),
};

/** What it holds: one of these, or none for a blank. */
export const held = {
  typed: v.exactOptional(text),
  number: v.exactOptional(finite),
  text: v.exactOptional(text),
  truth: v.exactOptional(v.boolean()),
};
