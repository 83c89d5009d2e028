import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactFrameRate } from '../../../../functions/quantities/frameRate.ts';
import { exactMark } from '../../../../functions/marks/index.ts';
import {
  defaultWriting,
  inEveryUnit,
  quantityNames,
  readAs,
  writeForPeople,
  writeQuantity,
} from '../../../../functions/quantities/index.ts';
import type { QuantityName, WritingSettings } from '../../../../functions/quantities/index.ts';

const numeric = quantityNames.filter((name) => name !== 'text' && name !== 'verdict');

const settingsOf = fc.record<WritingSettings>({
  decimal: fc.constantFrom('.', ','),
  illuminance: fc.constantFrom('lx', 'fc'),
  luminance: fc.constantFrom('cd/m²', 'fL'),
  length: fc.constantFrom('m', 'ft'),
  shutter: fc.constantFrom('time', 'angle'),
  fNumbers: fc.constantFrom('thirds', 'halves', 'tenths', 'decimals'),
  clock: fc.constantFrom('24', '12'),
  currency: fc.constantFrom('EUR', 'GBP', 'CHF'),
});

/** Where each quantity lives, and how far a written value may be off: a share, or an amount. */
const ranges: Partial<Record<QuantityName, readonly [low: number, high: number]>> = {
  angle: [-360, 360],
  chromaticity: [0, 1],
  colourTemperature: [1000, 40_000],
  dateTime: [0, 80_000],
  density: [0, 6],
  duv: [-0.1, 0.1],
  ev: [-6, 24],
  fNumber: [0.7, 250],
  frameRate: [1, 1000],
  greenCorrection: [-60, 60],
  money: [-1e7, 1e7],
  number: [-1e12, 1e12],
  share: [0, 2],
  stops: [-20, 20],
  temperature: [-40, 100],
  time: [1e-5, 100],
  truth: [0, 1],
};

const amounts: Partial<Record<QuantityName, number>> = {
  chromaticity: 5e-5,
  colourTemperature: 0.5,
  dateTime: 1 / 86_400,
  density: 5e-4,
  duv: 5e-5,
  ev: 0.005,
  mired: 0.05,
  money: 0.005,
  stops: 0.005,
  truth: 0.5,
};

/** Stops by which an f-number may be off: half a step, and for decimals four digits. */
const fNumberSteps = { thirds: 1 / 6, halves: 1 / 4, tenths: 1 / 20, decimals: 0.002 } as const;

function mayBeOff(quantity: QuantityName, value: number, settings: WritingSettings): number {
  if (quantity === 'fNumber') {
    return value * (2 ** (fNumberSteps[settings.fNumbers] / 2) - 1) * (1 + 1e-9) + 1e-9;
  }
  const digits = quantity === 'ratio' || quantity === 'factor' ? 5e-3 : 5e-4;
  return (amounts[quantity] ?? Math.abs(value) * digits) * (1 + 1e-9) + 1e-9;
}

/** An f-number that equals a mark means the mark, 23.98 means 24000/1001; no cell holds another. */
const meant: Partial<Record<QuantityName, (value: number) => number>> = {
  fNumber: (value) => exactMark(Number(value.toPrecision(9))),
  frameRate: (value) => exactFrameRate(Number(value.toPrecision(9))),
};

function valueOf(quantity: QuantityName, numbers: fc.Arbitrary<number>): fc.Arbitrary<number> {
  if (quantity === 'truth') return fc.constantFrom(0, 1);
  return numbers.map(meant[quantity] ?? ((value) => value));
}

const cases = fc.constantFrom(...numeric).chain((quantity) => {
  const [min, max] = ranges[quantity] ?? [0.001, 1e6];
  const double = fc.double({ min, max, noNaN: true });
  const typed = double.map((value) => Number(value.toPrecision(3)));
  return fc.record({
    quantity: fc.constant(quantity),
    value: valueOf(quantity, fc.oneof(double, typed)),
  });
});

