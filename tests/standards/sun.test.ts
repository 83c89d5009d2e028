import { describe, expect, it } from 'vitest';
import { isError } from '../../functions/values.ts';
import { expected } from '../../templates/sun/expected.ts';
import { openFilled } from '../support/filled.ts';

// The place is invented; its day is worked out by hand in templates/sun/expected.ts from the almanac's
// declination and equation of time. Sunrise and sunset of towns: national almanacs, from memory.

const sheet = openFilled('sun');

interface Place {
  readonly latitude: string;
  readonly longitude: string;
  readonly date: string;
  readonly ahead: string;
}

function at({ latitude, longitude, date, ahead }: Place) {
  const open = openFilled('sun');
  open.type('B2', latitude);
  open.type('D2', longitude);
  open.type('B1', date);
  open.type('D3', ahead);
  return open;
}

const minutesOf = (value: unknown): number => Number(value) * 1440;

const towns = [
  {
    town: 'London',
    latitude: '51.51',
    longitude: '-0.13',
    date: '2026-06-21',
    ahead: '1 h',
    rise: 4 * 60 + 43,
    set: 21 * 60 + 21,
  },
  {
    town: 'New York',
    latitude: '40.71',
    longitude: '-74.01',
    date: '2024-12-21',
    ahead: '-5 h',
    rise: 7 * 60 + 16,
    set: 16 * 60 + 32,
  },
  {
    town: 'Sydney',
    latitude: '-33.87',
    longitude: '151.21',
    date: '2024-12-21',
    ahead: '11 h',
    rise: 5 * 60 + 41,
    set: 20 * 60 + 5,
  },
] as const;

describe('the sun over an invented harbour at midsummer', () => {
  it.each(expected)('$cell comes to $value: $why', ({ cell, value, within }) => {
    const got = sheet.valueOf(cell);
    if (typeof value === 'string') expect(got).toBe(value);
    else expect(Math.abs(Number(got) - value)).toBeLessThanOrEqual(within ?? 1e-12);
  });

  it('no cell is an error', () => {
    expect(sheet.errors()).toEqual([]);
  });
});

describe('other places typed in', () => {
  it.each(towns)('$town: sunrise and sunset to two minutes of the almanac', (town) => {
    const { valueOf } = at(town);
    expect(Math.abs(minutesOf(valueOf('B6')) - town.rise)).toBeLessThan(2);
    expect(Math.abs(minutesOf(valueOf('D6')) - town.set)).toBeLessThan(2);
  });

  it.each(
    towns.flatMap((town) => ['2°', '10°', '20°'].map((height) => ({ ...town, height }) as const)),
  )('$town: at the times given the sun stands at $height, and is higher between', (town) => {
    const { type, valueOf, evaluate } = at(town);
    type('B3', town.height);
    const altitude = (time: number) =>
      Number(
        evaluate(
          `SUNALTITUDE(${Number(valueOf('B1')) + time},${town.latitude},${town.longitude},${Number.parseInt(town.ahead)})`,
        ),
      );
    const wanted = Number.parseInt(town.height);
    const [from, until] = [Number(valueOf('B8')), Number(valueOf('D8'))];
    // Half a minute of rounding, at up to a quarter of a degree a minute.
    expect(Math.abs(altitude(from) - wanted)).toBeLessThan(0.13);
    expect(Math.abs(altitude(until) - wanted)).toBeLessThan(0.13);
    expect(altitude((from + until) / 2)).toBeGreaterThan(wanted);
  });

  it('a degree below its highest it is found as well', () => {
    const { type, valueOf, evaluate } = openFilled('sun');
    type('B3', '57.4°');
    for (const cell of ['B8', 'D8']) {
      const when = Number(valueOf('B1')) + Number(valueOf(cell));
      expect(Number(evaluate(`SUNALTITUDE(${when},55,-1.5,1)`))).toBeCloseTo(57.4, 1);
    }
  });

  it('a height that it does not reach, and one that it never leaves, are said in words', () => {
    const { type, valueOf } = openFilled('sun');
    type('B3', '70°');
    expect([valueOf('B8'), valueOf('D8')]).toEqual(['not that high', '']);
    type('B3', '-15°');
    expect([valueOf('B8'), valueOf('D8')]).toEqual(['all day', '']);
  });

  it('a polar day has no sunrise and says so; the rows go on', () => {
    const { valueOf } = at({
      latitude: '69.65',
      longitude: '18.96',
      date: '2026-06-21',
      ahead: '2 h',
    });
    const rise = valueOf('B6');
    expect(isError(rise) && rise.message).toMatch(/polar day/);
    expect(Number(valueOf('B11'))).toBeGreaterThan(0);
  });

  it('rows a quarter of an hour apart, from another time on', () => {
    const { type, valueOf } = openFilled('sun');
    type('B4', '19:00');
    type('D4', '00:15');
    expect(minutesOf(valueOf('A11'))).toBeCloseTo(19 * 60, 6);
    expect(minutesOf(valueOf('A28'))).toBeCloseTo(23 * 60 + 15, 6);
    expect(valueOf('D28')).toBe('below horizon');
  });

  it('a time of day typed with the date changes nothing', () => {
    const { type, valueOf } = openFilled('sun');
    type('B1', '2026-06-21 18:00');
    expect(valueOf('B17')).toBe(sheet.valueOf('B17'));
    expect(valueOf('B8')).toBe(sheet.valueOf('B8'));
  });

  it('the sun in the north at noon, south of the tropics', () => {
    const { valueOf } = at(towns[2]);
    expect(valueOf('D20')).toBe('north');
  });
});
