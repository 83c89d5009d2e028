import * as v from 'valibot';
import { keyOf } from './fixtures.ts';
import { day, finite, id, photo, quantity, receptor, timeOfDay } from './form/schema.ts';
import type { Document, ShelfItem } from './types.ts';

const said = v.pipe(v.string(), v.maxLength(400));
const words = v.pipe(v.string(), v.maxLength(4_000));
const name = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60));
const positive = v.pipe(finite, v.gtValue(0));
const stops = finite;
const lux = v.pipe(finite, v.minValue(0));
const listed = <T extends v.GenericSchema>(item: T) => v.pipe(v.array(item), v.maxLength(500));

/** What the readings were taken with: its name and what it reads more than the reference, in stops. */
const meter = v.strictObject({
  name,
  offset: v.exactOptional(stops),
  /** How far two readings of it lie apart, in stops. */
  spread: v.exactOptional(v.pipe(stops, v.minValue(0))),
});

/** What every reading is worked out with, and what the camera holds. Seconds, kelvin, stops. */
const camera = v.strictObject({
  meterAt: positive,
  time: positive,
  stop: positive,
  exposeKey: stops,
  dome: positive,
  flat: positive,
  spot: positive,
  white: v.exactOptional(positive),
  above: v.exactOptional(stops),
  below: v.exactOptional(stops),
  greySits: v.exactOptional(stops),
  /** Every setting over the points, as it was read. */
  settings: listed(
    v.strictObject({
      label: said,
      text: said,
      value: v.exactOptional(finite),
      quantity: v.exactOptional(quantity),
    }),
  ),
});

/** A number as it was read, in the base unit of its quantity, and as it was shown. */
const reading = v.strictObject({ value: finite, quantity, said });
const photos = v.exactOptional(v.pipe(v.array(photo), v.minLength(1), v.maxLength(50)));
const note = v.exactOptional(words);
/** When and with what, where the row says so. */
const taken = { time: v.exactOptional(said), meter: v.exactOptional(said) };

/** A point of the set; the first is the key. Its lamp’s own light is without the ambient. */
const point = v.strictObject({
  name,
  receptor,
  reading: v.exactOptional(reading),
  /** The stop that it means under the camera of the record. */
  f: v.exactOptional(positive),
  lux: v.exactOptional(lux),
  wanted: v.exactOptional(stops),
  fromKey: v.exactOptional(stops),
  own: v.exactOptional(lux),
  lampsOff: v.exactOptional(lux),
  distance: v.exactOptional(positive),
  nearest: v.exactOptional(positive),
  output: v.exactOptional(lux),
  ...taken,
  note,
  photos,
});

const spot = v.strictObject({
  name,
  reading: v.exactOptional(reading),
  fromGrey: v.exactOptional(stops),
  ...taken,
  note,
  photos,
});

const colour = v.strictObject({
  name,
  kelvin: v.exactOptional(positive),
  duv: v.exactOptional(finite),
  ...taken,
  note,
  photos,
});

/** A light of the rig, with all that its sheet says of it under its captions. */
const light = v.strictObject({
  name,
  sheet: said,
  says: listed(v.strictObject({ caption: said, text: said, value: v.exactOptional(finite) })),
});

const ratio = v.strictObject({ label: said, text: said, value: v.exactOptional(finite) });

const record = v.strictObject({
  id,
  name,
  place: said,
  date: day,
  time: timeOfDay,
  /** The sheet that it was made from. */
  sheet: said,
  by: v.exactOptional(said),
  meter: v.exactOptional(meter),
  /** What agreed then, in stops. */
  tolerance: v.pipe(stops, v.minValue(0)),
  camera,
  points: v.pipe(listed(point), v.minLength(1)),
  spots: listed(spot),
  colours: listed(colour),
  ratios: listed(ratio),
  rig: listed(light),
  note,
});

/** A lit set-up as it stood: kept on the shelf `records` and never changed. */
export type Record = v.InferOutput<typeof record>;
export type RecordedPoint = Record['points'][number];
export type RecordedLight = Record['rig'][number];

export const recordSchema = record;

/** `undefined` for an item that is no record as this version knows them: it is kept as it is. */
function recordFrom(item: ShelfItem): Record | undefined {
  const parsed = v.safeParse(record, item);
  return parsed.success ? parsed.output : undefined;
}

/** The records of a book, the latest first. */
export function recordsOf(document: Pick<Document, 'shelf'>): readonly Record[] {
  const when = ({ date, time }: Record) => `${date} ${time}`;
  return document
    .shelf('records')
    .items.flatMap((item) => recordFrom(item) ?? [])
    .toSorted(
      (one, other) =>
        when(other).localeCompare(when(one), 'en') ||
        (keyOf(one.name) < keyOf(other.name) ? -1 : 1),
    );
}

/** What only a light that stands somewhere says; a load on a circuit does not. */
const placed = ['distance', 'stands at', 'x', 'job'];

/** How many lights stand: one may be on several sheets, as “Key” and as “Key, bare”. */
export function lightsIn({ rig }: Pick<Record, 'rig'>): number {
  const stand = rig.filter(({ says }) => says.some(({ caption }) => placed.includes(caption)));
  return new Set(stand.map(({ name }) => keyOf(name.split(',')[0] ?? ''))).size;
}

/** The pictures that a record points at. */
export const photosOfRecord = ({ points, spots, colours }: Record): readonly string[] =>
  [...points, ...spots, ...colours].flatMap(({ photos = [] }) => photos.map(({ hash }) => hash));