describe('reading what was written', () => {
  test('gives the value back within what is shown, and writes the same again', () => {
    fc.assert(
      fc.property(cases, settingsOf, ({ quantity, value }, settings) => {
        for (const fps of [undefined, 24]) {
          const context = fps === undefined ? {} : { fps };
          if (quantity === 'time' && fps !== undefined && value * fps > 1) continue;
          const { text } = writeQuantity(quantity, value, settings, context);
          // Without a frame rate a time is written as such, whatever the workbook prefers.
          const reading = readAs(quantity, text, settings, context);
          if (!reading.ok) throw new Error(`${text}: ${reading.reason}`);
          expect(Math.abs(reading.value - value)).toBeLessThanOrEqual(
            mayBeOff(quantity, value, settings),
          );
          const again = writeQuantity(quantity, reading.value, settings, context);
          expect(again.text).toBe(text);
        }
      }),
      { numRuns: 5000 },
    );
  });

  test('holds for the plain characters of the command line too', () => {
    fc.assert(
      fc.property(cases, settingsOf, ({ quantity, value }, settings) => {
        const shown = readAs(quantity, writeQuantity(quantity, value, settings).text, settings);
        const plain = readAs(quantity, writeForPeople(quantity, value, settings), settings);
        expect(plain).toEqual(shown);
      }),
      { numRuns: 3000 },
    );
  });

  test('gives back exactly what ends within six digits, where the unit is the base unit', () => {
    const exact = numeric.filter(
      (name) => !['fNumber', 'stops', 'money', 'dateTime', 'truth', 'time', 'share'].includes(name),
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...exact),
        fc.integer({ min: 1, max: 999_999 }),
        fc.integer({ min: 0, max: 4 }),
        (quantity, whole, decimals) => {
          const value = Number((whole / 10 ** decimals).toPrecision(6));
          if (quantity === 'colourTemperature' && value < 100) return;
          const reading = readAs(
            quantity,
            writeQuantity(quantity, value, defaultWriting).text,
            defaultWriting,
          );
          expect(reading.ok && reading.value).toBe(value);
        },
      ),
    );
  });
});

/** A quarter inch for inches in halves; four digits of a number that is 32 °F higher. */
const coarserUnit: Partial<Record<QuantityName, number>> = { length: 0.00635, temperature: 0.03 };

describe('every unit on the slip', () => {
  test('says the same thing', () => {
    fc.assert(
      fc.property(cases, settingsOf, ({ quantity, value }, settings) => {
        for (const { text } of inEveryUnit(quantity, value, settings)) {
          const reading = readAs(quantity, text.replace(/^about /u, ''), settings);
          // Lines that name another quantity (mired beside kelvin) are that quantity's to read.
          if (!reading.ok || quantity === 'fNumber' || text.startsWith('about')) continue;
          const off = Math.max(mayBeOff(quantity, value, settings), Math.abs(value) * 5e-4);
          const coarser = coarserUnit[quantity] ?? 0;
          expect(Math.abs(reading.value - value)).toBeLessThanOrEqual(off + coarser);
        }
      }),
    );
  });

  test.each<[QuantityName, number, string[]]>([
    ['illuminance', 500, ['500 lx', '46.45 fc', '0.5 klx']],
    ['luminance', 48, ['48 cd/m²', '14.01 fL']],
    ['fNumber', 2 ** (5 / 3), ['f/2.8 ⅓', 'f/2.8 + 0.3', 'f/3.175']],
    ['stops', -1, ['−1 stop', '× 0.5']],
    ['time', 0.02, ['1/50 s', '0.02 s', '20 ms', '180°']],
    ['colourTemperature', 5600, ['5600 K', '178.6 mired']],
    ['temperature', 20, ['20 °C', '68 °F']],
    [
      'length',
      3.2004,
      ['3.2004 m', '10.5 ft', '126 in', '320.04 cm', '3200.4 mm', '3.5 yd', '10\'6"'],
    ],
  ])('%s %d', (quantity, value, lines) => {
    const all = inEveryUnit(quantity, value, defaultWriting, { fps: 25 });
    expect(all.map(({ text }) => text)).toEqual(lines);
  });
});

