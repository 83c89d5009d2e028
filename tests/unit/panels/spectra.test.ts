import { describe, expect, it } from 'vitest';
import { defaultWriting } from '../../../functions/quantities/settings.ts';
import { exampleSpectra } from '../../../functions/spectrum/exampleSpectra.ts';
import type { Spectrum } from '../../../functions/spectrum/spectrum.ts';
import { addFigure } from '../../../src/book/make/figures.ts';
import { addSpectra, renameSpectrum } from '../../../src/book/make/spectra.ts';
import { figuresOf } from '../../../src/book/figures.ts';
import { spectraOf } from '../../../src/book/spectra.ts';
import { looksLikeSpectra } from '../../../src/files/spectra/looks.ts';
import { sampleSpectra } from '../../../src/files/spectra/samples.ts';
import { factsOf, filterFacts, lineOf } from '../../../src/panels/spectra/facts.ts';
import { takeIn } from '../../../src/panels/spectra/takeIn.ts';
import { openBook } from '../engine/support/openBook.ts';

const file = (name: string, text: string, size = text.length) => ({
  ...{ name, size },
  arrayBuffer: async () => new TextEncoder().encode(text).buffer,
});
const spectrumOf = (name: string) => exampleSpectra.named(name) as Spectrum;

describe('files of spectra on their way onto the shelf', () => {
  it('come one after the other, each whole or not at all, with progress', async () => {
    const steps: number[] = [];
    const files = [
      ...sampleSpectra.map(({ file: name, text }) => file(name, text)),
      file('letter.txt', 'Dear all'),
      file('huge.csv', '', 6_000_000),
    ];
    const { things, sentences } = await takeIn(files, (done) => steps.push(done));
    expect(things).toHaveLength(7);
    expect(steps).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    expect(sentences).toEqual([
      'letter.txt: Line 1: There is no table of wavelengths and values in it. Nothing was taken.',
      'huge.csv: It is too large for a file of spectra.',
    ]);
  });

  it('are told from tables for a sheet: a broken one still is a spectrum, a walk of readings is none', () => {
    for (const { text } of sampleSpectra) expect(looksLikeSpectra(text)).toBe(true);
    expect(looksLikeSpectra('nm,power\n380,1\n385,x\n')).toBe(true);
    expect(looksLikeSpectra('Point,Reading\nKey side,f/5.6\nFill side,f/4\n')).toBe(false);
    expect(looksLikeSpectra('1,2\n3,4\n5,6\n')).toBe(false);
  });
});

describe('what a spectrum comes to in the list and below it', () => {
  it('is said in whole numbers, as the standards report them', () => {
    expect(lineOf('Tungsten', spectrumOf('Tungsten'), defaultWriting)).toEqual([
      ...['3200 K', '0', '100', '100', '100'],
    ]);
    expect(lineOf('Amber', spectrumOf('Amber'), defaultWriting)).toBeUndefined();
  });

  it('behind a filter the loss is said too; lux only of an irradiance', () => {
    const { facts } = factsOf(
      ...(['Light', spectrumOf('Equal energy'), defaultWriting, spectrumOf('Grey')] as const),
    );
    const text = Object.fromEntries(facts.map((fact) => [fact.label, fact.text]));
    // A quarter is two stops; 683 × 106.86 × a milliwatt is 72.98 lx (CIE 15), a quarter of it 18.25.
    expect(text['The filter takes']).toBe('2 stops');
    expect(text['Level where it was read']).toMatch(/^18\.2\d lx$/);
    const bare = factsOf('Tungsten', spectrumOf('Tungsten'), defaultWriting).facts;
    expect(bare.map(({ label }) => label)).not.toContain('Level where it was read');
  });

  it('a filter says what it makes of tungsten and of daylight', () => {
    expect(filterFacts('Grey', spectrumOf('Grey'), defaultWriting)).toEqual([
      { label: 'Of tungsten, 3200 K', text: 'makes 3200 K, Duv 0; takes 2 stops' },
      { label: 'Of daylight, 5600 K', text: expect.stringMatching(/^makes 5\d{3} K.*2 stops$/) },
    ]);
  });

  it('a light without a colour temperature says so once for each reason', () => {
    const nanometres = Float64Array.from({ length: 81 }, (_, at) => 380 + 5 * at);
    const values = nanometres.map((nm) => (Math.abs(nm - 530) < 12 ? 1 : 0));
    const { facts, sentences } = factsOf(
      ...(['Green', { nanometres, values, measures: 'shape' }, defaultWriting] as const),
    );
    expect(facts.find(({ label }) => label === 'Ra')?.text).toBe('–');
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toMatch(/^Green: x .* is too green for a colour temperature/);
  });
});

it('figures follow a spectrum that is renamed, in the same gesture', () => {
  const { document, means, must, book } = openBook({ Light: [['']] });
  const nm = Array.from({ length: 81 }, (_, at) => 380 + 5 * at);
  must(addSpectra(document, means, [{ name: 'Key', kind: 'shape', nm, values: nm.map(() => 1) }]));
  const options = { spectrum: 'KEY', filter: '' };
  const planned = { kind: 'spectrum', title: 'Key', cells: {}, options };
  must(addFigure(document, means, document.sheets[0]!.id, planned));
  must(renameSpectrum(document, spectraOf(document)[0]!.id, 'Back light'));
  expect(figuresOf(document)[0]?.options).toEqual({ spectrum: 'Back light', filter: '' });
  book.undo();
  expect(figuresOf(document)[0]?.options).toEqual(options);
});
