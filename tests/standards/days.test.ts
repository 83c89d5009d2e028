import { describe, expect, it } from 'vitest';
import { expected as addressed } from '../../templates/address-book/expected.ts';
import { expected as logged } from '../../templates/set-up-log/expected.ts';
import { expected as running } from '../../templates/running-order/expected.ts';
import { harbourRunning } from '../../templates/running-order/harbour.ts';
import { expected as struck } from '../../templates/strike/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// Counting is common practice; the days are invented. What the cells come to is worked out by hand in
// the templates' expected.ts. Exposure index against exposure index: stops are log2 (ISO 2720).

const rowsFrom = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

describe('the address book', () => {
  comesToWhatItSays(openFilled('address-book'), addressed);

  it('a piece of a kit that is no fixture of it says so', () => {
    const { type, valueOf } = openFilled('address-book');
    type('B38', 'Lantern');
    expect(valueOf('D38')).toBe('not among the fixtures');
  });
});

describe('out and back', () => {
  const sheet = openFilled('strike');
  comesToWhatItSays(sheet, struck);

  it('what is missing and charged is counted once more from the rows', () => {
    let charged = 0;
    for (const row of rowsFrom(7, 28)) {
      const number = (column: string) => Number(sheet.valueOf(`${column}${row}`)) || 0;
      const back = sheet.valueOf(`D${row}`);
      if (typeof back !== 'number') continue;
      expect(sheet.valueOf(`F${row}`)).toBe(number('C') - back);
      charged += (number('C') - back) * number('G') + number('E') * number('H');
    }
    expect(sheet.valueOf('I4')).toBe(charged);
  });

  it('more back than went out is said and not charged', () => {
    const { type, valueOf } = openFilled('strike');
    type('D12', '12');
    expect(valueOf('B12')).toBe('1 more than went out');
    expect(valueOf('I12')).toBe(0);
  });
});

describe('the running order of light', () => {
  comesToWhatItSays(openFilled('running-order'), running);

  /** Moves between two set-ups, light by light. */
  const moves = (one: readonly string[], other: readonly string[], samePlace: boolean): number =>
    Array.from({ length: 8 }, (_, light) => [one[light] ?? '', other[light] ?? ''] as const)
      .map(([before, now]) => {
        if (samePlace) return before === now ? 0 : 1;
        return (before === '' ? 0 : 1) + (now === '' ? 0 : 1);
      })
      .reduce<number>((sum, count) => sum + count, 0);

  const counted = (order: readonly number[]): number => {
    const shot = order.map((at) => harbourRunning.setUps[at]!);
    const lights = (all: readonly string[] = []) => all.filter((where) => where !== '').length;
    return shot.reduce(
      (sum, setUp, index) => {
        const before = shot[index - 1];
        const samePlace = !before || before.place === setUp.place;
        return sum + moves(before?.lights ?? [], setUp.lights, samePlace);
      },
      // The last rig is struck too.
      lights(shot.at(-1)?.lights),
    );
  };

  it('without the hours of a day it goes on through the night', () => {
    const { type, valueOf } = openFilled('running-order');
    type('D1', '');
    // 16:30 on the first day, then 3.4 + 3 h, and 3.2 + 2 h.
    expect(valueOf('Q22')).toBeCloseTo(46_286 + 16.5 / 24, 6);
    expect(valueOf('R22')).toBeCloseTo(46_286 + 22.9 / 24, 6);
    expect(valueOf('Q23')).toBeCloseTo(46_286 + 22.9 / 24, 6);
    type('D1', '15 h');
    expect(valueOf('Q22')).toBeCloseTo(46_286 + 16.5 / 24, 6);
    expect(valueOf('Q23')).toBeCloseTo(46_287 + 8 / 24, 6);
  });

  it.each([[[1, 4, 2, 5, 3, 6]], [[1, 2, 3, 4, 5, 6]], [[6, 5, 4, 3, 2, 1]]])(
    'shot as %j the moves are those counted light by light',
    (numbers) => {
      const { type, valueOf } = openFilled('running-order');
      for (const [index, number] of numbers.entries()) type(`C${6 + index}`, String(number));
      const order = numbers
        .map((number, at) => ({ number, at }))
        .sort((one, other) => one.number - other.number)
        .map(({ at }) => at);
      expect(String(valueOf('B3'))).toMatch(new RegExp(`^${counted(order)} moves, `));
      expect(String(valueOf('B3'))).toMatch(/as listed 38 moves$/);
      expect(counted([0, 1, 2, 3, 4, 5])).toBe(38);
    },
  );
});

describe('the log of set-ups', () => {
  comesToWhatItSays(openFilled('set-up-log'), logged);

  it('a word is looked for in all days, with a scene or without', () => {
    const { type, valueOf } = openFilled('set-up-log');
    type('B2', 'ICE HOUSE');
    expect(valueOf('B3')).toBe('1 of 9 rows');
    expect(valueOf('B11')).toBe('12C');
    type('B1', '');
    type('B2', 'frame 120');
    expect(valueOf('B3')).toBe('3 of 9 rows');
    expect([valueOf('B11'), valueOf('B12'), valueOf('B13')]).toEqual(['12A', '12B', '21A']);
    type('B2', '');
    expect(valueOf('B3')).toBe('9 of 9 rows');
  });
});
