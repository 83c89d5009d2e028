import * as v from 'valibot';
import { quantityNames } from '../../../functions/quantities/names.ts';
import { isId } from '../../formula/ids.ts';
import type { Json } from '../types.ts';
import { phases, shelves } from '../types.ts';
import { faultOfJson } from './openjson.ts';

/** The parts that files and journals have in common. A rule's message ends “… must be”. */
export const id = v.pipe(v.string(), v.check(isId, 'an id of letters, digits, “_” and “-”'));
export const finite = v.pipe(v.number(), v.finite('a finite number'));
export const quantity = v.picklist(quantityNames);
export const receptor = v.picklist(['dome', 'flat']);
export const role = v.picklist(['reading', 'choice', 'given', 'answer']);
const positive = v.pipe(v.number(), v.finite('a finite number'), v.gtValue(0, 'more than zero'));
const whole = v.pipe(v.number(), v.integer('a whole number'), v.minValue(0, 'zero or more'));

export const format = v.strictObject({
  decimals: v.exactOptional(v.pipe(whole, v.maxValue(12, 'at most 12'))),
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
    'plain JSON, not nested too deep',
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
  continuousShare: v.pipe(positive, v.maxValue(1, 'at most 1')),
  currency: v.pipe(v.string(), v.maxLength(10, 'at most 10 characters')),
  tolerance: v.pipe(v.number(), v.finite('a finite number'), v.minValue(0, 'zero or more')),
  zone: v.pipe(v.string(), v.maxLength(100, 'at most 100 characters')),
  page: v.picklist(['A4', 'A3', 'Letter', 'Legal', 'Tabloid']),
  more: openRecord,
});

export const sheetProperties = v.strictObject({
  name: v.string(),
  title: v.string(),
  purpose: v.string(),
  phase: v.nullable(v.picklist(phases)),
  template: v.nullable(v.string()),
  tolerance: v.nullable(
    v.pipe(v.number(), v.finite('a finite number'), v.minValue(0, 'zero or more')),
  ),
  frozenRows: whole,
  frozenColumns: whole,
});

export const lineProperties = v.strictObject({
  size: v.exactOptional(
    v.pipe(v.number(), v.finite('a finite number'), v.gtValue(0, 'more than zero')),
  ),
  quantity: v.exactOptional(quantity),
  role: v.exactOptional(role),
  format: v.exactOptional(format),
});

export const shelfItem = v.pipe(
  openRecord,
  v.check((item) => typeof item['id'] === 'string' && isId(item['id']), 'an item with an id'),
);
export const shelfName = v.picklist(shelves);

export const photoHash = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, '64 hexadecimal digits'));

const photo = v.strictObject({
  hash: photoHash,
  name: v.pipe(v.string(), v.maxLength(200, 'at most 200 characters')),
  size: v.pipe(v.number(), v.integer('a whole number'), v.minValue(1, 'at least 1')),
});

/** What a cell says about itself, the same in files and in journals. */
export const said = {
  quantity: v.exactOptional(quantity),
  yields: v.exactOptional(v.literal(true)),
  role: v.exactOptional(role),
  format: v.exactOptional(format),
  note: v.exactOptional(v.string()),
  tolerance: v.exactOptional(
    v.pipe(v.number(), v.finite('a finite number'), v.minValue(0, 'zero or more')),
  ),
  receptor: v.exactOptional(receptor),
  pointed: v.exactOptional(v.string()),
  photos: v.exactOptional(
    v.pipe(v.array(photo), v.minLength(1, 'at least one'), v.maxLength(50, 'at most 50')),
  ),
};

/** What it holds: one of these, or none for a blank. */
export const held = {
  typed: v.exactOptional(v.string()),
  number: v.exactOptional(finite),
  text: v.exactOptional(v.string()),
  truth: v.exactOptional(v.boolean()),
};
