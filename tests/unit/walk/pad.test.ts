import { describe, expect, it, test } from 'vitest';
import { readEntry } from '../../../functions/quantities/index.ts';
import { defaultWriting } from '../../../functions/quantities/settings.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { isLit, padFor, press, whole, type Pad } from '../../../src/walk/pad.ts';

const comma = { ...defaultWriting, decimal: ',' } as const;
const tenths = { ...defaultWriting, fNumbers: 'tenths' } as const;

/** Presses keys by what they say, from an empty field or from what was typed before. */
function keyed(pad: Pad, says: readonly string[], kept = ''): string {
  const keys = pad.rows.flat();
  let text = '';
  for (const name of says) {
    const key = keys.find((one) => one.says === name);
    if (!key) throw new Error(`There is no key ${name}.`);
    text = press(text, kept, key);
  }
  return text;
}

/** What the book makes of a text. */
function meant(text: string, quantity: QuantityName, writing = defaultWriting): number {
  const entry = readEntry(text, quantity, writing);
  if ('reason' in entry || entry.content.kind !== 'number') throw new Error(text);
  return entry.content.value;
}

describe('keys of an f-number', () => {
  const thirds = padFor('fNumber', defaultWriting);

  it('are whole stops, then thirds', () => {
    expect(keyed(thirds, ['1.4', '+ 1/3'])).toBe('f/1.4 1/3');
    expect(keyed(thirds, ['1.4', '+ 1/3', 'even'])).toBe('f/1.4');
  });

  it('take a third onto the reading that stands', () => {
    expect(keyed(thirds, ['+ 2/3'], 'f/1.4 1/3')).toBe('f/1.4 2/3');
  });

  it('do nothing with a third alone', () => {
    expect(keyed(thirds, ['+ 2/3'])).toBe('');
  });

  it('begin anew with another whole stop', () => {
    expect(keyed(thirds, ['2', '+ 2/3', '2.8'])).toBe('f/2.8');
  });

  it('erase the third first and the stop second', () => {
    expect(keyed(thirds, ['4', '+ 1/3', 'Erase'])).toBe('f/4');
    expect(keyed(thirds, ['4', '+ 1/3', 'Erase', 'Erase'])).toBe('');
  });

  it('are tenths where the book says tenths', () => {
    expect(keyed(padFor('fNumber', tenths), ['1.4', '.4'])).toBe('f/1.4+0.4');
  });

  it('are digits where the book says decimals', () => {
    const pad = padFor('fNumber', { ...defaultWriting, fNumbers: 'decimals' });
    expect(whole(keyed(pad, ['3', 'Decimal sign', '5']), pad)).toBe('f/3.5');
  });

  it('show what the reading is made of', () => {
    const lit = thirds.rows.flat().filter((key) => isLit('f/5.6 1/3', key));
    expect(lit.map(({ says }) => says)).toEqual(['5.6', '+ 1/3']);
  });

  // Each whole stop is a power of the root of two (ISO 2720 marks), each third a sixth root more.
  test.each([
    [defaultWriting, ['0.7', '+ 1/3'], 2 ** ((-1 + 1 / 3) / 2)],
    [defaultWriting, ['5.6', '+ 2/3'], 2 ** ((5 + 2 / 3) / 2)],
    [comma, ['1,4', '+ 1/3'], 2 ** ((1 + 1 / 3) / 2)],
    [tenths, ['1.4', '.4'], 2 ** (1.4 / 2)],
    [{ ...tenths, decimal: ',' } as const, ['2,8', ',3'], 2 ** (3.3 / 2)],
    [{ ...defaultWriting, fNumbers: 'halves' } as const, ['8', '+ 1/2'], 2 ** (6.5 / 2)],
  ])('are read by the book as they are meant: %#', (writing, says, expected) => {
    const text = keyed(padFor('fNumber', writing), says);
    expect(meant(text, 'fNumber', writing)).toBeCloseTo(expected, 12);
  });
});

describe('keys of digits', () => {
  const lux = padFor('illuminance', defaultWriting);

  it('give a bare number the unit of the book', () => {
    expect(whole(keyed(lux, ['8', '5']), lux)).toBe('85 lx');
    const fc = padFor('illuminance', { ...defaultWriting, illuminance: 'fc' });
    expect(whole(keyed(fc, ['4', 'Decimal sign', '2']), fc)).toBe('4.2 fc');
  });

  it('take another unit, and digits still go before it', () => {
    expect(keyed(lux, ['2', 'klx', 'Decimal sign', '5'])).toBe('2.5 klx');
  });

  it('erase the unit first and then digit by digit', () => {
    expect(keyed(lux, ['8', '5', 'fc', 'Erase'])).toBe('85');
    expect(keyed(lux, ['8', '5', 'Erase'])).toBe('8');
    expect(keyed(lux, ['Erase'], '85 lx')).toBe('85');
  });

  it('have the decimal sign of the book', () => {
    const pad = padFor('illuminance', comma);
    const text = whole(keyed(pad, ['4', '1', 'Decimal sign', '5']), pad);
    expect(text).toBe('41,5 lx');
    expect(meant(text, 'illuminance', comma)).toBe(41.5);
  });

  it('turn a tint to the other side and back', () => {
    const tint = padFor('duv', defaultWriting);
    const digits = ['0', 'Decimal sign', '0', '0', '4'];
    expect(keyed(tint, [...digits, 'Plus or minus'])).toBe('-0.004');
    expect(keyed(tint, [...digits, 'Plus or minus', 'Plus or minus'])).toBe('0.004');
    expect(meant(whole(keyed(tint, [...digits, 'Plus or minus']), tint), 'duv')).toBe(-0.004);
  });

  test.each([
    ['colourTemperature', ['5', '6', '0', '0'], 5600],
    ['time', ['1/', '5', '0'], 1 / 50],
    ['angle', ['1', '7', '2', 'Decimal sign', '8'], 172.8],
    ['iso', ['8', '0', '0'], 800],
    ['ev', ['1', '1', 'Decimal sign', '3'], 11.3],
    ['luminance', ['6', 'Decimal sign', '9'], 6.9],
  ] as const)('of %s are read by the book as they are meant', (quantity, says, expected) => {
    const pad = padFor(quantity, defaultWriting);
    expect(meant(whole(keyed(pad, says), pad), quantity)).toBeCloseTo(expected, 12);
  });
});

describe('what a keyboard types', () => {
  const f = padFor('fNumber', defaultWriting);
  const lux = padFor('illuminance', defaultWriting);

  test.each([
    ['5.6 ⅓', f, 'f/5.6 ⅓'],
    ['f/5.6 ⅓', f, 'f/5.6 ⅓'],
    ['85 lx', f, '85 lx'],
    ['85', lux, '85 lx'],
    ['2.5 klx', lux, '2.5 klx'],
    ['f/4', lux, 'f/4'],
  ] as const)('%s', (typed, pad, expected) => {
    expect(whole(typed, pad)).toBe(expected);
  });
});
