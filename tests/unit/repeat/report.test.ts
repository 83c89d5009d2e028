import { describe, expect, it } from 'vitest';
import { makeSheet } from '../../../src/repeat/sheet/make.ts';
import { reportSheet } from '../../../src/repeat/sheet/report.ts';
import type { NewRecord } from '../../../src/book/make/records.ts';
import { run } from '../../../templates/build.ts';
import { harbour, walk } from './place.ts';

const place = harbour();
const loft = place.record('Sail loft', { meter: { name: 'Meter A', spread: 0.1 } });
const rebuilt = place.rebuild(loft);
place.takeWalk(rebuilt, walk('shed'));
const shed = place.record(rebuilt, {
  name: 'Boat shed',
  place: 'Boat shed',
  date: '2026-09-25',
  by: 'Ines',
  meter: { name: 'Meter B', spread: 0.1, offset: 0.05 },
});

/** A report of two records as a reader of its cells. */
function reported(then: NewRecord, now: NewRecord) {
  const made = makeSheet(place.document, place.means, reportSheet(then, now), 'Report');
  run(place.book, made);
  const sheet = place.document.sheets.at(-1)?.properties.name ?? '';
  return (cell: string) => place.valueOf(sheet, cell);
}

describe('the shed held against the loft', () => {
  const at = reported(loft, shed);

  it('point by point, each against its own taking stop, less what the meter reads over', () => {
    // f/3.2 at f/2.8 is 1/3 over; the meter of the shed reads 0.05 over: 0.28, more than the root
    // of 0.1² + 0.1² = 0.14 that two such meters tell apart, and more than the tolerance of 1/4.
    expect(Number(at('D13'))).toBeCloseTo(1 / 3 - 0.05, 9);
    expect(Number(at('B9'))).toBeCloseTo(Math.SQRT2 / 10, 12);
    expect(at('E13')).toBe('0.3 stop over');
    // The fill: 2/3 over the stop it had, 1/3 over its place from the key.
    expect(Number(at('D14'))).toBeCloseTo(2 / 3 - 0.05, 9);
    expect(at('H14')).toBe('1/3 stop over');
  });

  it('what was not metered is said and counts for nothing', () => {
    expect(at('A18')).toBe('Rope bench');
    expect(at('E18')).toBe('');
    expect(at('I18')).toBe('not metered now');
    expect(at('E3')).toBe(1);
  });

  it('ratio by ratio, in stops', () => {
    // By sides then f/2.8 to f/1.4 1/3, 5/3 stops; now f/3.2 to f/2, 4/3: 1/3 under.
    expect(at('A21')).toBe('Contrast by sides');
    expect(Number(at('D21'))).toBeCloseTo(-1 / 3, 7);
    expect(at('E21')).toBe('1/3 stop under');
    // Key and fill to fill, ambient taken away: then (10.5 + 3.7) / 3.7 = 3.838, now (100 + 37.5) /
    // 37.5 = 3.667: 0.07 stop, less than the 0.14 that the meters tell apart.
    expect(at('A22')).toBe('Lighting ratio');
    expect(Number(at('D22'))).toBeCloseTo(Math.log2(137.5 / 37.5 / (14.2 / 3.7)), 7);
    expect(at('E22')).toBe('cannot be told apart');
  });

  it('colour by colour, each against its own white', () => {
    expect(at('A25')).toBe('Key colour');
    // Then 1e6/3230 − 1e6/3200 = −2.9; now 1e6/5480 − 1e6/5600 = 3.9: 6.8 mired, within 10.
    expect(Number(at('D25'))).toBeCloseTo(1e6 / 5480 - 1e6 / 5600 - 1e6 / 3230 + 1e6 / 3200, 9);
    expect(at('E25')).toBe('agrees');
    // The fill: −17.5 then, 12.6 now; tint 0.0068 then, 0.0095 now, 0.0027 of the 0.003 allowed.
    expect(at('E26')).toBe('30 mired warmer');
  });

  it('in one sentence, signed with date and place', () => {
    expect(at('A1')).toBe(
      'The light does not match: 5 of 5 points, 1 of 2 ratios and 1 of 2 colours are off, 1 not metered.',
    );
    expect(at('B30')).toBe('Sail loft, first floor, 2026-09-23 14:05');
    expect(at('B32')).toBe('Boat shed, 2026-09-25 14:05');
    expect(at('B34')).toBe('Ines');
  });
});

describe('a set-up held against itself', () => {
  it('matches, and says so', () => {
    const at = reported(loft, loft);
    expect(at('A1')).toBe(
      'The light matches: 0 of 6 points, 0 of 2 ratios and 0 of 3 colours are off.',
    );
    expect(at('E13')).toBe('cannot be told apart');
  });

  it('a difference smaller than the meters tell apart is called that, whatever the tolerance', () => {
    const [key, ...others] = loft.points;
    if (!key?.f) throw new Error('no key');
    // 0.12 stop is less than 0.14, and 0.2 is more.
    const with_ = (stops: number) => ({
      ...loft,
      tolerance: 0.05,
      points: [{ ...key, f: (key.f ?? 1) * 2 ** (stops / 2) }, ...others],
    });
    const strict = { ...loft, tolerance: 0.05 };
    expect(reported(strict, with_(0.12))('E13')).toBe('cannot be told apart');
    expect(reported(strict, with_(0.2))('E13')).toBe('0.2 stop over');
  });

  it('a dome then and a flat receptor now is said beside the point', () => {
    const [key, ...others] = loft.points;
    if (!key) throw new Error('no key');
    const at = reported(loft, { ...loft, points: [{ ...key, receptor: 'flat' }, ...others] });
    expect(at('I13')).toBe('dome then, flat now: up to 0.44 stop is the meter');
  });
});
