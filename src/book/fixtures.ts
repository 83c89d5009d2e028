import * as v from 'valibot';
import { id } from './form/schema.ts';
import type { Document, ShelfItem } from './types.ts';

const positive = v.pipe(v.number(), v.finite(), v.gtValue(0));
const name = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60));
const angle = v.pipe(positive, v.ltValue(180));
const watts = v.exactOptional(positive);
/** Whatever the crew should know of it: "scratched lens", "loft, second case". */
const note = v.exactOptional(v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(200)));

/** A photometric file, whole, as it came. */
const file = v.strictObject({
  id,
  name,
  kind: v.literal('file'),
  /** What the file was called. */
  file: v.string(),
  text: v.pipe(v.string(), v.maxLength(5_000_000)),
  /** SHA-256 of the text in UTF-8, in hexadecimal digits: the same file is known again by it. */
  hash: v.string(),
  /** The file of the lamp’s tilt that the first one names. */
  tilt: v.exactOptional(v.pipe(v.string(), v.maxLength(5_000_000))),
  /** In place of what the file states. */
  watts,
  note,
});

/** A reading in lux on the aim line, so many metres off. */
const reading = { lux: positive, distance: positive };

const round = { id, name, kind: v.literal('spot'), beam: angle, watts, note };
const wider = { field: v.exactOptional(angle), size: v.exactOptional(positive) };

/** From a data sheet: candela in the middle, or lux at a distance, with beam and field angle. */
const spot = v.union([
  v.strictObject({ ...round, ...wider, candela: positive }),
  v.strictObject({ ...round, ...wider, ...reading }),
]);

const face = { id, name, kind: v.literal('panel'), width: positive, height: positive, watts, note };

/** A matt face by its size and luminance, or by one reading straight in front. */
const panel = v.union([
  v.strictObject({ ...face, luminance: positive }),
  v.strictObject({ ...face, ...reading }),
]);

const fixture = v.union([file, spot, panel]);

/** A fixture as the book keeps it, on its shelf `fixtures`. Lengths in metres, angles in degrees. */
export type KeptFixture = v.InferOutput<typeof fixture>;
export type KeptFile = v.InferOutput<typeof file>;

/** `undefined` for an item that is no fixture as this version knows them: it is kept as it is. */
export function fixtureFrom(item: ShelfItem): KeptFixture | undefined {
  const read = v.safeParse(fixture, item);
  if (!read.success) return undefined;
  const kept = read.output;
  if (kept.kind === 'spot' && kept.field !== undefined && kept.field <= kept.beam) return undefined;
  return kept;
}

/** The fixtures of a book, by their names. */
export function fixturesOf(document: Pick<Document, 'shelf'>): readonly KeptFixture[] {
  return document
    .shelf('fixtures')
    .items.flatMap((item) => fixtureFrom(item) ?? [])
    .toSorted((one, other) => (keyOf(one.name) < keyOf(other.name) ? -1 : 1));
}

/** Names of fixtures are told apart without regard to case and to blanks around them. */
export const keyOf = (name: string): string => name.trim().toLowerCase();
