import { describe, expect, it } from 'vitest';
import {
  BOUNCELUX,
  DISTANCEFOR,
  EVENNESS,
  INCIDENTISO,
  INCIDENTTIME,
  NEWDISTANCE,
  PANELDISTANCE,
  PANELLUMINANCE,
  READINGF,
  READINGLUX,
  WATTS,
} from '../../functions/index.ts';
import { number } from '../support/cases.ts';
import electrical from './cases/electrical.json' with { type: 'json' };
import exposure from './cases/exposure.json' with { type: 'json' };
import photometry from './cases/photometry.json' with { type: 'json' };

/** The result that a reference case states. */
function stated(id: string): readonly number[] {
  const found = [...photometry, ...exposure, ...electrical].find((one) => one.id === id);
  if (!found) throw new Error(`There is no case ${id}.`);
  return [found.expected].flat();
}

describe('reference cases solved for another of their figures', () => {
  it('EV 15 in the printed table is f/16 at 1/128 s and ISO 100, from either side of the meter', () => {
    const [luminance = NaN, lux = NaN] = stated('exposure-007-ev15-L-E');
    expect(stated('exposure-011-ev-15')).toEqual([15]);
    expect(number(READINGF, `${luminance} cd/m2`, 'spot', 100, 1 / 128)).toBeCloseTo(16, 9);
    expect(number(READINGF, `${lux} lx`, 'flat', 100, 1 / 128)).toBeCloseTo(16, 9);
    expect(number(READINGLUX, 'f/16', 'flat', 100, 1 / 128)).toBeCloseTo(lux, 6);
    expect(number(INCIDENTISO, lux, 'f/16', 1 / 128, 'flat')).toBeCloseTo(100, 9);
    expect(number(INCIDENTTIME, lux, 100, 'f/16', 'flat')).toBeCloseTo(1 / 128, 12);
  });

  it('500 lx at 3 m become the stated light at 4.5 m (inverse square law)', () => {
    const [lux = NaN] = stated('photometry-013-inverse-square');
    expect(number(DISTANCEFOR, 500, 3, lux)).toBeCloseTo(4.5, 9);
    expect(number(NEWDISTANCE, 3, lux / 500)).toBeCloseTo(4.5, 9);
  });

  it('a square of 1000 cd/m² seen from as far as its side (configuration factor)', () => {
    const [lux = NaN] = stated('photometry-021-rect-axis-1x1-1');
    expect(number(PANELLUMINANCE, lux, 1, 1, 1)).toBeCloseTo(1000, 6);
    expect(number(PANELDISTANCE, 1000, 1, 1, lux)).toBeCloseTo(1, 9);
    // A matt board is that square when ρE/π is 1000 cd/m².
    expect(number(BOUNCELUX, (1000 * Math.PI) / 0.8, 0.8, 1, 1, 1)).toBeCloseTo(lux, 6);
  });

  it('the currents of one and of three phases carry the watts that they were reckoned from', () => {
    const [single = NaN] = stated('electrical-001-amps-1ph');
    const [three = NaN] = stated('electrical-003-amps-3ph');
    expect(number(WATTS, single, 230, 0.95)).toBeCloseTo(12_000, 6);
    expect(number(WATTS, three, 400, 0.9, 3)).toBeCloseTo(60_000, 6);
  });

  it('uniformity is the least illuminance over the mean (CIE S 017, definition; from memory)', () => {
    const floor = [160, 180, 190, 200, 200, 200, 210, 220, 240];
    const cells = floor.map((value) => ({ value }));
    expect(number(EVENNESS, { cells })).toBeCloseTo(160 / 200, 12);
  });
});
