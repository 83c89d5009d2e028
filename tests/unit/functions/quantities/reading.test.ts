import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  defaultWriting,
  quantityNames,
  readAny,
  readAs,
  readEntry,
  readLevel,
} from '../../../../functions/quantities/index.ts';
import type { WritingSettings } from '../../../../functions/quantities/index.ts';

const comma: WritingSettings = { ...defaultWriting, decimal: ',' };
const imperial: WritingSettings = {
  ...defaultWriting,
  illuminance: 'fc',
  luminance: 'fL',
  length: 'ft',
  shutter: 'angle',
};

function value(reading: ReturnType<typeof readAs>): number | string {
  return reading.ok ? reading.value : reading.reason;
}

describe('where comma and point clash the setting decides', () => {
  test.each([
    ['1,250', 1250, 1.25],
    ['1.250', 1.25, 1250],
    ['1,250.00', 1250, 1250],
    ['1.250,00', 1250, 1250],
    ['41,5', 41.5, 41.5],
    ['41.5', 41.5, 41.5],
    ['0,125', 0.125, 0.125],
    ['0.125', 0.125, 0.125],
    ['1,250,000', 1_250_000, 1_250_000],
    ['1 250,5', 1250.5, 1250.5],
  ])('%s is %d with a point and %d with a comma', (text, withPoint, withComma) => {
    expect(value(readAs('illuminance', text, defaultWriting))).toBe(withPoint);
    expect(value(readAs('illuminance', text, comma))).toBe(withComma);
  });

  test('an f-number, a density or a share has no thousands, so there is no clash', () => {
    expect(value(readAs('stops', '1,250', defaultWriting))).toBe(1.25);
    expect(value(readAs('density', '0.602', comma))).toBe(0.602);
    expect(value(readAs('ev', '11.333', comma))).toBe(11.333);
  });
});

describe('a bare number is in the unit of the workbook', () => {
  test('footcandles, footlamberts and feet where the workbook says so', () => {
    expect(value(readAs('illuminance', '250', imperial))).toBe(250 / 0.3048 ** 2);
    expect(value(readAs('luminance', '23', imperial))).toBe(23 / (Math.PI * 0.3048 ** 2));
    expect(value(readAs('length', '10', imperial))).toBe(3.048);
  });

  test('a written unit beats the workbook', () => {
    expect(value(readAs('illuminance', '250 lx', imperial))).toBe(250);
    expect(value(readAs('length', '2 m', imperial))).toBe(2);
  });

  test('a bare shutter number is an angle where the workbook says so, a fraction stays a time', () => {
    expect(value(readAs('time', '180', imperial, { fps: 25 }))).toBe(0.02);
    expect(value(readAs('time', '1/50', imperial, { fps: 25 }))).toBe(0.02);
    expect(value(readAs('time', '180', imperial))).toMatch(/without a frame rate/);
  });
});

describe('shutter angle and time', () => {
  test('an angle in a time cell becomes a time with the frame rate beside it', () => {
    expect(value(readAs('time', '172.8°', defaultWriting, { fps: 24 }))).toBeCloseTo(1 / 50, 15);
  });

  test('a time in an angle cell becomes an angle with the frame rate beside it', () => {
    expect(value(readAs('angle', '1/50 s', defaultWriting, { fps: 25 }))).toBe(180);
  });

  test('an impossible angle is refused', () => {
    expect(value(readAs('time', '400°', defaultWriting, { fps: 24 }))).toMatch(/at most 360°/);
  });
});

describe('a unit of another kind is named', () => {
  test('footcandles where a distance is wanted', () => {
    expect(readAs('length', '250 fc', defaultWriting)).toEqual({
      ok: false,
      reason: 'Expected a distance such as 3.2 m or 10\'6"; 250 fc is an illuminance.',
      wrongKind: 'illuminance',
    });
  });

  test('the examples use the decimal sign of the workbook', () => {
    expect(value(readAs('length', 'near', comma))).toBe(
      'Expected a distance such as 3,2 m or 10\'6"; “near” is not one.',
    );
  });
});

