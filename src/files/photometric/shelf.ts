import { luminanceFrom, type Fixture, type Fixtures } from '../../../functions/fixture/fixture.ts';
import { point } from '../../../functions/fixture/throw.ts';
import { spotPhotometry } from '../../../functions/fixture/spot.ts';
import { fixtureFrom, type KeptFixture } from '../../book/fixtures.ts';
import type { Document, ShelfItem } from '../../book/types.ts';
import { byName } from '../byName.ts';
import { readPhotometric } from './read.ts';
import { words } from '../../words/words.ts';

/** Items never change, a changed fixture is another: each is read once. */
const read = new WeakMap<ShelfItem, Fixture | string | undefined>();

/** An item of the shelf as a fixture; a sentence where its file cannot be read. */
export function fixtureOf(item: ShelfItem): Fixture | string | undefined {
  if (read.has(item)) return read.get(item);
  const kept = fixtureFrom(item);
  const fixture = kept && built(kept);
  read.set(item, fixture);
  return fixture;
}

/** The fixtures of a book by name, for the engine. */
export const fixturesIn = (document: Pick<Document, 'shelf'>): Fixtures =>
  byName(document.shelf('fixtures').items, fixtureOf, words.photometric.unknownKind);

function built(kept: KeptFixture): Fixture | string {
  const { name } = kept;
  if (kept.kind === 'file') {
    const file = readPhotometric(kept.text, () => kept.tilt);
    if (!file.ok) return file.reason;
    const { watts = file.photometry.watts } = kept;
    return { kind: 'projector', name, photometry: { ...file.photometry, watts } };
  }
  const { watts } = kept;
  if (kept.kind === 'panel') {
    const { width, height } = kept;
    const luminance =
      'luminance' in kept ? kept.luminance : luminanceFrom(kept.lux, width, height, kept.distance);
    return { kind: 'panel', name, width, height, luminance, watts };
  }
  const { beam, field, size } = kept;
  const candela = 'candela' in kept ? kept.candela : kept.lux * kept.distance ** 2;
  const face = size === undefined ? point : { width: size, height: size, round: true };
  return {
    kind: 'projector',
    name,
    photometry: spotPhotometry({ name, candela, beam, field, watts, face }),
  };
}
