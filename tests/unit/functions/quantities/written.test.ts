import { describe, expect, it } from 'vitest';
import {
  defaultWriting,
  inEveryUnit,
  writeForPeople,
  writeNumber,
  writeQuantity,
  type QuantityName,
  type WritingFormat,
  type WritingSettings,
} from '../../../../functions/quantities/index.ts';
import { areaOfGauge } from '../../../../functions/quantities/gauge.ts';
import { rounded } from '../../../../functions/quantities/writing/number.ts';

const comma: Partial<WritingSettings> = { decimal: ',' };
const feet: Partial<WritingSettings> = { length: 'ft' };
const stop = Math.log10(2);
const mark = (stops: number) => Math.SQRT2 ** stops;

type Row = readonly [
  QuantityName,
  number,
  string,
  settings?: Partial<WritingSettings>,
  format?: WritingFormat,
];

const write = (
  quantity: QuantityName,
  value: number,
  settings: Partial<WritingSettings> = {},
  format: WritingFormat = {},
) => writeQuantity(quantity, value, { ...defaultWriting, ...settings }, format).text;

describe('a value is written', () => {
  it.each(
    (
      [
        ['density', stop, 'ND 0.3'],
        ['density', 1.5 * stop, 'ND 0.45'],
        ['density', stop / 3, 'ND 0.1'],
        ['density', (10 * stop) / 3, 'ND 1.0'],
        ['density', stop, 'ND 0,3', comma],
        ['density', 0.3, '0.3'],
        ['density', 0, '0'],
        ['density', stop / 6, '0.0502'],
        ['density', stop, '0.30', {}, { decimals: 2 }],
        ['greenCorrection', -30, 'CC 30 M'],
        ['greenCorrection', 7.5, 'CC 7.5 G'],
        ['greenCorrection', 0, 'CC 0'],
        ['greenCorrection', -0.2, 'CC 0', {}, { decimals: 0 }],
        ['money', 1234.5, '1,234.50 EUR'],
        ['money', 1_234_567.5, '1.234.567,50 EUR', comma],
        ['money', -999, '−999.00 EUR'],
        ['money', 1000, '1,000 EUR', {}, { decimals: 0 }],
        ['iso', 800, 'ISO 800'],
        ['factor', 8, '× 8'],
        ['factor', 10 / 3, '× 3.33'],
        ['ev', 34 / 3, '11.33 EV'],
        ['ratio', 4, '4:1'],
        ['duv', 0.001_14, '+0.00114'],
        ['duv', -0.001_1, '−0.0011'],
        ['duv', 0, '0'],
        ['duv', 1e-9 / 3, '0'],
        ['mired', 1e6 / 5600, '178.6 mired'],
        ['colourTemperature', 16_870 / 3, '5623 K'],
        ['share', 1 / 3, '33.33 %'],
        ['truth', 1, 'TRUE'],
        ['truth', 0, 'FALSE'],
        ['illuminance', 100, '9.29 fc', {}, { unit: 'fc' }],
        ['illuminance', 2500, '2.5 klx', {}, { unit: 'klx' }],
        ['illuminance', 100, '9.290 fc', {}, { unit: 'fc', decimals: 3 }],
        ['time', 0.02, '1/50 s'],
        ['time', 1 / 3, '1/3 s'],
        ['time', 0.5, '1/2 s'],
        ['time', 0.4, '0.4 s'],
        ['time', 0.3, '0.3 s'],
        ['time', 1, '1 s'],
        ['time', 2.5, '2.5 s'],
        ['time', 0.04 / 3, '1/75 s'],
        ['time', 0.037, '1/27.03 s'],
        ['time', 0.142_857_142_9, '1/7 s'],
        ['time', 0, '0 s'],
        ['time', 1e-9, '1/1000000000 s'],
        ['time', 0.02, '0.020 s', {}, { decimals: 3 }],
        ['time', 0.02, '180°', { shutter: 'angle' }, { fps: 25 }],
        ['time', 0.02, '1/50 s', { shutter: 'angle' }],
        ['time', 0.02, '1/50 s', { shutter: 'angle' }, { fps: 0 }],
        ['stops', 0, '0 stops'],
        ['stops', 1, '+1 stop'],
        ['stops', 2, '+2 stops'],
        ['stops', -1 / 3, '−⅓ stop'],
        ['stops', 5 / 3, '+1 ⅔ stops'],
        ['stops', 0.999_5, '+1 stop'],
        ['stops', 1.998, '+1.998 stops'],
        ['stops', 0.75, '+¾ stop'],
        ['stops', -0.56, '−0.56 stop'],
        ['stops', 5 / 3, '+1.67 stops', {}, { decimals: 2 }],
        ['stops', 1 / 3, '+⅓ stop', comma],
        ['stops', 0.56, '+0,56 stop', comma],
        ['stops', 10 / 7, '+1.43 stops'],
        ['stops', 0.751_234_567_891, '+¾ stop'],
        ['stops', 1.041_234_567_891, '+1.0 stop', {}, { decimals: 1 }],
        ['stops', 1000 + 1 / 3, '+1000.33 stops'],
        ['stops', -999 - 1 / 3, '−999 ⅓ stops'],
        ['fNumber', mark(3 + 1 / 3), 'f/2.8 ⅓'],
        ['fNumber', mark(3 + 2 / 3), 'f/2.8 ⅔'],
        ['fNumber', mark(3), 'f/2.8'],
        ['fNumber', mark(3.5), 'f/2.8 ½', { fNumbers: 'halves' }],
        ['fNumber', mark(3.3), 'f/2.8 + 0.3', { fNumbers: 'tenths' }],
        ['fNumber', mark(3), 'f/2.8', { fNumbers: 'tenths' }],
        ['fNumber', mark(-1), 'f/0.7'],
        ['fNumber', mark(-1 / 3), 'f/0.7 ⅔'],
        ['fNumber', 4, 'f/4.00', {}, { decimals: 2 }],
        ['frameRate', 24_000 / 1001, '23.976 fps'],
        ['frameRate', 25, '25 fps'],
        ['frameRate', 23.97, '23.97 fps'],
        ['frameRate', 23.976_01, '23.97601 fps'],
        ['length', 3.048, '10 ft', feet],
        ['length', 3.2004, `10'6"`, feet],
        ['length', -3.2004, `−10'6"`, feet],
        ['length', 0.1524, `0'6"`, feet],
        ['length', 3.21, '10.53 ft', feet],
        ['length', 3.2004, '10.50 ft', feet, { decimals: 2 }],
        ['length', 3.2004, '3.2004 m'],
        ['angle', 172.8, '172.8°'],
        ['number', Infinity, 'Infinity'],
        ['fNumber', NaN, 'NaN'],
        ['length', -Infinity, '-Infinity'],
      ] as readonly Row[]
    ).map((row) => [row.slice(0, 3).join(' '), row] as const),
  )('%s', (_, [quantity, value, text, settings, format]) => {
    expect(write(quantity, value, settings, format)).toBe(text);
  });

  it('for a plain font without its rarer signs', () => {
    const plain = (quantity: QuantityName, value: number) =>
      writeForPeople(quantity, value, defaultWriting);
    expect(plain('stops', -1 / 3)).toBe('-1/3 stop');
    expect(plain('stops', 2.5)).toBe('+2 1/2 stops');
    expect(plain('luminance', 80)).toBe('80 cd/m2');
    expect(plain('factor', 8)).toBe('x 8');
    expect(plain('angle', 90)).toBe('90°');
  });
});

