import { describe, expect, it } from 'vitest';
import { call } from '../../../functions/call.ts';
import { AGREES, CIRCUITROOM, INCIDENTF } from '../../../functions/index.ts';
import { usual } from '../../../functions/usual.ts';
import {
  blank,
  isBlank,
  isError,
  isMeasured,
  isRange,
  noLight,
  refuse,
} from '../../../functions/values.ts';

const kinds = {
  blank,
  error: refuse('No.'),
  measured: { measured: 'length', value: 2 },
  range: { cells: [] },
};
const others = [null, undefined, 0, 1, '', 'code', true, {}, []];

describe('what a formula hands over', () => {
  it.each([
    ['an empty cell', isBlank, 'blank'],
    ['an error', isError, 'error'],
    ['a reading that says what it measures', isMeasured, 'measured'],
    ['a range', isRange, 'range'],
  ] as const)('%s is told from everything else', (_, is, wanted) => {
    for (const [kind, value] of Object.entries(kinds)) expect(is(value)).toBe(kind === wanted);
    for (const value of others) expect(is(value)).toBe(false);
  });

  it('is refused with a code, that of a number unless said otherwise', () => {
    expect(refuse('Too far.')).toEqual({ code: '#NUM!', message: 'Too far.' });
    expect(refuse('A word.', '#VALUE!')).toEqual({ code: '#VALUE!', message: 'A word.' });
    expect(noLight('key')).toEqual({ code: '#NUM!', message: 'no light at key', quiet: true });
  });
});

describe('what a call falls back on where nobody set anything', () => {
  it('is a dome of 340, a third of a stop and 80 % of a breaker (common practice)', () => {
    expect(call(INCIDENTF, [340, 100, 1], usual)).toBe(10);
    expect(call(AGREES, [100 * 2 ** 0.33, 100], usual)).toBe(true);
    expect(call(AGREES, [100 * 2 ** 0.34, 100], usual)).toBe(false);
    // 16 A at 230 V are 3680 W, of which 80 % are 2944 W.
    expect(call(CIRCUITROOM, [1000, 230, 16, 1], usual)).toBe(1944);
  });
});
