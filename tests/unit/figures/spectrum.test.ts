import { describe, expect, it } from 'vitest';
import type { Spectrum } from '../../../functions/spectrum/spectrum.ts';
import { spectraFrom } from '../../../functions/spectrum/spectra.ts';
import { screenColour, wavelengthColour } from '../../../src/figures/kit/screen.ts';
import { drawnAt, every, made, make, single, texts, waits } from './support.ts';

const options = (spectrum: string, filter = '') => ({ options: { spectrum, filter } });

describe('a spectrum against its reference', () => {
  it('says its colour, its reference and where it has less than half of that', () => {
    const { sentences } = made('spectrum', options('Phosphor white'));
    // Colour temperature, Duv and the indices are those of the library’s functions, tested there.
    expect(sentences[0]).toBe('Phosphor white: 4288 K, Duv +0.0063, highest at 575 nm.');
    expect(sentences[1]).toBe(
      'The broken line is Planckian light of 4288 K, as bright to the eye.',
    );
    expect(sentences[2]).toMatch(/^It has less than half of that from 380 to \d+ nm/);
    expect(sentences).toContain('TLCI 50.');
  });

  it('tungsten is its own reference and lacks nothing', () => {
    const { sentences } = made('spectrum', options('Tungsten'));
    expect(sentences).toContain(
      'The broken line is Planckian light of 3200 K, as bright to the eye.',
    );
    expect(sentences).toContain('Nowhere for long has it less than half of that.');
    expect(sentences).toContain('Ra 100, SSI 100 to its own temperature.');
  });

  it('is named in a cell too, and read from two columns of a sheet', () => {
    const inputs = { spectrum: single('tungsten') };
    expect(made('spectrum', { inputs }).sentences[0]).toContain('tungsten: 3200 K');
    const cells = Array.from({ length: 81 }, (_, at) => [{ value: 380 + 5 * at }, { value: 1 }]);
    const { sentences } = made('spectrum', { inputs: { spectrum: cells } });
    // Equal power at every wavelength is x = y = 1/3: 5455 K, a little to magenta (CIE 15).
    expect(sentences[0]).toMatch(/^Spectrum of the cells: 545\d K, Duv −0\.00\d\d/);
  });

  it('behind a filter it is another light, and a filter alone says what it lets through', () => {
    const { sentences } = made('spectrum', options('Tungsten', 'Amber'));
    expect(sentences[0]).toMatch(/^Tungsten through Amber: 2\d{3} K/);
    expect(made('spectrum', options('Amber')).sentences).toEqual([
      'Amber: lets through from 10 % to 90 %.',
    ]);
  });

  it('says why there is nothing to draw', () => {
    expect(make('spectrum', {})).toEqual({
      reason: 'Choose a spectrum of the book, or the cells that hold one.',
    });
    expect(make('spectrum', { inputs: { spectrum: [[waits]] } })).toEqual({ reason: waits.reason });
    const unknown = make('spectrum', options('Moon'));
    expect('reason' in unknown && unknown.reason).toMatch(/has no spectrum “Moon”; it has/);
  });

  it('what was made up is said and hatched', () => {
    const nanometres = Float64Array.from({ length: 61 }, (_, at) => 400 + 5 * at);
    const short: Spectrum = {
      ...{ nanometres, values: nanometres.map(() => 1), measures: 'shape' },
      madeUp: [{ kind: 'below', from: 380, to: 400 }],
    };
    const figure = made('spectrum', { spectra: spectraFrom({ short }), ...options('short') });
    expect(figure.sentences).toContain(
      'From 380 to 400 nm nothing was read: the first reading stands for it.',
    );
    const hatches = (drawn: ReturnType<typeof drawnAt>) =>
      every(drawn).filter(({ attributes }) => attributes['stroke-width'] === 1).length;
    expect(hatches(drawnAt(figure))).toBe(1);
    expect(hatches(drawnAt(made('spectrum', options('Tungsten'))))).toBe(0);
  });

  it('the scale is in milliwatts where it was read so, and the colours are owned to be about right', () => {
    const irradiance = texts(drawnAt(made('spectrum', options('Equal energy'))));
    expect(irradiance).toContain('mW/(m²·nm)');
    expect(irradiance).toContain('Colours are about what a screen can show.');
    expect(texts(drawnAt(made('spectrum', options('Amber'))))).toContain('% let through');
  });
});

describe('colour rendering as bars', () => {
  it('says Ra, the lowest and all fourteen', () => {
    const { sentences } = made('rendering', options('Phosphor white'));
    // As SPECTRUMCRI: Ra 72.9, R9 −31.3.
    expect(sentences[0]).toBe('Phosphor white: Ra 73; the lowest is R9, strong red, with −31.');
    expect(sentences[2]).toMatch(/^R1 \d+, R2 \d+, .*, R13 \d+ and R14 \d+\.$/);
  });

  it('bars of a reference are all full, and one below nothing hangs and is hatched', () => {
    const bars = (name: string) =>
      every(drawnAt(made('rendering', options(name)))).filter(
        ({ tag, attributes }) => tag === 'rect' && attributes['fill-opacity'] !== undefined,
      );
    const heights = bars('Tungsten').map(({ attributes }) => Number(attributes['height']));
    expect(heights).toHaveLength(15);
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(0.1);
    // Paper has no glow: there only the outline shows.
    for (const { attributes } of bars('Tungsten')) expect(attributes['stroke']).toBeTruthy();
    const hanging = bars('Phosphor white').filter(
      ({ attributes }) => attributes['fill-opacity'] === 0.35,
    );
    expect(hanging).toHaveLength(1);
  });

  it('a filter alone has no rendering', () => {
    expect(make('rendering', options('Amber'))).toEqual({
      reason: '“Amber” is a filter: choose a light, and the filter before it.',
    });
  });
});

describe('colours on a screen', () => {
  it('white under any light is the screen’s white, and half its light is 188', () => {
    // IEC 61966-2-1: linear 0.5 is code 188.
    const warm = { X: 1.0985, Y: 1, Z: 0.3558 };
    expect(screenColour(warm, warm)).toBe('rgb(255 255 255)');
    expect(screenColour({ X: 0.5 * 1.0985, Y: 0.5, Z: 0.5 * 0.3558 }, warm)).toBe(
      'rgb(188 188 188)',
    );
  });

  it('short wavelengths are blue, long ones red, 540 nm green', () => {
    const channels = (nm: number) => (/\d+/g[Symbol.match](wavelengthColour(nm)) ?? []).map(Number);
    const strongest = (nm: number) => channels(nm).indexOf(Math.max(...channels(nm)));
    expect([620, 540, 455].map(strongest)).toEqual([0, 1, 2]);
  });
});