describe('as the grid shows it', () => {
  const comma: WritingSettings = { ...defaultWriting, decimal: ',', fNumbers: 'tenths' };
  const imperial: WritingSettings = { ...defaultWriting, illuminance: 'fc', length: 'ft' };

  test.each<[QuantityName, number, string, string]>([
    ['fNumber', 2 ** 1.5, 'f/2.8', ''],
    ['fNumber', 2 ** (5 / 3), 'f/2.8 ⅓', ''],
    ['fNumber', 5.6, 'f/5.6', ''],
    ['fNumber', 2 ** 0.7, 'f/1.4 + 0.4', ''],
    ['time', 0.02, '1/50', 's'],
    ['time', 2, '2', 's'],
    ['frameRate', 24_000 / 1001, '23.976', 'fps'],
    ['frameRate', 25, '25', 'fps'],
    ['stops', 5 / 3, '+1 ⅔', 'stops'],
    ['stops', -1 / 3, '−⅓', 'stop'],
    ['stops', -0.56, '−0.56', 'stop'],
    ['stops', 0, '0', 'stops'],
    ['ratio', 3.2, '3.2', ':1'],
    ['factor', 0.72, '× 0.72', ''],
    ['share', 0.65, '65', '%'],
    ['share', 0.07, '7', '%'],
    ['density', 2 * Math.log10(2), 'ND 0.6', ''],
    ['density', 0.6, '0.6', ''],
    ['density', 10 * Math.log10(2), 'ND 3.0', ''],
    ['greenCorrection', -30, 'CC 30 M', ''],
    ['colourTemperature', 3230, '3230', 'K'],
    ['colourTemperature', 1e6 / 178, '5618', 'K'],
    ['duv', 0.0011, '+0.0011', ''],
    ['money', 1250, '1,250.00', 'EUR'],
    ['illuminance', 1234.5, '1234.5', 'lx'],
    ['illuminance', 123_456.789, '123457', 'lx'],
    ['iso', 800, '800', 'ISO'],
    ['dateTime', 46_350.5875, '2026-11-24 14:06', ''],
    ['truth', 1, 'TRUE', ''],
  ])('%s %d is %s', (quantity, value, number, unit) => {
    expect(writeQuantity(quantity, value, defaultWriting)).toMatchObject({ number, unit });
  });

  test('with a decimal comma', () => {
    expect(writeQuantity('fNumber', 2 ** 1.65, comma).text).toBe('f/2,8 + 0,3');
    expect(writeQuantity('money', 1250, comma).text).toBe('1.250,00 EUR');
  });

  test('in footcandles and feet', () => {
    expect(writeQuantity('illuminance', 250 / 0.3048 ** 2, imperial).text).toBe('250 fc');
    expect(writeQuantity('illuminance', 250, imperial).text).toBe('23.23 fc');
    expect(writeQuantity('length', 3.2004, imperial).text).toBe('10\'6"');
    expect(writeQuantity('length', 3.21, imperial).text).toBe('10.53 ft');
  });

  test('a format sets decimals and unit', () => {
    expect(writeQuantity('illuminance', 2500, defaultWriting, { decimals: 1 }).text).toBe(
      '2500.0 lx',
    );
    expect(writeQuantity('illuminance', 2500, defaultWriting, { unit: 'klx' }).text).toBe(
      '2.5 klx',
    );
  });

  test('any number of any quantity is written, and never throws', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...quantityNames),
        fc.double(),
        settingsOf,
        fc.option(fc.double(), { nil: undefined }),
        (quantity, value, settings, decimals) => {
          const format = decimals === undefined ? { fps: 24 } : { decimals };
          expect(writeQuantity(quantity, value, settings, format).text).not.toBe('');
          expect(writeForPeople(quantity, value, settings)).not.toMatch(/undefined|object/);
          expect(Array.isArray(inEveryUnit(quantity, value, settings, { fps: 24 }))).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
