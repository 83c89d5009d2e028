import { describe, expect, it } from 'vitest';
import { readAmount } from '../../../../functions/quantities/amount.ts';
import { readNumber } from '../../../../functions/quantities/number.ts';
import {
  defaultWriting,
  readAny,
  readAs,
  type QuantityName,
} from '../../../../functions/quantities/index.ts';

const comma = { ...defaultWriting, decimal: ',' } as const;
const stop = Math.log10(2);
const mark = (stops: number) => Math.SQRT2 ** stops;

/** Read in a cell of that quantity: the number, or the sentence that refuses it. */
function read(quantity: QuantityName, text: string, settings = defaultWriting, fps?: number) {
  const reading = readAs(quantity, text, settings, fps === undefined ? {} : { fps });
  return reading.ok ? reading.value : reading.reason;
}

describe('a number', () => {
  it.each([
    ['1e3', 1000],
    ['1.5E-2', 0.015],
    ['.5', 0.5],
    ['5.', 5],
    [',5', 0.5],
    ["1'250", 1250],
    ['1 250,500', 1250.5],
    ['1.250.000', 1_250_000],
    ['1 250 000.5', 1_250_000.5],
    ['1,250,000.25', 1_250_000.25],
    ['0,125', 0.125],
    ['12,3456', 12.3456],
  ])('%s is %d', (text, value) => {
    expect(readNumber(text, { decimal: '.' })).toBe(value);
    expect(readNumber(text, { decimal: ',' })).toBe(value);
  });

  it.each([
    '',
    '.',
    '1.25.000',
    '12,34,567',
    '1,25.00',
    '1 2',
    '1 2503',
    '1e400',
    '1e99999',
    '1e',
    'x',
    '1.5.',
    '1.5 ',
    '1.5e5e5',
  ])('"%s" is none', (text) => expect(readNumber(text, { decimal: '.' })).toBeUndefined());

  it('with thousands or without is told by the setting, and has none where they make no sense', () => {
    expect(readNumber('1,250', { decimal: '.' })).toBe(1250);
    expect(readNumber('1,250', { decimal: ',' })).toBe(1.25);
    expect(readNumber('1,250', { decimal: '.', small: true })).toBe(1.25);
    expect(readNumber('1.250', { decimal: ',', small: true })).toBe(1.25);
  });
});

describe('an amount', () => {
  it.each([
    ['-1 2/3 stops', { value: -(1 + 2 / 3), sign: '-', fraction: true, rest: 'stops' }],
    ['⅔', { value: 2 / 3, sign: '', fraction: true, rest: '' }],
    ['1½ m', { value: 1.5, sign: '', fraction: true, rest: 'm' }],
    ['1 and 1/2', { value: 1.5, sign: '', fraction: true, rest: '' }],
    ['2 & 1/4 ft', { value: 2.25, sign: '', fraction: true, rest: 'ft' }],
    ['1/2.5 s', { value: 0.4, sign: '', fraction: true, rest: 's' }],
    ['+2', { value: 2, sign: '+', fraction: false, rest: '' }],
    ['-0', { value: 0, sign: '-', fraction: false, rest: '' }],
    ['250 lx', { value: 250, sign: '', fraction: false, rest: 'lx' }],
    ['1/2,500', { value: 0.4, sign: '', fraction: true, rest: '' }],
  ])('%s', (text, amount) => expect(readAmount(text, { decimal: '.' })).toEqual(amount));

  it.each(['1/0', '0/0', 'stops', '', '1e999 m', '3 1/0', `${'9'.repeat(400)}/2`])(
    '"%s" is none',
    (text) => expect(readAmount(text, { decimal: '.' })).toBeUndefined(),
  );
});

