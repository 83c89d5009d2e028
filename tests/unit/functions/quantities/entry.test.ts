import { describe, expect, it } from 'vitest';
import {
  defaultWriting,
  readAny,
  readAs,
  readEntry,
  readLevel,
  type QuantityName,
  type WritingSettings,
} from '../../../../functions/quantities/index.ts';
import { plainHint, typedHint } from '../../../../functions/quantities/hints.ts';
import { shown, tidy } from '../../../../functions/quantities/text.ts';

const comma: WritingSettings = { ...defaultWriting, decimal: ',' };
const typed = (text: string, quantity?: QuantityName, settings = defaultWriting) =>
  readEntry(text, quantity, settings);

describe('an entry', () => {
  it('of nothing, or of spaces, is blank', () => {
    expect(typed('')).toEqual({ content: { kind: 'blank' } });
    expect(typed(' \u00a0 ', 'length')).toEqual({ content: { kind: 'blank' } });
  });

  it('below what its quantity can be is refused with what was typed', () => {
    expect(typed('-5', 'illuminance')).toEqual({
      reason: 'Illuminance must be zero or more; -5 was typed.',
    });
    expect(typed('0', 'time')).toEqual({
      reason: 'Exposure time must be more than zero; 0 was typed.',
    });
    expect(typed('-2,5', 'time', comma)).toEqual({
      reason: 'Exposure time must be more than zero; -2,5 was typed.',
    });
    expect(typed('0', 'illuminance')).toMatchObject({ content: { value: 0 } });
    expect(typed('-5', 'stops')).toMatchObject({ content: { value: -5 } });
    expect(typed('-5', 'temperature')).toMatchObject({ content: { value: -5 } });
  });

  it('of a truth is one, in its cell by any word and in a plain one by TRUE and FALSE', () => {
    expect(typed('yes', 'truth')).toEqual({
      content: { kind: 'truth', value: true },
      quantity: 'truth',
    });
    expect(typed('n', 'truth')).toMatchObject({ content: { kind: 'truth', value: false } });
    expect(typed('True')).toEqual({ content: { kind: 'truth', value: true } });
    expect(typed('FALSE')).toEqual({ content: { kind: 'truth', value: false } });
    expect(typed('yes')).toMatchObject({ content: { kind: 'text' } });
  });

  it('in a cell for words stays as it was typed', () => {
    expect(typed(' 250 fc', 'text')).toEqual({
      content: { kind: 'text', text: ' 250 fc' },
      quantity: 'text',
    });
    expect(typed('1/3', 'verdict')).toMatchObject({ content: { kind: 'text', text: '1/3' } });
  });

  it('in a plain cell is a number, or gets the quantity of its unit', () => {
    expect(typed('-3.5')).toEqual({ content: { kind: 'number', value: -3.5 } });
    expect(typed('80 nits')).toEqual({
      content: { kind: 'number', value: 80 },
      quantity: 'luminance',
    });
    expect(typed('the sail loft')).toEqual({ content: { kind: 'text', text: 'the sail loft' } });
  });

  it('that is much too long for its quantity is refused', () => {
    const [longest, longer] = ['1'.repeat(118), '1'.repeat(119)];
    for (const read of [
      (text: string) => readAs('length', text, defaultWriting),
      (text: string) => readAny(text, defaultWriting),
    ]) {
      expect(read(`${longest} m`)).toMatchObject({ ok: true, quantity: 'length' });
      expect(read(`${longer} m`)).toMatchObject({ ok: false });
    }
    expect(readLevel(`${longest}11`, defaultWriting)).toMatchObject({ ok: true });
    expect(readLevel(`${longest}111`, defaultWriting)).toMatchObject({ ok: false });
  });

  it('that is much too long is text, unread', () => {
    const number = `${'1'.repeat(119)}`;
    expect(typed(`${number}1`)).toMatchObject({ content: { kind: 'number' } });
    expect(typed(`${number}11`)).toMatchObject({ content: { kind: 'text' } });
    expect(typed(' '.repeat(121))).toMatchObject({ content: { kind: 'text' } });
  });
});

describe('a hint', () => {
  const hint = (text: string, quantity?: QuantityName) => {
    const entry = typed(text, quantity);
    return 'hint' in entry ? entry.hint : undefined;
  };
  const could = (names: string) =>
    `Kept as text. In a cell with the quantity ${names} it is a number.`;

  it('says what a text in a plain cell could be', () => {
    expect(hint('1/3')).toBe(could('“exposure time” or “number of stops”'));
    expect(hint('8x')).toBe(could('“factor”'));
    expect(hint('4 to 1')).toBe(could('“ratio”'));
    expect(hint('30M')).toBe(could('“green correction”'));
    expect(hint('F4')).toBe(could('“f-number”'));
    expect(hint('Rope bench')).toBeUndefined();
    expect(hint('1/3 turn')).toBeUndefined();
    expect(plainHint('5', defaultWriting)).toBeUndefined();
  });

  it('asks whether a bare whole number of seconds was meant as a fraction, from 15 on', () => {
    expect(hint('15', 'time')).toBe('Taken as 15 seconds. A fraction is written 1/15.');
    expect(hint('14', 'time')).toBeUndefined();
    expect(hint('50 s', 'time')).toBeUndefined();
    expect(hint('50.5', 'time')).toBeUndefined();
    expect(hint('50', 'duration')).toBeUndefined();
    // 180° at a hundredth of a frame a second.
    expect(typedHint('time', '180', 50)).toBeUndefined();
  });
});

describe('a text in a sentence', () => {
  it('has one spelling for many signs', () => {
    expect(tidy(' 10′6″ ')).toBe(`10'6"`);
    expect(tidy('−1⁄3\u2003stop')).toBe('-1/3 stop');
    expect(tidy('5\u00a0μs')).toBe('5 µs');
  });

  it('is cut after forty signs', () => {
    expect(shown('x'.repeat(40))).toBe('x'.repeat(40));
    expect(shown('x'.repeat(41))).toBe(`${'x'.repeat(40)}…`);
    expect(shown(`x${' '.repeat(159)}`)).toBe('x');
    expect(shown(`x${' '.repeat(160)}`)).toBe('x…');
    expect(shown('½'.repeat(200))).toBe(`${'½'.repeat(40)}…`);
  });
});
