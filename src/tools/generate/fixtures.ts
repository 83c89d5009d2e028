import { sampleFixtures } from '../sample-fixtures.ts';

/** Photometric files to try things with: public, so that they can be fetched and read by others. */
export function generate() {
  return sampleFixtures.map(({ file, text }) => ({ path: `public/fixtures/${file}`, text }));
}
