import { addFixtures, type NewFixture } from '../src/book/make/fixtures.ts';
import type { Book, Means } from '../src/book/types.ts';
import { takeFile } from '../src/files/photometric/take.ts';
import { sampleFixtures } from '../src/tools/sample-fixtures.ts';
import { run } from './build.ts';

/** A fixture that came without a file: one reading before it. */
const frame: NewFixture = {
  name: 'Frame 120 × 120',
  kind: 'panel',
  width: 1.2,
  height: 1.2,
  lux: 620,
  distance: 2,
};

/** Invented lamps for a book: those named, or all of them. */
export function shelve(book: Book, means: Means, wanted?: readonly string[]): void {
  const files = sampleFixtures.map(({ file, name, text }): NewFixture => {
    const taken = takeFile({ name: file, content: new TextEncoder().encode(text) }, name);
    if (!taken.ok) throw new Error(`${file}: ${taken.reason}`);
    return taken.fixture;
  });
  const all = [...files, frame];
  const kept = wanted ? all.filter(({ name }) => wanted.includes(name)) : all;
  run(book, addFixtures(book.document, means, kept));
}