describe('a number is written', () => {
  const write = (...[value, fixed]: [number, number?]) => writeNumber(value, defaultWriting, fixed);

  it('whole where it ends by itself, and to four figures where it does not', () => {
    expect(write(0.123_456_789)).toBe('0.123456789');
    expect(write(1 / 3)).toBe('0.3333');
    expect(write(200 / 3)).toBe('66.67');
    expect(write(2_000_000 / 3)).toBe('666667');
    expect(write(-2 / 3)).toBe('−0.6667');
    expect(write(0)).toBe('0');
  });

  it('with as many decimals as were asked for, and no minus before nothing', () => {
    expect(write(2.345, 1)).toBe('2.3');
    expect(write(-0.001, 2)).toBe('0.00');
    expect(write(-0.001, 0)).toBe('0');
    expect(write(5, -3)).toBe('5');
    expect(write(1, 25)).toBe(`1.${'0'.repeat(20)}`);
    expect(write(1.5, 1.9)).toBe('1.5');
  });

  it('by decimals where its quantity has some', () => {
    expect(rounded(2 / 3, { decimals: 2 })).toBe(0.67);
    expect(rounded(-1e-9 / 3, { decimals: 2 })).toBe(0);
    expect(rounded(0.123_456_7, { typed: 6 })).toBe(0.1235);
    expect(rounded(0.123_456, { typed: 6 })).toBe(0.123_456);
  });
});

