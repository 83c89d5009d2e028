import { keyOf } from '../book/fixtures.ts';
import { recordsOf, type Record } from '../book/records.ts';
import type { Document } from '../book/types.ts';

type Meter = NonNullable<Record['meter']>;

const isTold = ({ offset, spread }: Meter): boolean => (offset ?? spread) !== undefined;

/** A meter as it was said; where only its name was, with what the latest record tells of that meter. */
export function knownMeter(document: Document, said: Meter): Meter | undefined {
  if (said.name === '' || isTold(said)) return said.name === '' ? undefined : said;
  return (
    recordsOf(document)
      .flatMap(({ meter }) => meter ?? [])
      .find((meter) => keyOf(meter.name) === keyOf(said.name) && isTold(meter)) ?? said
  );
}
