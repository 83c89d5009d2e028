import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import SUNIN from '../../../../functions/time/SUNIN.ts';
import { settings } from '../support/settings.ts';

/** Minutes after midnight that a sentence of spells names. */
const minutesIn = (spells: string) =>
  [...spells.matchAll(/(\d\d):(\d\d)/g)].map(
    ([, hours, minutes]) => 60 * Number(hours) + Number(minutes),
  );

describe('the sun in a window', () => {
  it('comes twice to a window that faces north in summer', () => {
    const said = String(call(SUNIN, ['2026-06-21', 0, 55, 0, 0], settings));
    expect(said).toMatch(/^\d\d:\d\d to \d\d:\d\d and \d\d:\d\d to \d\d:\d\d$/);
    const [first = 0, , , last = 0] = minutesIn(said);
    // Sunrise and sunset at 55° north, 0°: 03:21 and 20:43 UT (from memory of an almanac, to minutes).
    expect(Math.abs(first - (3 * 60 + 21))).toBeLessThan(5);
    expect(Math.abs(last - (20 * 60 + 43))).toBeLessThan(5);
  });

  it('is told by the clock that the day has at noon, on a day on which it is changed', () => {
    const { ephemeris } = settings;
    if (!ephemeris) throw new Error('There is no ephemeris.');
    // An hour ahead from three in the night of 29 March 2026 on.
    const change = Date.UTC(2026, 2, 29, 3);
    const changing = { ...ephemeris, ahead: (wall: number) => (wall < change ? 0 : 1) };
    const inZone = call(SUNIN, ['2026-03-29', 180, 55, 0], { ...settings, ephemeris: changing });
    expect(inZone).toBe(call(SUNIN, ['2026-03-29', 180, 55, 0, 1], settings));
    expect(inZone).not.toBe(call(SUNIN, ['2026-03-29', 180, 55, 0, 0], settings));
  });
});
