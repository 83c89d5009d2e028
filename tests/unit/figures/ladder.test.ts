import { describe, expect, test } from 'vitest';
import { column, drawnAt, made, make, signs, single, texts, textSaying, waits } from './support.ts';

const points = {
  points: column(['Key side', 'Fill side', 'Window', 'Bench']),
  read: column([0, -5 / 3, 7, waits], 'stops'),
  wanted: column([0, -2, null, -1], 'stops'),
  above: single(6.5, 'stops'),
  below: single(4.5, 'stops'),
};

describe('a ladder of stops', () => {
  test('says how the points stand together, then each of them', () => {
    const { sentences } = made('ladder', { inputs: points });
    // -5/3 where -2 was wanted is a third over, and a quarter is allowed; 7 is half a stop over 6.5.
    expect(sentences).toEqual([
      '1 of 3 agree; Fill side 1/3 stop over, Window clips by 1/2 stop and Bench waits.',
      'Key side: at key, at key wanted, agrees.',
      'Fill side: 1 2/3 stops below key, 2 stops below key wanted, 1/3 stop over.',
      'Window: 7 stops above key, clips by 1/2 stop.',
      'Bench waits for its reading, 1 stop below key wanted.',
      'The camera clips 6 1/2 stops above key and loses what is 4 1/2 stops below key or less.',
    ]);
  });

  test('a stop is as wide everywhere, and each sign stands at its reading', () => {
    const drawn = drawnAt(made('ladder', { inputs: points }));
    const at = (words: string) => Number(textSaying(drawn, words).attributes['x']);
    const stop = at('+1') - at('key');
    expect(at('+5') - at('+4')).toBeCloseTo(stop, 1);
    const [key = 0, fill = 0, window = 0, bench = 0] = signs(drawn);
    expect(key).toBeCloseTo(at('key'), 1);
    expect((fill - key) / stop).toBeCloseTo(-5 / 3, 2);
    expect((window - key) / stop).toBeCloseTo(7, 2);
    // What waits stands where it is wanted.
    expect((bench - key) / stop).toBeCloseTo(-1, 2);
  });

  test('f-numbers are two doublings to the log, lux one', () => {
    const fNumbers = made('ladder', {
      inputs: {
        points: column(['Key', 'Back']),
        read: column([2 ** 1.5, 4], 'fNumber'),
        level: single(2 ** 1.5, 'fNumber'),
      },
    });
    expect(fNumbers.sentences).toContain('Back: 1 stop above key.');
    const levels = made('ladder', {
      inputs: {
        points: column(['Key', 'Wall']),
        read: column([200, 25], 'illuminance'),
        level: single(200, 'illuminance'),
      },
    });
    expect(levels.sentences).toContain('Wall: 3 stops below key.');
  });

  test('under the stops stands what the meter would say', () => {
    const drawn = drawnAt(
      made('ladder', { inputs: { ...points, level: single(2 ** 1.5, 'fNumber') } }),
    );
    // Whole stops from f/2.8: ISO 517 marks.
    expect(texts(drawn)).toEqual(expect.arrayContaining(['f/1.4', 'f/2', 'f/2.8', 'f/4', 'f/5.6']));
    expect(textSaying(drawn, 'f/4').attributes['x']).toBe(textSaying(drawn, '+1').attributes['x']);
  });

  test('a key over the taking stop leaves less room above it', () => {
    const { sentences } = made('ladder', {
      inputs: { ...points, read: column([0, -2, 6, 0], 'stops'), zeroFromGrey: single(1, 'stops') },
    });
    // 6.5 above grey are 5.5 above a key that stands one stop over grey.
    expect(sentences).toContain('Window: 6 stops above key, clips by 1/2 stop.');
  });

  test('the signal is straight between the rows of the user’s table, and unknown beyond', () => {
    const signal = [
      [
        { value: -2, quantity: 'stops' },
        { value: 0.1, quantity: 'share' },
      ],
      [
        { value: 0, quantity: 'stops' },
        { value: 0.4, quantity: 'share' },
      ],
      [
        { value: 2, quantity: 'stops' },
        { value: 0.6, quantity: 'share' },
      ],
    ] as const;
    const figure = made('ladder', {
      inputs: {
        points: column(['Key', 'Fill', 'Window']),
        read: column([0, -1, 3], 'stops'),
        signal,
      },
    });
    expect(figure.sentences).toContain('Fill: 1 stop below key, signal 25 %.');
    expect(figure.sentences).toContain('Window: 3 stops above key.');
    const drawn = drawnAt(figure);
    expect(textSaying(drawn, '60').attributes['x']).toBe(textSaying(drawn, '+2').attributes['x']);
  });

  test('brightest first turns the order of the sheet', () => {
    const { sentences } = made('ladder', { inputs: points, options: { order: 'brightest' } });
    expect(sentences[1]).toMatch(/^Window/);
    expect(sentences[4]).toMatch(/^Bench/);
  });

  test('rows of captions and blanks are no points', () => {
    const { sentences } = made('ladder', {
      inputs: {
        points: column(['Point', 'Key', null, 'Spot']),
        read: column(['From key', 0, null, 1], 'stops'),
      },
    });
    expect(sentences).toEqual(['2 points.', 'Key: at key.', 'Spot: 1 stop above key.']);
  });

  test.each([
    [{}, 'Say which cells hold “Points”.'],
    [{ points: column(['Key']), read: column([null]) }, 'No row of these cells has a reading yet.'],
    [
      {
        points: column(['Key', 'A']),
        read: column([{ value: 1 }, { value: 4, quantity: 'fNumber' as const }]),
      },
      'Readings in f-numbers or levels need a cell that says what zero is.',
    ],
  ])('says what is missing: %#', (inputs, reason) => {
    expect(make('ladder', { inputs })).toEqual({ reason });
  });

  test('on a phone names stand over their rungs, and nothing reaches past the edge', () => {
    const drawn = drawnAt(made('ladder', { inputs: points }), 332, 14);
    const name = textSaying(drawn, 'Fill side');
    const words = textSaying(drawn, '−1 2/3 · 1/3 stop over');
    expect(name.attributes['y']).toBe(words.attributes['y']);
    for (const at of signs(drawn)) {
      expect(at).toBeGreaterThan(0);
      expect(at).toBeLessThan(332);
    }
  });
});
