import { addFixtures, type NewFixture } from '../src/book/make/fixtures.ts';
import { addSpectra } from '../src/book/make/spectra.ts';
import type { Book, Means } from '../src/book/types.ts';
import { takeFile } from '../src/files/photometric/take.ts';
import { sampleSpectra } from '../src/files/spectra/samples.ts';
import { takeSpectra } from '../src/files/spectra/take.ts';
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

/** The invented spectra, under their own names. */
export function shelveSpectra(book: Book, means: Means): void {
  const all = sampleSpectra.flatMap(({ file, name, text }) => {
    const taken = takeSpectra({ name: file, content: new TextEncoder().encode(text) });
    if (!taken.ok) throw new Error(`${file}: ${taken.reason}`);
    return taken.spectra.map((spectrum) => ({ ...spectrum, name }));
  });
  run(book, addSpectra(book.document, means, all));
}
