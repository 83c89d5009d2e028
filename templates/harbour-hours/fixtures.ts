import { addFixtures, type NewFixture } from '../../src/book/make/fixtures.ts';
import type { Book, Means } from '../../src/book/types.ts';
import { takeFile } from '../../src/files/photometric/take.ts';
import { sampleFixtures } from '../../src/tools/sample-fixtures.ts';
import { run } from '../build.ts';

/** The lamps of the film: from invented files, and one that came without a file. */
export function shelve(book: Book, means: Means): void {
  const files = sampleFixtures.map(({ file, name, text }): NewFixture => {
    const taken = takeFile({ name: file, content: new TextEncoder().encode(text) }, name);
    if (!taken.ok) throw new Error(`${file}: ${taken.reason}`);
    return taken.fixture;
  });
  const frame: NewFixture = {
    name: 'Frame 120 × 120',
    kind: 'panel',
    width: 1.2,
    height: 1.2,
    lux: 620,
    distance: 2,
  };
  run(book, addFixtures(book.document, means, [...files, frame]));
}
