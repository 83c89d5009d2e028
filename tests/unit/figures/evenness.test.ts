import { describe, expect, test } from 'vitest';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Block } from '../../../src/figures/figure.ts';
import { drawnAt, every, made, make, texts, waits } from './support.ts';

const grid = (
  rows: readonly (readonly (number | string | null)[])[],
  quantity: QuantityName = 'illuminance',
): Block =>
  rows.map((row, down) =>
    row.map((value, across) => ({
      value,
      ...(typeof value === 'number' && { quantity }),
      at: `${'ABCDEF'[across] ?? ''}${down + 1}`,
    })),
  );
const given = (values: Block) => ({ inputs: { values } });

describe('the evenness of an area', () => {
  // Mean (100 + 200 + 100 + 400) / 4 = 200; 400 is one stop over it, 100 one under.
  const four = grid([
    [100, 200],
    [100, 400],
  ]);

  test('spread, how many agree, highest and lowest with their cells', () => {
    const { sentences } = made('evenness', given(four));
    expect(sentences.slice(0, 3)).toEqual([
      '2 stops from lowest to highest; 1 of 4 within 1/4 stop.',
      'Highest 400 lx at B2, lowest 100 lx at A1.',
      'Mean in light 200 lx; the lowest is 50 % of it.',
    ]);
    expect(sentences.slice(3)).toEqual(['Row 1: −1 and 0.', 'Row 2: −1 and +1.']);
  });

  test('from the highest, all others are below it', () => {
    const { sentences } = made('evenness', { ...given(four), options: { from: 'highest' } });
    expect(sentences.slice(3)).toEqual(['Row 1: −2 and −1.', 'Row 2: −2 and 0.']);
  });

  test('f-numbers are averaged in light: f/2 and f/4 mean √((4 + 16)/2) = f/3.16', () => {
    const { sentences } = made('evenness', given(grid([[2, 4]], 'fNumber')));
    // 2 · log2(4/2) = 2 stops apart.
    expect(sentences[0]).toMatch(/^2 stops from lowest to highest/);
    // log2(4/10) = −1.32, log2(16/10) = +0.68.
    expect(sentences[3]).toBe('Row 1: −1.3 and +0.7.');
  });

  test('captions of rows and columns are left out, a missing reading stays a blank place', () => {
    const values = grid([
      ['', 'left', 'right'],
      ['top', 100, 100],
      ['foot', 100, null],
    ]);
    const { sentences } = made('evenness', given(values));
    expect(sentences[0]).toBe('The same everywhere; all within 1/4 stop of it.');
    expect(sentences.at(-1)).toBe('Row 2: 0 and no reading.');
    expect(texts(drawnAt(made('evenness', given(values))))).toContain('–');
  });

  test('less light is hatched, the closer the darker: seen without colour', () => {
    const lines = (values: number[]) =>
      every(drawnAt(made('evenness', given(grid([values])))))
        .filter(({ tag, attributes }) => tag === 'path' && attributes['stroke-width'] === 1)
        .map(({ attributes }) => String(attributes['d']).split('M').length);
    // The second hatching is the legend’s.
    const [dim = 0] = lines([100, 140]);
    const [darker = 0] = lines([100, 200]);
    expect(dim).toBeGreaterThan(2);
    expect(darker).toBeGreaterThan(dim);
  });

  test.each([
    [grid([[100]]), 'At least two readings make an evenness.'],
    [grid([[100, 0]]), 'A reading must be above zero to be told in stops.'],
    [
      [...grid([[100]]), ...grid([[4]], 'fNumber')],
      'The readings measure different things, so no mean can be taken.',
    ],
    [[[{ value: null, reason: 'too large' }]], 'too large'],
  ])('says why it cannot be drawn: %#', (values, reason) => {
    expect(make('evenness', given(values))).toEqual({ reason });
  });

  test('readings that are waited for are blank places', () => {
    const values = [...grid([[100, 120]]), [waits, waits]];
    expect(made('evenness', given(values)).sentences[0]).toContain('from lowest to highest');
  });
});
