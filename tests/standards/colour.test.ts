import { describe, expect, it } from 'vitest';
import CCT from '../../functions/colour/CCT.ts';
import COLOURDIFFERENCE from '../../functions/colour/COLOURDIFFERENCE.ts';
import DAYLIGHTX from '../../functions/colour/DAYLIGHTX.ts';
import DAYLIGHTY from '../../functions/colour/DAYLIGHTY.ts';
import DUV from '../../functions/colour/DUV.ts';
import GREENCC from '../../functions/colour/GREENCC.ts';
import KELVIN from '../../functions/colour/KELVIN.ts';
import PLANCKX from '../../functions/colour/PLANCKX.ts';
import PLANCKY from '../../functions/colour/PLANCKY.ts';
import UPRIME from '../../functions/colour/UPRIME.ts';
import VPRIME from '../../functions/colour/VPRIME.ts';
import { daylightSpectrum } from '../../functions/colour/daylight.ts';
import { checkCases, number, refusal } from '../support/cases.ts';
import { spectrumCases } from './spectra/expressions.ts';
import cases from './cases/colour.json' with { type: 'json' };

type Pair = readonly [number, number];

const planck = (kelvin: number): Pair => [number(PLANCKX, kelvin), number(PLANCKY, kelvin)];
const daylight = (kelvin: number): Pair => [number(DAYLIGHTX, kelvin), number(DAYLIGHTY, kelvin)];
const cctAndDuv = (x: number, y: number): Pair => [number(CCT, x, y), number(DUV, x, y)];
/** CIE 1960 u, v: u′ and two thirds of v′. */
const uv = ([x, y]: Pair): Pair => [number(UPRIME, x, y), (2 / 3) * number(VPRIME, x, y)];
const xyuv = (kelvin: number) => [...planck(kelvin), ...uv(planck(kelvin))];

const because = (reason: string, ids: readonly string[]) =>
  Object.fromEntries(ids.map((id) => [id, reason]));

checkCases(
  'colour',
  cases,
  {
    'colour-001-planck-1000': () => xyuv(1000),
    'colour-005-planck-2856': () => xyuv(2856),
    'colour-011-planck-6500': () => xyuv(6500),
    'colour-012-planck-8000': () => xyuv(8000),
    'colour-018-planck-uv-robertson-100': () => uv(planck(number(KELVIN, 100))),
    'colour-021-planck-uv-robertson-400': () => uv(planck(number(KELVIN, 400))),
    'colour-026-daylight-5500': () => daylight(5500),
    'colour-027-daylight-6000': () => daylight(6000),
    'colour-028-daylight-7000': () => daylight(7000),
    'colour-030-daylight-10000': () => daylight(10000),
    'colour-031-daylight-25000': () => daylight(25000),
    'colour-039-cct-2700-0.006': () => cctAndDuv(0.4705266948815671, 0.4297391230245007),
    'colour-040-cct-3000--0.015': () => cctAndDuv(0.4165216946786104, 0.3619447416906375),
    'colour-041-cct-3200-0.02': () => cctAndDuv(0.4517548309455739, 0.46367997542375317),
    'colour-042-cct-3200--0.003': () => cctAndDuv(0.4195579956728255, 0.39027867327060606),
    'colour-044-cct-4300--0.02': () => cctAndDuv(0.3585304111712861, 0.32388266231794016),
    'colour-045-cct-5000-0.008': () => cctAndDuv(0.3466811074633125, 0.36924668067572874),
    'colour-046-cct-5600--0.006': () => cctAndDuv(0.33028793313213123, 0.32776646806679854),
    'colour-047-cct-5600-0.015': () => cctAndDuv(0.3299618991333669, 0.36963644338460216),
    'colour-048-cct-6500--0.018': () => cctAndDuv(0.3174960816237839, 0.2951145083305466),
    'colour-050-cct-10000-0.015': () => cctAndDuv(0.2712011704887056, 0.30654348965676426),
    'colour-051-cct-10000--0.01': () => cctAndDuv(0.2865271540152779, 0.2768857876894551),
    'colour-058-cct-ansi-4500': () => cctAndDuv(0.3613, 0.367),
    'colour-061-cct-ansi-6500': () => cctAndDuv(0.3123, 0.3283),
    'colour-062-cct-E': () => cctAndDuv(0.3333333333333333, 0.3333333333333333),
    'colour-063-cct-D50': () => cctAndDuv(0.34567, 0.3585),
    'colour-064-cct-D65': () => cctAndDuv(0.31271, 0.32902),
    'colour-065-cct-A': () => cctAndDuv(0.44758, 0.40745),
    ...spectrumCases,
  },
  {
    ...because('Robertson’s 31 lines are another method; CCT is Ohno’s, on the locus itself.', [
      'colour-067-cct-robertson-A',
      'colour-069-cct-robertson-D65',
      'colour-070-cct-robertson-E',
      'colour-071-cct-robertson-F2',
      'colour-073-cct-robertson-3200K-green',
    ]),
    ...because(
      'The constant c2 is no argument, and 2e-7 is finer than the observer every 5 nm allows: see below.',
      ['colour-017-planck-3200-codata'],
    ),
  },
);

