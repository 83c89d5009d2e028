import { describe, expect, it } from 'vitest';
import { isError } from '../../functions/values.ts';
import { expected, typed, waiting } from '../../templates/reflected-survey/expected.ts';
import { startingTable } from '../../templates/reflected-survey/signal.ts';
import { openFilled } from '../support/filled.ts';

// Readings: invented. What they come to is worked out by hand in
// templates/reflected-survey/expected.ts from the reflected exposure equation of ISO 2720.

function survey() {
  const sheet = openFilled('reflected-survey');
  for (const [cell, text] of typed) sheet.type(cell, text);
  return sheet;
}

describe('spot readings against what the stop puts at grey', () => {
  const sheet = survey();

  it.each(expected)('$cell comes to $value: $why', ({ cell, value, within }) => {
    const got = sheet.valueOf(cell);
    if (typeof value === 'string') expect(got).toBe(value);
    else expect(Math.abs(Number(got) - value)).toBeLessThanOrEqual(within ?? 1e-12);
  });

  it.each(waiting)('%s waits for its reading', (cell) => {
    const got = sheet.valueOf(cell);
    expect(isError(got) && got.waiting).toBe(true);
  });

  it('no cell is an error', () => {
    expect(sheet.errors()).toEqual([]);
  });
});

describe('the table of signal levels', () => {
  // ITU-R BT.2100, hybrid log-gamma: E' = √(3E) up to E = 1/12, else a · ln(12E − b) + c.
  // ITU-R BT.2408 puts a grey card at 38 %. Both from memory.
  const [a, b, c] = [0.17883277, 0.28466892, 0.55991073];
  const signal = (scene: number) =>
    scene <= 1 / 12 ? Math.sqrt(3 * scene) : a * Math.log(12 * scene - b) + c;
  const grey = 0.38 ** 2 / 3;

  it.each(startingTable)('%s stops are %s of hybrid log-gamma', (stops, level) => {
    const printed = Number(level.replace(' %', ''));
    expect(Math.abs(100 * signal(grey * 2 ** Number(stops)) - printed)).toBeLessThanOrEqual(0.05);
  });

  it('the user’s own levels are written over it', () => {
    const { type, valueOf } = survey();
    type('B25', '41 %');
    expect(valueOf('F13')).toBeCloseTo(0.41, 12);
  });

  it('a gap in the table is named and nothing is made up', () => {
    const { type, valueOf } = survey();
    type('B22', '');
    expect(valueOf('F13')).toBe('gap in table');
  });

  it('a table that does not rise is remarked on', () => {
    const { type, valueOf } = survey();
    expect(valueOf('C19')).toBe('');
    type('A22', '-4');
    expect(valueOf('C19')).toBe('Write it from the darkest up.');
  });
});

describe('other settings typed in', () => {
  it('f/16 at ISO 125 and 1/125 s puts 3200 cd/m² at grey (worked example of ANSI PH3.49)', () => {
    const { type, valueOf } = survey();
    type('B2', '125');
    type('F2', '1/125 s');
    type('F3', 'f/16');
    expect(valueOf('D4')).toBeCloseTo(3200, 9);
  });

  it('grey placed a stop up takes a stop from above and gives it below', () => {
    const { type, valueOf } = survey();
    type('F5', '1');
    expect(valueOf('G13')).toBeCloseTo(5.5, 12);
    expect(valueOf('H13')).toBeCloseTo(5.5, 12);
    expect(valueOf('E17')).toBe('1 stop under');
  });
});
