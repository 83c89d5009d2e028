import { describe, expect, it } from 'vitest';
import { beamEdges } from '../../../../functions/fixture/beam.ts';
import { fixturesOf } from '../../../../src/book/fixtures.ts';
import { fixtureOf } from '../../../../src/files/photometric/shelf.ts';
import { takeFile } from '../../../../src/files/photometric/take.ts';
import { sha256 } from '../../../../src/files/photometric/sha256.ts';
import { sampleFixtures } from '../../../../src/tools/sample-fixtures.ts';
import { build } from '../../../../templates/harbour-hours/plan.ts';

function photometryOf(name: string) {
  const sample = sampleFixtures.find((one) => one.name === name);
  if (!sample) throw new Error(`There is no ${name}.`);
  const taken = takeFile({ name: sample.file, content: new TextEncoder().encode(sample.text) });
  if (!taken.ok) throw new Error(taken.reason);
  return { ...taken.photometry, notes: taken.notes };
}

describe('the invented sample fixtures are read as they are stated', () => {
  it.each([
    ['Fresnel 650 at spot', 48_000, 10, 650],
    ['Fresnel 650 at flood', 4_600, 50, 650],
    ['Small profile 19°', 26_000, 19, 200],
    ['Open face 800', 8_200, 100, 800],
  ])('%s', (name, peak, beam, watts) => {
    const photometry = photometryOf(name);
    const edges = beamEdges(photometry, 0.5, 0);
    expect(photometry).toMatchObject({ name, watts, notes: [] });
    expect(Math.abs(photometry.peak / peak - 1)).toBeLessThan(1e-4);
    expect(Math.abs((edges?.left ?? 0) + (edges?.right ?? 0) - beam)).toBeLessThan(0.1);
  });

  it('the open face is wider level than upright, the tube wider upright than level', () => {
    const width = (name: string, c: number) => beamEdges(photometryOf(name), 0.5, c)?.right ?? 0;
    expect(width('Open face 800', 0)).toBeGreaterThan(width('Open face 800', 90) + 10);
    expect(width('Tube 120', 90)).toBeGreaterThan(width('Tube 120', 0) + 10);
  });
});

it('the sample book keeps all of them whole, and one that came without a file', () => {
  const { document } = build();
  const kept = fixturesOf(document);
  expect(kept.map(({ name }) => name).toSorted()).toEqual(
    [...sampleFixtures.map(({ name }) => name), 'Frame 120 × 120'].toSorted(),
  );
  for (const item of document.shelf('fixtures').items) expect(fixtureOf(item)).toBeTypeOf('object');
  for (const one of kept) if (one.kind === 'file') expect(one.hash).toBe(sha256(one.text));
});

describe('SHA-256 (FIPS 180-4, its examples)', () => {
  it.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('of “%s”', (text, hash) => {
    expect(sha256(text)).toBe(hash);
  });
});
