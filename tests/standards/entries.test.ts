import { describe, expect, test } from 'vitest';
import { defaultWriting, readAs, readEntry, units } from '../../functions/quantities/index.ts';
import { areaOfGauge } from '../../functions/quantities/gauge.ts';
import { accepted, refused } from './entries/index.ts';
import type { Accepted } from './entries/index.ts';

function read(entry: Accepted): ReturnType<typeof readEntry> {
  const context = entry.fps === undefined ? {} : { fps: entry.fps };
  return readEntry(entry.typed, entry.cell, { ...defaultWriting, ...entry.writing }, context);
}

describe('entries as people write them', () => {
  test('there are at least 300 of them, no two alike', () => {
    const keys = accepted.map((entry) => JSON.stringify({ ...entry, means: undefined }));
    expect(new Set(keys).size).toBeGreaterThanOrEqual(300);
  });

  test.each(accepted.map((entry) => [entry.cell ?? 'plain', entry.typed, entry] as const))(
    'in a cell of %s: %s',
    (_cell, _typed, entry) => {
      const got = read(entry);
      if ('reason' in got) throw new Error(got.reason);
      expect(got.quantity).toBe(entry.cell ?? entry.becomes);
      const { means } = entry;
      if (typeof means === 'string') {
        expect(got.content).toEqual({ kind: 'text', text: means });
      } else if (typeof means === 'boolean') {
        expect(got.content).toEqual({ kind: 'truth', value: means });
      } else {
        expect(got.content.kind).toBe('number');
        const value = got.content.kind === 'number' ? got.content.value : Number.NaN;
        // Printed constants have sixteen digits at most.
        expect(Math.abs(value - means)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(means)));
      }
    },
  );
});

describe('entries that are refused with a sentence', () => {
  test('there are at least 100 of them, no two alike', () => {
    expect(new Set(refused.map((entry) => JSON.stringify(entry))).size).toBeGreaterThanOrEqual(100);
  });

  test.each(refused.map((entry) => [entry.cell, entry.typed, entry] as const))(
    'in a cell of %s: %s',
    (cell, typed, { says, writing }) => {
      const got = readEntry(typed, cell, { ...defaultWriting, ...writing });
      if (!('reason' in got)) throw new Error(`read as ${JSON.stringify(got.content)}`);
      expect(got.reason).toContain(says);
    },
  );
});

describe('conversion factors against published values', () => {
  // Quantity, text, value, how far the printed value may be rounded, source. The printed figures are
  // quoted from memory of those tables; footcandle and footlambert also follow from the foot.
  const published = [
    ['length', '1 ft', 0.3048, 0, 'international foot, agreement of 1959'],
    ['length', '1 in', 0.0254, 1e-17, 'international inch, agreement of 1959'],
    ['illuminance', '1 fc', 10.76391, 5e-6, 'NIST SP 811, table B.8: footcandle'],
    ['luminance', '1 fL', 3.426259, 5e-7, 'NIST SP 811, table B.8: footlambert'],
    ['weight', '1 lb', 0.45359237, 0, 'international pound, agreement of 1959'],
    ['temperature', '32 °F', 0, 0, 'NIST SP 811, B.8: t/°C = (t/°F − 32)/1.8'],
    ['temperature', '212 °F', 100, 1e-12, 'NIST SP 811, B.8'],
    ['conductorArea', '12 AWG', 3.31, 0.005, 'ASTM B258, 12 AWG'],
    ['conductorArea', '14 AWG', 2.08, 0.005, 'ASTM B258, 14 AWG'],
    ['conductorArea', '10 AWG', 5.26, 0.005, 'ASTM B258, 10 AWG'],
    ['conductorArea', '4/0 AWG', 107.2, 0.05, 'ASTM B258, 4/0 AWG'],
    ['conductorArea', '1/0 AWG', 53.5, 0.05, 'ASTM B258, 1/0 AWG'],
  ] as const;

  test.each(published)('%s: %s is %d (± %d; %s)', (quantity, text, value, within) => {
    const reading = readAs(quantity, text, defaultWriting);
    expect(reading.ok && Math.abs(reading.value - value)).toBeLessThanOrEqual(within);
  });

  test('three gauges thinner is half the area (ASTM B258, to 0.3 %)', () => {
    expect(areaOfGauge(15) / areaOfGauge(12)).toBeCloseTo(0.5, 2);
  });

  test('every unit that is spelled in a table is read in that quantity', () => {
    for (const [name, { units: all }] of Object.entries(units)) {
      for (const unit of all) {
        for (const spelling of [...unit.spellings, ...(unit.inside ?? [])]) {
          const quantity = name as keyof typeof units;
          const reading = readAs(quantity, `212 ${spelling}`, defaultWriting, { fps: 24 });
          const expected = (212 - (unit.zero ?? 0)) * unit.factor;
          expect([spelling, reading.ok && reading.value]).toEqual([spelling, expected]);
        }
      }
    }
  });
});