describe('illuminants (CIE 15:2004, printed chromaticities)', () => {
  it.each([
    ['D50', 5003, 0.3457, 0.3585],
    ['D55', 5503, 0.3324, 0.3474],
    ['D65', 6504, 0.3127, 0.329],
    ['D75', 7504, 0.299, 0.3149],
  ])('%s is daylight of %d K', (_, kelvin, x, y) => {
    // The polynomials of the daylight locus meet the printed chromaticities to 2e-4.
    expect(Math.abs(number(DAYLIGHTX, kelvin) - x)).toBeLessThan(2e-4);
    expect(Math.abs(number(DAYLIGHTY, kelvin) - y)).toBeLessThan(2e-4);
    expect(Math.abs(number(CCT, x, y) - kelvin)).toBeLessThan(4);
    expect(Math.abs(number(DUV, x, y) - 0.0032)).toBeLessThan(2e-4);
  });

  it('the spectrum of D65 is the one printed (ISO/CIE 11664-2, table 1)', () => {
    const printed = [
      [300, 0.0341],
      [400, 82.7549],
      [450, 117.008],
      [500, 109.354],
      [560, 100],
      [600, 90.0062],
      [700, 71.6091],
      [780, 63.3828],
    ] as const;
    const spectrum = new Map(daylightSpectrum((6500 * 1.4388) / 1.438));
    for (const [nm, power] of printed) {
      expect(Math.abs((spectrum.get(nm) ?? Number.NaN) - power)).toBeLessThan(0.01);
    }
  });

  it('illuminant A is 2856 K and on the locus', () => {
    expect(Math.round(number(CCT, 0.447_58, 0.407_45))).toBe(2856);
    expect(number(DUV, 0.447_58, 0.407_45)).toBeCloseTo(0, 5);
  });

  it('u′, v′ of D65 are 0.1978, 0.4683', () => {
    expect(number(UPRIME, 0.312_72, 0.329_03)).toBeCloseTo(0.1978, 4);
    expect(number(VPRIME, 0.312_72, 0.329_03)).toBeCloseTo(0.4683, 4);
  });
});

describe('the constant c2', () => {
  it('of CODATA moves 3200 K as a temperature of the ratio would, to 3e-7 of a sum at 1 nm', () => {
    // Only c2/T counts. Expected: colour-017 of the reference cases.
    const [x, y] = planck((3200 * 1.4388e-2) / 1.438_776_877e-2);
    expect(Math.abs(x - 0.423_359_585_2)).toBeLessThan(3e-7);
    expect(Math.abs(y - 0.398_951_626)).toBeLessThan(3e-7);
  });
});

describe('nominal white points (ANSI C78.377, centre of each category; from memory)', () => {
  it.each([
    [2700, 2725, 0, 0.4578, 0.4101],
    [3000, 3045, 0.0001, 0.4339, 0.4033],
    [3500, 3465, 0.0005, 0.4078, 0.393],
    [4000, 3985, 0.001, 0.3818, 0.3797],
    [5000, 5029, 0.002, 0.3446, 0.3551],
    [6500, 6532, 0.0031, 0.3123, 0.3283],
  ])('%d K is %d K and Duv %d', (_, kelvin, duv, x, y) => {
    // The printed x and y have four digits: 6 K at the cold end.
    expect(Math.abs(number(CCT, x, y) - kelvin)).toBeLessThan(6);
    expect(Math.abs(number(DUV, x, y) - duv)).toBeLessThan(2e-4);
  });
});

describe('refused with a sentence', () => {
  it('a colour far from the locus has no colour temperature', () => {
    expect(refusal(CCT, 0.3, 0.6)).toContain('too green for a colour temperature');
    expect(refusal(DUV, 0.4, 0.2)).toContain('too magenta for a colour temperature');
  });

  it('a blue beyond endless heat has none', () => {
    expect(refusal(CCT, 0.23, 0.22)).toContain('no colour temperature from 1000 to 100000 K');
  });

  it('daylight ends at 4000 K', () => {
    expect(refusal(DAYLIGHTX, 3200)).toContain('kelvin must be from 4000 to 25000');
  });
});

describe('green and magenta (common practice)', () => {
  it('a quarter minus green, CC 7, takes Duv +0.0068 away from tungsten', () => {
    expect(number(GREENCC, 3200, 0.0068)).toBeCloseTo(-7, 0);
  });

  it('a pink lamp asks for plus green', () => {
    expect(number(GREENCC, 5600, -0.006)).toBeGreaterThan(0);
  });

  it('two lamps a hundredth apart in u′v′ do not match', () => {
    const [x, y] = planck(3200);
    const greener: Pair = [number(PLANCKX, 3200, 0.01), number(PLANCKY, 3200, 0.01)];
    expect(number(COLOURDIFFERENCE, x, y, ...greener)).toBeGreaterThan(0.01);
  });
});
