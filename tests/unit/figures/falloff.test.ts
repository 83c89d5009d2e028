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
    [{ lux: lamp.lux, mark: single(null) }, 'Distance of the mark is empty or no number.'],
  ])('says why it cannot be drawn: %#', (inputs, reason) => {
    expect(make('falloff', { inputs })).toEqual({ reason });
  });
});