describe('a level is any linear light', () => {
  test.each([
    ['250 fc', 'illuminance'],
    ['80 nits', 'luminance'],
    ['12 kcd', 'intensity'],
    ['4 klm', 'flux'],
    ['250', 'number'],
    ['-3,5', 'number'],
  ])('%s is %s', (text, quantity) => {
    expect(readLevel(text, defaultWriting)).toMatchObject({ ok: true, quantity });
  });

  test('a distance is none', () => {
    expect(readLevel('3 m', defaultWriting)).toMatchObject({ ok: false, wrongKind: 'length' });
  });
});

describe('a plain cell', () => {
  test.each(['1/50', '1/3', '4:1', '2 d', '8x', '30M', '14:06', 'F4', 'ND 8'])(
    '%s stays text, with a hint',
    (text) => {
      const entry = readEntry(text, undefined, defaultWriting);
      expect(entry).toMatchObject({ content: { kind: 'text', text } });
      expect('hint' in entry && entry.hint).toMatch(/Kept as text|density or factor/);
    },
  );

  test('an apostrophe in front makes text of anything', () => {
    expect(readEntry("'250 fc", undefined, defaultWriting)).toEqual({
      content: { kind: 'text', text: '250 fc' },
    });
    expect(readEntry("'1/50", 'time', defaultWriting)).toEqual({
      content: { kind: 'text', text: '1/50' },
    });
  });

  test('a text keeps its spaces', () => {
    expect(readEntry('  Rope bench ', undefined, defaultWriting)).toEqual({
      content: { kind: 'text', text: '  Rope bench ' },
    });
  });

  test('a bare 50 in a time cell is 50 seconds, and says so', () => {
    expect(readEntry('50', 'time', defaultWriting)).toEqual({
      content: { kind: 'number', value: 50 },
      quantity: 'time',
      hint: 'Taken as 50 seconds. A fraction is written 1/50.',
    });
  });
});

describe('any text at all', () => {
  const pieces = fc.constantFrom(
    ...['1', '0', '.', ',', "'", '"', '/', ':', '-', '−', '+', ' ', 'f/', 'T', 'ND', 'CC', 'e9'],
    ...[
      '½',
      '⁵',
      '°',
      '%',
      '×',
      'x',
      'fc',
      'lx',
      'm',
      'ft',
      'K',
      'EV',
      'ISO',
      'AWG',
      's',
      'h',
      '€',
    ],
    ...[
      'T00:00',
      '2026-11-24',
      'stop',
      'under',
      'green',
      'none',
      '\u00a0',
      '\ud800',
      '１',
      '１／５０',
    ],
  );
  const texts = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
  );

  test('is read or refused with a sentence, and never throws', () => {
    fc.assert(
      fc.property(
        texts,
        fc.constantFrom(...quantityNames),
        fc.constantFrom(defaultWriting, comma, imperial),
        (text, quantity, settings) => {
          for (const reading of [
            readAs(quantity, text, settings),
            readAs(quantity, text, settings, { fps: 24 }),
            readAny(text, settings),
            readLevel(text, settings),
          ]) {
            if (reading.ok) expect(Number.isFinite(reading.value)).toBe(true);
            else expect(reading.reason).toMatch(/^\S.*[.”?]$/su);
          }
          const entry = readEntry(text, quantity, settings);
          const plain = readEntry(text, undefined, settings);
          expect('content' in plain).toBe(true);
          if ('reason' in entry) expect(entry.reason.length).toBeGreaterThan(10);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('what a plain cell gets from a written unit, a cell of that quantity gets too', () => {
    fc.assert(
      fc.property(texts, fc.constantFrom(defaultWriting, comma), (text, settings) => {
        const any = readAny(text, settings);
        if (!any.ok) return;
        const typed = readAs(any.quantity, text, settings);
        expect(typed.ok && typed.value).toBeCloseTo(any.value, 10);
      }),
      { numRuns: 3000 },
    );
  });

  test('ten million characters are refused without being read', () => {
    for (const piece of ['1', ' ', '1 ', 'f/', '½', "1'", '-', '1/']) {
      const huge = piece.repeat(10_000_000 / piece.length);
      const reading = readAs('length', huge, defaultWriting);
      expect(reading.ok).toBe(false);
      expect(!reading.ok && reading.reason.length).toBeLessThan(200);
      expect(readEntry(huge, undefined, defaultWriting)).toMatchObject({
        content: { kind: 'text' },
      });
    }
  });
});
