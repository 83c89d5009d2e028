import { describe, expect, it } from 'vitest';
import { column, drawnAt, every, make, made, textSaying, texts, waits } from './support.ts';

const grid = (columns: readonly ReturnType<typeof column>[]) =>
  (columns[0] ?? []).map((_, row) => columns.map((one) => one[row]?.[0] ?? { value: null }));

const distances = column([2, 3, 4], 'length');
// 800 lx at 2 m by the inverse square; f/4 to f/2.
const lux = column([800, 355.5556, 200], 'illuminance');
const stop = column([4, 2.6667, 2], 'fNumber');

const lamp = (more: Readonly<Record<string, ReturnType<typeof column>>> = {}) => ({
  inputs: {
    along: distances,
    results: grid([lux, stop, column(['bright', 'bright', 'dim'])]),
    names: [[{ value: 'Light' }, { value: 'Stop' }, { value: 'Said' }]],
    caption: column(['Distance']),
    ...more,
  },
});

const lines = (given: Parameters<typeof made>[1]) =>
  every(drawnAt(made('over', given))).filter(
    ({ tag, attributes }) => tag === 'path' && attributes['stroke-width'] === 1.75,
  );

describe('results over a value', () => {
  it('says where each line begins and ends, and what is no number', () => {
    expect(made('over', lamp()).sentences).toEqual([
      'Light: 800 lx at 2 m, 200 lx at 4 m.',
      'Stop: f/4 at 2 m, f/2 at 4 m.',
      'Not drawn, for want of numbers: Said.',
    ]);
  });

  it('what measures different things stands in pictures of its own, over one another', () => {
    const drawn = drawnAt(made('over', lamp()));
    const [light, fNumber] = ['Light', 'Stop'].map((name) => textSaying(drawn, name));
    expect(Number(fNumber?.attributes['y'])).toBeGreaterThan(Number(light?.attributes['y']) + 100);
    expect(lines(lamp())).toHaveLength(2);
  });

  it('a height between the ends is said', () => {
    const hill = { along: column([1, 2, 3]), results: grid([column([5, 9, 4])]) };
    expect(made('over', { inputs: hill }).sentences).toEqual([
      'column 1: 5 at 1, 4 at 3.',
      'column 1 is highest at 2, with 9.',
    ]);
  });

  it('a case without a number breaks its line, and rows come in the order of their values', () => {
    const broken = {
      along: column([4, 1, 3, 2, 5]),
      results: grid([column([40, 10, waits, 20, 50])]),
    };
    const [line] = lines({ inputs: broken });
    expect(String(line?.attributes['d']).match(/M/g)).toHaveLength(2);
    expect(made('over', { inputs: broken }).sentences[0]).toBe('column 1: 10 at 1, 50 at 5.');
  });

  it('marks how the sheet stands now, if that is among what was tried', () => {
    expect(texts(drawnAt(made('over', lamp({ now: column([3], 'length') }))))).toContain('now');
    expect(texts(drawnAt(made('over', lamp({ now: column([9], 'length') }))))).not.toContain('now');
  });

  it('a family is named by the values across, in their units, each with dashes of its own', () => {
    const family = {
      along: distances,
      results: grid([lux, column([400, 177.8, 100], 'illuminance')]),
      names: grid([column([0], 'stops'), column([1], 'stops')]),
    };
    const drawn = drawnAt(made('over', { inputs: family }));
    expect(texts(drawn)).toEqual(expect.arrayContaining(['0 stops', '1 stop']));
    const dashes = lines({ inputs: family }).map(
      ({ attributes }) => attributes['stroke-dasharray'],
    );
    expect(new Set(dashes).size).toBe(2);
  });

  it('beyond ten lines says how many are left out', () => {
    const many = {
      along: column([1, 2]),
      results: grid(Array.from({ length: 12 }, (_, index) => column([index, index + 1]))),
    };
    expect(made('over', { inputs: many }).sentences.at(-1)).toBe('2 further lines not drawn.');
  });

  it('without a number anywhere there is a reason and no picture', () => {
    const empty = { along: column(['a', 'b']), results: grid([column([waits, waits])]) };
    expect(make('over', { inputs: empty })).toEqual({
      reason: 'No row has a value with a number beside it yet.',
    });
  });
});