describe('read in its cell', () => {
  it.each<[QuantityName, string, number]>([
    ['density', 'none', 0],
    ['density', 'ND 0', 0],
    ['density', 'ND 0.6', 2 * stop],
    ['density', '1.2 nd', 4 * stop],
    ['density', 'ND 8x', Math.log10(8)],
    ['density', 'ND x4', Math.log10(4)],
    ['density', 'nd 1x', 0],
    ['density', '0.6', 0.6],
    ['duration', '8:30', 8.5],
    ['duration', '8 h 30 min', 8.5],
    ['duration', '2h05', 2 + 5 / 60],
    ['duration', '1 h 59', 1 + 59 / 60],
    ['duration', '2 d', 48],
    ['duration', '90 min', 1.5],
    ['fNumber', 'f/2.8½', mark(3.5)],
    ['fNumber', '1.4+0.4', mark(1.4)],
    ['fNumber', '5.6⁵', mark(5.5)],
    ['fNumber', '5.6 - 1/3', mark(5 - 1 / 3)],
    ['fNumber', '5.6 and 1/3', mark(5 + 1 / 3)],
    ['fNumber', '4 0.9', mark(4.9)],
    ['fNumber', '2.8/4', mark(3.5)],
    ['fNumber', '2.8-4 split', mark(3.5)],
    ['fNumber', '4/2.8 split', mark(3.5)],
    ['fNumber', 'T 2.8', mark(3)],
    ['fNumber', '4 stops', 4],
    ['fNumber', 'f/2,828', 2.828],
    ['fNumber', 'T12.7', 12.7],
    ['frameRate', '23.976', 24_000 / 1001],
    ['frameRate', '23.98 fps', 24_000 / 1001],
    ['frameRate', '29.97', 30_000 / 1001],
    ['frameRate', '119.88', 120_000 / 1001],
    ['frameRate', '23.97', 23.97],
    ['greenCorrection', '30M', -30],
    ['greenCorrection', 'CC 7 G', 7],
    ['greenCorrection', 'CC30M', -30],
    ['greenCorrection', '30 cc m', -30],
    ['greenCorrection', 'CC 10', 10],
    ['greenCorrection', '-30', -30],
    ['greenCorrection', '0 M', 0],
    ['greenCorrection', 'half minus green', -15],
    ['greenCorrection', 'plus green', 30],
    ['greenCorrection', 'full minusgreen', -30],
    ['greenCorrection', '1/4 plus green', 7.5],
    ['greenCorrection', '⅛ minus green', -3.75],
    ['colourTemperature', '100 K', 100],
    ['money', 'EUR 18', 18],
    ['money', '-1.250,50 €', -1250.5],
    ['money', 'eur 5', 5],
    ['ratio', '3.2 to 1', 3.2],
    ['ratio', '1 : 4', 0.25],
    ['share', '1', 1],
    ['share', '150 %', 1.5],
    ['iso', 'ISO 800/30°', 800],
    ['stops', '2/3 under', -2 / 3],
    ['stops', '0.7 stop over', 0.7],
    ['stops', '0 under', 0],
    ['truth', 'Y', 1],
    ['truth', 'No', 0],
    ['length', `10'6"`, 3.2004],
    ['length', '-10 ft 6 in', -3.2004],
    ['length', `11'6 1/2"`, 11 * 0.3048 + 6.5 * 0.0254],
    ['length', `10'`, 3.048],
    ['length', `10'6,125"`, 3.2004 + 0.125 * 0.0254],
    ['power', '2.4 KW', 2400],
    ['current', '16 a', 16],
    ['temperature', '50 °F', 10],
    // ASTM B258: 40 AWG is four steps thinner than 0.005 in.
    ['conductorArea', '40 AWG', (Math.PI / 4) * (0.127 * 92 ** (-4 / 39)) ** 2],
  ])('%s: %s is %d', (quantity, text, value) => {
    const result = read(quantity, text);
    expect(result).toBeCloseTo(value, 12);
    expect(Object.is(result, -0)).toBe(false);
  });

  it.each<[QuantityName, string, string]>([
    [
      'density',
      'ND 8',
      'ND 8: density or factor? Write ND 0.9 for a factor of 8, or 8.0 for a density.',
    ],
    [
      'density',
      'ND 400',
      'ND 400: density or factor? Write ND 2.6 for a factor of 400, or 400.0 for a density.',
    ],
    [
      'density',
      'ND 1',
      'ND 1: density or factor? Write ND 0.0 for a factor of 1, or 1.0 for a density.',
    ],
    ['colourTemperature', '3.2K', '3.2K is colder than any light. Write 3200 K if that is meant.'],
    ['conductorArea', '5/0 AWG', 'Wire gauges go from 4/0 to 40 AWG; 5/0 AWG is not one.'],
    ['conductorArea', '41 AWG', 'Wire gauges go from 4/0 to 40 AWG; 41 AWG is not one.'],
    ['money', 'USD 5', 'The workbook counts in EUR; USD 5 is another currency.'],
    ['money', '$5', 'The workbook counts in EUR; $5 is another currency.'],
    ['ratio', '4:0', 'A ratio to nothing has no value; 4:0 was given.'],
    ['share', '65', 'A share without % goes from 0 to 1. Write 65 % if that is meant.'],
  ])('%s: %s is answered with a sentence of its own', (quantity, text, reason) => {
    expect(read(quantity, text)).toBe(reason);
  });

  it.each<[QuantityName, string]>([
    ['density', '1/2'],
    ['density', 'ND 0x'],
    ['duration', '1 h 75'],
    ['fNumber', '4/4'],
    ['fNumber', '2.8/5.6'],
    ['fNumber', '4 3/2'],
    ['fNumber', 'f/0'],
    ['fNumber', '3/3.5 split'],
    ['greenCorrection', '-30M'],
    ['greenCorrection', '1/2'],
    ['greenCorrection', 'CC 1/2'],
    ['greenCorrection', 'CC -30 M'],
    ['greenCorrection', '30 blue'],
    ['money', 'EUR 5 EUR'],
    ['money', 'xyz 5'],
    ['money', '5 m'],
    ['ratio', '4:1:1'],
    ['ratio', '-4:1'],
    ['ratio', '4:-1'],
    ['ratio', '4 m:1'],
    ['ratio', '4:1 m'],
    ['stops', '+1 over'],
    ['stops', '1 lx'],
    ['stops', 'under'],
    ['truth', 'maybe'],
    ['length', `10'12"`],
    ['length', `10'+6"`],
    ['length', `10'-6 m`],
    ['angle', '1/50'],
    ['illuminance', '1e308 klx'],
    ['iso', '1/2'],
    ['iso', 'ISO 800 ISO'],
  ])('%s: "%s" is not one', (quantity, text) => {
    expect(read(quantity, text)).toMatch(/^Expected /);
  });

  it('an answer of its own names no other quantity', () => {
    expect(readAs('density', 'ND 8', defaultWriting)).not.toHaveProperty('wrongKind');
  });

  it('a sentence has the decimal sign of the workbook', () => {
    expect(read('density', 'ND 8', comma)).toContain('Write ND 0,9 for');
  });
});

