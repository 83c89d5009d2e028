import { describe, expect, it } from 'vitest';
import { writeDateTime } from '../../../../functions/quantities/dateTime.ts';
import { defaultWriting, readAs } from '../../../../functions/quantities/index.ts';

const read = (text: string) => {
  const reading = readAs('dateTime', text, defaultWriting);
  return reading.ok ? reading.value : reading.reason;
};

// Day numbers as every spreadsheet counts them: 1970-01-01 is 25569 and 2000-01-01 is 36526.
describe('a day and a time are read', () => {
  it.each([
    ['1970-01-01', 25_569],
    ['2000-01-01', 36_526],
    ['2000-02-29', 36_526 + 59],
    ['1899-12-31', 1],
    ['1970-01-01 18:00', 25_569.75],
    ['1970-01-01T06:00', 25_569.25],
    ['1970-01-01 6:00 pm', 25_569.75],
    ['00:00', 0],
    ['14:06', (14 * 60 + 6) / 1440],
    ['23:59:59', 86_399 / 86_400],
    ['2:30 pm', 14.5 / 24],
    ['2:30 a.m.', 2.5 / 24],
    ['12:00 am', 0],
    ['12:30 PM', 12.5 / 24],
    ['1:00am', 1 / 24],
  ])('%s is %d', (text, value) => expect(read(text)).toBeCloseTo(value, 12));

  it.each(['2026-02-30', '2023-02-29', '2026-13-01', '2026-00-10', '2026-01-00', '1899-12-30'])(
    '%s is no day',
    (text) => expect(read(text)).toBe(`There is no day ${text}.`),
  );

  it.each(['24:00', '12:60', '13:00 pm', '0:30 am', '14', '1970-01-01 25:00', '1970-1-1', 'noon'])(
    '"%s" is neither',
    (text) => expect(read(text)).toMatch(/^Expected /),
  );
});

describe('a day and a time are written', () => {
  it.each([
    [25_569, '1970-01-01', '1970-01-01'],
    [25_569.75, '1970-01-01 18:00', '1970-01-01 6:00 pm'],
    [36_526 + 1 / 86_400, '2000-01-01 00:00:01', '2000-01-01 12:00:01 am'],
    [1, '1899-12-31', '1899-12-31'],
    [0, '00:00', '12:00 am'],
    [0.25, '06:00', '6:00 am'],
    [0.5, '12:00', '12:00 pm'],
    [13 / 24, '13:00', '1:00 pm'],
    [(11 * 3600 + 59 * 60 + 9) / 86_400, '11:59:09', '11:59:09 am'],
    [0.999_999, '23:59:59', '11:59:59 pm'],
    [-0.25, '1899-12-29 18:00', '1899-12-29 6:00 pm'],
    [1e12, '1000000000000', '1000000000000'],
  ])('%d is %s, or %s', (value, day, half) => {
    expect(writeDateTime(value, '24')).toBe(day);
    expect(writeDateTime(value, '12')).toBe(half);
  });

  it('to the nearest second, and past midnight on the next day', () => {
    expect(writeDateTime(25_569.999_999, '24')).toBe('1970-01-02');
    expect(writeDateTime(0.4 / 86_400, '24')).toBe('00:00');
    expect(writeDateTime(0.6 / 86_400, '24')).toBe('00:00:01');
  });
});
