import { describe, expect, test } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { aheadIn } from '../../../src/engine/zone.ts';

const wall = (...parts: [number, number, number, number, number?]) => {
  const [year, month, day, hour, minute = 0] = parts;
  return Date.UTC(year, month - 1, day, hour, minute);
};

// Dates of the change as public timetables have them: the last Sundays of March and October in Europe,
// the second of March in New York, the first of October in Adelaide.
describe('how far a clock is ahead of universal time', () => {
  test.each([
    ['Etc/UTC', wall(2026, 6, 21, 12), 0],
    ['Europe/London', wall(2026, 1, 10, 12), 0],
    ['Europe/London', wall(2026, 6, 21, 12), 1],
    ['Europe/London', wall(2026, 3, 29, 0, 59), 0],
    ['Europe/London', wall(2026, 3, 29, 2), 1],
    ['Europe/London', wall(2026, 10, 25, 0, 30), 1],
    ['Europe/London', wall(2026, 10, 25, 2, 30), 0],
    ['America/New_York', wall(2026, 3, 8, 1, 30), -5],
    ['America/New_York', wall(2026, 3, 8, 3, 30), -4],
    ['Australia/Adelaide', wall(2026, 7, 1, 0), 9.5],
    ['Australia/Adelaide', wall(2026, 12, 1, 0), 10.5],
    ['Asia/Kathmandu', wall(2026, 7, 1, 0), 5.75],
  ])('%s at %d: %d h', (zone, moment, hours) => {
    expect(aheadIn(zone)(moment)).toBe(hours);
  });

  test('a zone that nobody knows is taken as universal time', () => {
    expect(aheadIn('Harbour/Stonnel')(wall(2026, 6, 21, 12))).toBe(0);
  });
});

let minted = 0;

test('a sunrise that says no offset follows the time zone of its book, summer time too', () => {
  const book = createBook(newDocument({ newId: () => String((minted += 1)) }));
  const engine = connectEngine(book);
  const minutesOf = (formula: string) => {
    const { value } = engine.evaluate(formula);
    return (Number(value) % 1) * 1440;
  };
  const inZone = (zone: string) =>
    book.run({ label: 'Zone', steps: [{ kind: 'setSettings', settings: { zone } }] });
  const june = '=SUNRISE("2026-06-21",51.51,-0.13)';
  const december = '=SUNRISE("2026-12-21",51.51,-0.13)';
  inZone('Etc/UTC');
  const [summer, winter] = [minutesOf(june), minutesOf(december)];
  inZone('Europe/London');
  // Tables of sunrise and sunset have 04:43 by summer time, and 08:04.
  expect(Math.abs(minutesOf(june) - (4 * 60 + 43))).toBeLessThan(2);
  expect(Math.abs(minutesOf(december) - (8 * 60 + 4))).toBeLessThan(2);
  expect(minutesOf(june) - summer).toBeCloseTo(60, 1);
  expect(minutesOf(december)).toBeCloseTo(winter, 1);
  expect(minutesOf('=SUNRISE("2026-06-21",51.51,-0.13,0)')).toBeCloseTo(summer, 5);
});