describe('shutters', () => {
  it('have angles up to a whole turn, and need the frame rate beside a time', () => {
    expect(read('time', '360°', defaultWriting, 25)).toBe(1 / 25);
    expect(read('time', '361°', defaultWriting, 25)).toBe(
      'A shutter angle is more than 0° and at most 360°; 361° is not.',
    );
    expect(read('time', '0°', defaultWriting, 25)).toMatch(/0° is not\.$/);
    expect(readAs('time', '180°', defaultWriting, { fps: 0 })).toMatchObject({
      wrongKind: 'angle',
    });
    expect(readAs('angle', '1/50 s', defaultWriting, { fps: 0 })).toMatchObject({
      wrongKind: 'time',
    });
    expect(read('angle', '180')).toBe(180);
    expect(read('time', '180', defaultWriting, 25)).toBe(180);
  });
});

describe('a unit wherever it stands', () => {
  it('keeps its case where it is one letter that means two things', () => {
    expect(readAny('3200 K', defaultWriting)).toMatchObject({ quantity: 'colourTemperature' });
    expect(readAny('3200 k', defaultWriting)).toMatchObject({ ok: false });
    expect(readAny('5 M', defaultWriting)).toMatchObject({ ok: false });
    expect(readAny('16 a', defaultWriting)).toMatchObject({ quantity: 'current', value: 16 });
    expect(readAny('650 w', defaultWriting)).toMatchObject({ quantity: 'power', value: 650 });
    expect(readAny('3 KLX', defaultWriting)).toMatchObject({
      quantity: 'illuminance',
      value: 3000,
    });
  });

  it('may stand before the number, with a digit behind it', () => {
    expect(readAny('iso800', defaultWriting)).toMatchObject({ quantity: 'iso', value: 800 });
    expect(readAny('EV ½', defaultWriting)).toMatchObject({ quantity: 'ev', value: 0.5 });
    expect(readAny('Duv -0.001', defaultWriting)).toMatchObject({ quantity: 'duv', value: -0.001 });
    expect(readAny('T12.7', defaultWriting)).toMatchObject({ quantity: 'fNumber', value: 12.7 });
    expect(readAny('ISO fast', defaultWriting)).toMatchObject({ ok: false });
  });

  it.each([
    ['dateTime', '14:06'],
    ['dateTime', '2026-11-24'],
    ['conductorArea', '12 AWG'],
    ['length', `10'6"`],
  ] as const)('%s: %s says its unit', (quantity, text) => {
    expect(readAs(quantity, text, defaultWriting)).toMatchObject({ ok: true, unitWritten: true });
  });

  it('in front is a written unit, as one behind is', () => {
    expect(readAs('ev', 'EV 11', defaultWriting)).toMatchObject({ value: 11, unitWritten: true });
    expect(readAs('ev', '11', defaultWriting)).toMatchObject({ value: 11, unitWritten: false });
  });
});
