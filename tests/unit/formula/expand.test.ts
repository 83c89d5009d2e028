import { describe, expect, it } from 'vitest';
import { byName } from '../../../functions/index.ts';
import { usual } from '../../../functions/usual.ts';
import { expand } from '../../../src/formula/expand.ts';

function plain(name: string, ...args: readonly (string | undefined)[]): string {
  const definition = byName.get(name);
  if (!definition) throw new Error(`${name} is no function.`);
  const expansion = expand(definition, args, usual);
  return expansion.ok ? expansion.text : expansion.reason;
}

describe('a plain formula', () => {
  it('has the arguments in the places of the parameters', () => {
    expect(plain('STOPS', 'B2', 'B$3')).toBe('LN(B2 / B$3) / LN(2)');
    expect(plain('LUX', "'Ice house'!$B$2")).toBe("'Ice house'!$B$2 / 0.3048^2");
    expect(plain('LUX', 'Canvas_Left')).toBe('Canvas_Left / 0.3048^2');
  });

  it('puts what is worked out in brackets, so that it stays one thing', () => {
    expect(plain('STOPS', 'B2+B3', '-C1')).toBe('LN((B2+B3) / (-C1)) / LN(2)');
    expect(plain('STOPFACTOR', '-2')).toBe('2^(-2)');
    expect(plain('STOPFACTOR', '1/3')).toBe('2^(1/3)');
  });

  it('has numbers where texts had units', () => {
    expect(plain('INVERSESQUARE', '"10 lx"', '"10 ft"', '2')).toBe('10 * (3.048 / 2)^2');
    expect(plain('INCIDENTF', 'A1', '"ISO 800"', '"1/50 s"', '"flat"')).toBe(
      'SQRT(A1 * 800 * 0.02 / 250)',
    );
  });

  it('has the exact f-number where a mark was written, with a unit or without', () => {
    const exact = `2 * LN(B2 / ${String(2 ** 2.5)}) / LN(2)`;
    expect(plain('FSTOPS', 'B2', '5.6')).toBe(exact);
    expect(plain('FSTOPS', 'B2', '"f/5.6"')).toBe(exact);
  });

  it('has the default, or the book’s setting, where an argument was left out', () => {
    expect(plain('EVLUX', 'B2')).toBe('2^B2 * 250 / 100');
    expect(plain('INCIDENTF', 'A1', '100', '1')).toBe('SQRT(A1 * 100 * 1 / 340)');
    expect(plain('INCIDENTF', 'A1', '100', '1', undefined)).toBe('SQRT(A1 * 100 * 1 / 340)');
  });

  it('knows whether an argument was given that nothing stands for', () => {
    expect(plain('FLICKERANGLE', '24', '50')).toContain('IF(0 = 1, 0, ');
    expect(plain('FLICKERANGLE', '24', '50', 'C1')).toContain('IF(1 = 1, C1, ');
  });

  it('keeps ranges, and lists what was given one after the other', () => {
    expect(plain('FCOMBINE', 'B2:B9')).toBe('SQRT(SUMSQ(B2:B9))');
    expect(plain('FCOMBINE', 'B2:B9', '4', 'C1*2')).toBe('SQRT(SUMSQ(B2:B9, 4, C1*2))');
  });
});

describe('no plain formula, and a sentence why,', () => {
  it('where the function has none', () => {
    expect(plain('CCT', 'A1', 'B1')).toMatch(/^The nearest point .*\.$/);
  });

  it('where an argument cannot be, or is missing, or is one too many', () => {
    expect(plain('STOPS', '-3', 'B1')).toBe('STOPS: level must be more than zero, not -3.');
    expect(plain('LUX', '"3 m"')).toMatch(/^LUX: footcandles/);
    expect(plain('STOPS', 'A1')).toBe('STOPS needs reference.');
    expect(plain('STOPS', 'A1', 'B1', 'C1')).toBe('STOPS takes at most 2 arguments.');
  });
});
