import { describe, expect, it } from 'vitest';
import { expected } from '../../templates/power/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// The loft’s circuits are invented; what they come to is worked out by hand in
// templates/power/expected.ts, cable by the resistances of IEC 60228 (from memory).

const sheet = openFilled('power');

describe('what is plugged in where', () => {
  comesToWhatItSays(sheet, expected);

  it('one lamp more is over, and says by how much', () => {
    const { type, valueOf } = openFilled('power');
    type('D15', '3');
    // 3550 W / 230 V = 15.43 A against 80 % of 16 A
    expect(valueOf('B6')).toBe('over by 2.6 A');
  });

  it('a load without its power factor waits, and so does its circuit', () => {
    const { type, valueOf, errors } = openFilled('power');
    type('F15', '');
    expect(valueOf('B6')).toMatchObject({ waiting: true });
    expect(errors()).toEqual([]);
  });

  it('a circuit that is not on the list is said', () => {
    const { type, valueOf } = openFilled('power');
    type('B17', 'attic');
    expect(valueOf('C17')).toBe('no such circuit');
    expect(valueOf('B7')).toBe('nothing of ours, 6.9 A free');
  });

  it('too many drivers on one device are to be spread (30 % of 30 mA: common practice)', () => {
    const { type, valueOf } = openFilled('power');
    type('K17', '3');
    expect(valueOf('B7')).toBe('leakage: spread over more devices');
  });

  it('drivers on three phases leave more in the neutral than any phase carries', () => {
    const { type, valueOf } = openFilled('power');
    for (const [row, circuit] of [
      ['15', 'blue'],
      ['16', 'blue'],
    ] as const)
      type(`B${row}`, circuit);
    for (const row of ['13', '14', '15', '16', '17']) type(`J${row}`, 'yes');
    for (const row of ['5', '7']) type(`E${row}`, '');
    const phases = ['C27', 'C28', 'C29'].map((cell) => Number(valueOf(cell)));
    const electronic = phases.reduce((sum, amps) => sum + amps, 0);
    expect(Number(valueOf('C30'))).toBeCloseTo(electronic, 9);
    expect(Number(valueOf('C30'))).toBeGreaterThan(Math.max(...phases));
  });
});
