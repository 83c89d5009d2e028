import { describe, expect, test } from 'vitest';
import { defaultWriting } from '../../../functions/quantities/settings.ts';
import PANELLUX from '../../../functions/distance/PANELLUX.ts';
import type { Drawn } from '../../../src/figures/kit/element.ts';
import { drawnAt, every, made, make, single, textSaying, texts, waits } from './support.ts';

const lamp = { lux: single(400, 'illuminance'), mark: single(4, 'length') };

/** The drawn curves as points of the page. */
const curves = (drawn: Drawn) =>
  every(drawn)
    .filter(({ tag, attributes }) => tag === 'path' && attributes['stroke-linejoin'] === 'round')
    .map(({ attributes }) =>
      [...String(attributes['d']).matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(
        ([, x, y]) => [Number(x), Number(y)] as const,
      ),
    );

describe('falloff with distance', () => {
  test('the depth within a quarter stop, by the inverse square: d · 2^(∓1/8)', () => {
    // 4 · 2^(−1/8) = 3.668, 4 · 2^(1/8) = 4.362.
    expect(made('falloff', { inputs: lamp }).sentences[0]).toBe(
      'From 3.67 to 4.36 m the light stays within 1/4 stop of the mark.',
    );
  });

  test('half as far is two stops up, twice as far two down', () => {
    const figure = made('falloff', { inputs: lamp });
    expect(figure.sentences[2]).toBe(
      'From 2.00 m away it is 2 stops above the mark, from 8.00 m 2 stops below it.',
    );
    const [curve = []] = curves(drawnAt(figure));
    const drawn = drawnAt(figure);
    const level = (words: string) => Number(textSaying(drawn, words).attributes['y']);
    const stop = level('−1') - level('0');
    const [first, last] = [curve[0]?.[1] ?? 0, curve.at(-1)?.[1] ?? 0];
    expect((last - first) / stop).toBeCloseTo(4, 2);
  });

  test('the right-hand scale is the light there: 400 lx at the mark, 100 two stops below', () => {
    const drawn = drawnAt(made('falloff', { inputs: lamp }));
    for (const [lux, stops] of [
      ['1600', '+2'],
      ['400', '0'],
      ['100', '−2'],
    ] as const)
      expect(textSaying(drawn, lux).attributes['y']).toBe(textSaying(drawn, stops).attributes['y']);
  });

  test('a face falls off as PANELLUX says, and slower than the inverse square close by', () => {
    const figure = made('falloff', {
      inputs: {
        ...lamp,
        mark: single(2, 'length'),
        width: single(2, 'length'),
        height: single(1, 'length'),
      },
    });
    const drawn = drawnAt(figure);
    const [, face = []] = curves(drawn);
    const level = (words: string) => Number(textSaying(drawn, words).attributes['y']);
    const stop = level('−1') - level('0');
    const at = (distance: number) => PANELLUX.run(1000, 2, 1, distance, 0, 0) as number;
    const wanted = Math.log2(at(1) / at(4));
    expect(((face.at(-1)?.[1] ?? 0) - (face[0]?.[1] ?? 0)) / stop).toBeCloseTo(wanted, 2);
    expect(wanted).toBeLessThan(4);
    expect(figure.sentences.at(-1)).toMatch(/the inverse square would promise .* more\.$/);
  });

  test('the face gives a depth in which PANELLUX keeps to the tolerance', () => {
    const [sentence = ''] = made('falloff', {
      inputs: {
        ...lamp,
        mark: single(1.5, 'length'),
        width: single(2, 'length'),
        height: single(2, 'length'),
      },
    }).sentences;
    const [, near, far] = /From ([\d.]+) to ([\d.]+) m/.exec(sentence) ?? [];
    const at = (distance: number) => PANELLUX.run(1000, 2, 2, distance, 0, 0) as number;
    // Ends are said to a centimetre.
    expect(Math.log2(at(Number(near)) / at(1.5))).toBeCloseTo(1 / 4, 1);
    expect(Math.log2(at(Number(far)) / at(1.5))).toBeCloseTo(-1 / 4, 1);
  });

  test('close to a large face the light may be even from the face on', () => {
    const { sentences } = made('falloff', {
      inputs: {
        ...lamp,
        mark: single(0.5, 'length'),
        width: single(4, 'length'),
        height: single(4, 'length'),
      },
    });
    expect(sentences[0]).toMatch(/^From the face to [\d.]+ m the light stays within 1\/4 stop/);
  });

  test('a fixture gives its own light and size: 18,000 cd through a lens of 15 cm', () => {
    const figure = made('falloff', {
      inputs: { mark: single(0.5, 'length'), fixture: single('spot') },
    });
    // 18,000 / 0.5² = 72,000 lx by its file; from 0.25 m r² + d² says log2 of what 1 / d² says less.
    expect(figure.sentences[1]).toBe('At the mark, 0.5 m away, it gives 72000 lx.');
    const over =
      Math.log2(0.5 ** 2 / 0.25 ** 2) -
      Math.log2((0.5 ** 2 + 0.075 ** 2) / (0.25 ** 2 + 0.075 ** 2));
    expect(over).toBeCloseTo(0.09, 2);
    expect(figure.sentences.join(' ')).toContain(
      'The face is 0.15 m across. From 0.25 m the inverse square would promise 0.09 stop more.',
    );
    expect(figure.sentences.at(-1)).toMatch(/^Straight ahead of Spot/);
    // The depth is where 1 / (r² + d²) is a quarter stop off: √((0.5² + r²) · 2^(±1/4) − r²).
    const end = (stops: number) => Math.sqrt((0.25 + 0.075 ** 2) * 2 ** stops - 0.075 ** 2);
    expect(figure.sentences[0]).toContain(
      `From ${end(-1 / 4).toFixed(2)} to ${end(1 / 4).toFixed(2)} m`,
    );
  });

  test('a reading goes before the fixture’s light, a given size before its own', () => {
    const { sentences } = made('falloff', {
      inputs: {
        ...{ lux: single(400, 'illuminance'), mark: single(2, 'length') },
        ...{ width: single(2, 'length'), height: single(1, 'length'), fixture: single('Bulb') },
      },
    });
    expect(sentences[1]).toContain('it gives 400 lx');
    expect(sentences[3]).toContain('The face is 2.00 m by 1.00 m.');
  });

  test('in feet and footcandles where the book has them', () => {
    const writing = { ...defaultWriting, illuminance: 'fc', length: 'ft' } as const;
    const figure = made('falloff', {
      writing,
      inputs: { lux: single(1076.391, 'illuminance'), mark: single(3.048, 'length') },
    });
    expect(figure.sentences[1]).toContain('100 fc');
    const said = texts(drawnAt(figure));
    expect(said).toEqual(expect.arrayContaining(['fc', '100', '10 ft']));
    expect(said.join(' ')).not.toMatch(/ m\b|lx/);
  });

  test.each([
    [{ lux: single(waits), mark: lamp.mark }, 'Light at the mark: waiting for Reading (C3)'],
    [
      { lux: lamp.lux, mark: single(0, 'length') },
      'Distance of the mark must be above zero to be drawn.',
    ],
    [{ mark: lamp.mark, fixture: single('Moon') }, 'The book has no fixture “Moon”.'],
    [{ mark: lamp.mark }, 'Light at the mark is empty or no number.'],
    [{ lux: lamp.lux, mark: single(null) }, 'Distance of the mark is empty or no number.'],
  ])('says why it cannot be drawn: %#', (inputs, reason) => {
    expect(make('falloff', { inputs })).toEqual({ reason });
  });
});
