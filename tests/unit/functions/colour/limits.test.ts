import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import type { AnyDefinition } from '../../../../functions/define.ts';
import {
  CCT,
  DAYLIGHTX,
  DAYLIGHTY,
  DUV,
  KELVINTHROUGH,
  PLANCKX,
  PLANCKY,
} from '../../../../functions/index.ts';
import { daylightSpectrum } from '../../../../functions/colour/daylight.ts';
import { nearestOnLocus } from '../../../../functions/colour/nearestOnLocus.ts';
import { usual } from '../../../../functions/usual.ts';
import type { Argument } from '../../../../functions/values.ts';

const said = (definition: AnyDefinition, ...args: readonly Argument[]) => {
  const result = call(definition, args, usual);
  return typeof result === 'object' ? result.message : result;
};
const number = (definition: AnyDefinition, ...args: readonly Argument[]) =>
  Number(said(definition, ...args));

/** CIE 1960 u, v of a black body. */
function locus(kelvin: number) {
  const [x, y] = [number(PLANCKX, kelvin), number(PLANCKY, kelvin)];
  const sum = -2 * x + 12 * y + 3;
  return { u: (4 * x) / sum, v: (6 * y) / sum };
}

describe('colour temperature', () => {
  it('is found from 1000 K to 100,000 K and not beyond', () => {
    expect(nearestOnLocus(locus(998))).toBeUndefined();
    expect(nearestOnLocus(locus(1000))?.kelvin).toBeCloseTo(1000, 1);
    const hottest = nearestOnLocus(locus(100_000))?.kelvin ?? 0;
    expect(Math.abs(hottest - 100_000)).toBeLessThan(100);
    expect(nearestOnLocus(locus(100_500))).toBeUndefined();
  });

  it('is refused beyond Duv 0.05, by the hue that is too much (CIE 15, from memory)', () => {
    const at = (duv: number) => [number(PLANCKX, 4000, duv), number(PLANCKY, 4000, duv)] as const;
    expect(number(DUV, ...at(0.0499))).toBeCloseTo(0.0499, 5);
    expect(number(DUV, ...at(-0.0499))).toBeCloseTo(-0.0499, 5);
    expect(said(CCT, 0.3, 0.6)).toMatch(
      /^CCT: x 0\.3, y 0\.6 is too green for a colour temperature: Duv 0\.\d{3}, at most 0\.05 either way\.$/,
    );
    expect(said(DUV, 0.35, 0.2)).toMatch(
      /^DUV: x 0\.35, y 0\.2 is too magenta for a colour temperature: Duv -0\.\d{3}, at most 0\.05 either way\.$/,
    );
  });

  it('is refused where nothing that glows looks like it', () => {
    expect(said(CCT, 0.7, 0.29)).toBe(
      'CCT: x 0.7, y 0.29 has no colour temperature from 1000 to 100000 K.',
    );
    expect(said(CCT, 0.16, 0.02)).toBe(
      'CCT: x 0.16, y 0.02 has no colour temperature from 1000 to 100000 K.',
    );
  });

  it('through a filter is refused where it would need more than all mired', () => {
    expect(number(KELVINTHROUGH, 5000, 200)).toBe(2500);
    expect(said(KELVINTHROUGH, 10_000, -100)).toMatch(/^KELVINTHROUGH: /);
    expect(said(KELVINTHROUGH, 10_000, -99)).toBeCloseTo(1e6, 6);
  });
});

describe('phases of daylight', () => {
  it('up to 7000 K go by the equation for warm ones (CIE 15, 3.1; worked by hand)', () => {
    expect(number(DAYLIGHTX, 7000)).toBeCloseTo(0.305_357_431_486_880_5, 12);
    expect(number(DAYLIGHTY, 7000)).toBeCloseTo(0.321_646_345_474_552_2, 12);
  });

  it('have power by wavelength from 300 to 830 nm, 100 at 560 nm', () => {
    const spectrum = daylightSpectrum(6504);
    expect(spectrum.find(([nm]) => nm === 560)?.[1]).toBeCloseTo(100, 9);
    // D65 as ISO/CIE 11664-2 prints it: 460 nm 117.812, 600 nm 90.0062 (from memory).
    expect(spectrum.find(([nm]) => nm === 460)?.[1]).toBeCloseTo(117.812, 1);
    expect(spectrum.find(([nm]) => nm === 600)?.[1]).toBeCloseTo(90.0062, 1);
  });
});