describe('a value in every unit', () => {
  const all = (quantity: QuantityName, value: number, fps?: number) =>
    inEveryUnit(quantity, value, defaultWriting, fps === undefined ? {} : { fps }).map(
      ({ text }) => text,
    );

  it('has those that people can hold in their heads, the workbook’s first and none twice', () => {
    expect(all('illuminance', 100)).toEqual(['100 lx', '9.29 fc', '0.1 klx']);
    expect(all('illuminance', 1)).toEqual(['1 lx']);
    expect(all('length', 3.2)[0]).toBe('3.2 m');
    expect(all('length', 3.2)).toContain(`10'6"`);
    expect(all('length', 3.2131)).toContain(`10'6 ½"`);
    expect(all('length', 0.0127)).toContain(`0'½"`);
    expect(all('length', -3.2)).toContain(`−10'6"`);
    expect(all('length', -0.001)).toContain(`0'0"`);
  });

  it('has what else people call it', () => {
    expect(all('colourTemperature', 5600)).toEqual(['5600 K', '178.6 mired']);
    expect(all('colourTemperature', -1)).toEqual(['−1 K']);
    expect(all('colourTemperature', 0)).toEqual(['0 K']);
    expect(all('ratio', 4)).toEqual(['4:1', '+2 stops']);
    expect(all('ratio', 0)).toEqual(['0:1']);
    expect(all('factor', 0.5)).toContain('−1 stop');
    expect(all('density', stop)).toEqual(['ND 0.3', '−1 stop', '50 %']);
    expect(all('share', 0.5)).toEqual(['50 %', '0.5', '−1 stop']);
    expect(all('stops', 1)).toEqual(['+1 stop', '× 2']);
    expect(all('stops', 1.004_123_456_789)).toEqual(['+1 stop', '× 2.01']);
    expect(all('fNumber', mark(3.5))).toEqual(['f/2.8 + 0.5', 'f/2.8 ½', 'f/3.364']);
  });

  it('has the gauge of a conductor, about where it is not exact (ASTM B258)', () => {
    expect(all('conductorArea', 3.31)).toEqual(['3.31 mm²', 'about 12 AWG']);
    // 36 AWG is 0.005 in across: π/4 · 0.127² mm².
    expect(all('conductorArea', (Math.PI / 4) * 0.127 ** 2)).toContain('36 AWG');
    expect(all('conductorArea', 107.2)).toContain('about 4/0 AWG');
    expect(all('conductorArea', 53.5)).toContain('about 1/0 AWG');
    expect(all('conductorArea', 150)).toEqual(['150 mm²']);
    expect(all('conductorArea', 1e-4)).toHaveLength(1);
    expect(all('conductorArea', 0)).toEqual(['0 mm²']);
    expect(all('conductorArea', areaOfGauge(40))).toContain('40 AWG');
    expect(all('conductorArea', -1)).toEqual(['−1 mm²']);
  });

  it('turns shutter times and angles into one another where the frame rate is known', () => {
    expect(all('angle', 180, 25)).toEqual(['180°', '1/50 s']);
    expect(all('angle', 180)).toEqual(['180°']);
    expect(all('angle', 180, 0)).toEqual(['180°']);
    const written = { ...defaultWriting, ...comma, shutter: 'angle' } as const;
    const texts = inEveryUnit('angle', 270, written, { fps: 25 }).map(({ text }) => text);
    expect(texts).toEqual(['270°', '1/33,33 s']);
    expect(all('angle', 0, 25)).toEqual(['0°']);
    expect(all('time', 0.02, 25)).toContain('180°');
    expect(all('time', 0.04, 25)).toContain('360°');
    expect(all('time', 0.05, 25).join()).not.toContain('°');
    expect(all('time', 0.02, 0).join()).not.toContain('°');
  });

  it('has none of what is no number', () => {
    expect(all('length', NaN)).toEqual([]);
    expect(all('length', Infinity)).toEqual([]);
  });
});
