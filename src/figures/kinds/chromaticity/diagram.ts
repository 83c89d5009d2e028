import type { XY } from '../../../../functions/colour/chromaticity.ts';
import { daylightXY } from '../../../../functions/colour/daylight.ts';
import { observer } from '../../../../functions/colour/observer.ts';
import { planckXY } from '../../../../functions/colour/planckXY.ts';
import { primeFromXY } from '../../../../functions/colour/prime.ts';

export type DiagramName = 'uv' | 'xy';
export type Spot = readonly [across: number, up: number];

/** A chromaticity diagram: how x, y lies in it, and as far as it goes. */
export interface Diagram {
  at(colour: XY): Spot;
  readonly most: Spot;
  /** A look any closer would be one at nothing. */
  readonly closest: number;
}

export const diagrams: Readonly<Record<DiagramName, Diagram>> = {
  uv: {
    at: (colour) => {
      const { u, v } = primeFromXY(colour);
      return [u, v];
    },
    most: [0.64, 0.6],
    closest: 0.06,
  },
  xy: { at: ({ x, y }) => [x, y], most: [0.8, 0.86], closest: 0.1 },
};

/** Light of one wavelength, every 2 nm from violet to red, and back along the purples. */
export const spectralLocus: readonly XY[] = [...ofOneWavelength(), first()];

function* ofOneWavelength(): Generator<XY> {
  for (let nanometres = 390; nanometres <= 700; nanometres += 2) yield wavelengthXY(nanometres);
}

function first(): XY {
  return wavelengthXY(390);
}

export function wavelengthXY(nanometres: number): XY {
  const index = nanometres - 360;
  const [x = 0, y = 0, z = 0] = [observer.x[index], observer.y[index], observer.z[index]];
  return { x: x / (x + y + z), y: y / (x + y + z) };
}

const steps = (from: number, to: number, by: number): readonly number[] =>
  Array.from({ length: Math.floor((to - from) / by) + 1 }, (_, index) => from + index * by);

/** In even steps of mired, as the locus bends: from 1000 K to 100,000 K. */
let planckian: readonly XY[] | undefined;
export const planckianLocus = (): readonly XY[] =>
  (planckian ??= steps(10, 1000, 10).map((mired) => planckXY(1e6 / mired)));

export const daylightLocus: readonly XY[] = steps(40, 250, 5).map((mired) =>
  daylightXY(1e6 / mired),
);

/** Colour temperatures whose lines across the locus are drawn, those more wanted first. */
export const isotherms = [
  3200, 5600, 2000, 10_000, 4300, 2700, 7000, 2400, 4000, 5000, 3600, 6300, 8500, 1600, 20_000,
] as const;

/** The line across the locus on which a colour temperature is the same, from magenta to green. */
export const isotherm = (kelvin: number, reach: number): readonly XY[] =>
  [-reach, 0, reach].map((duv) => planckXY(kelvin, duv));

interface Around {
  readonly kelvin: number;
  readonly duv: number;
}

/** What agrees with a white: as far off in mired and in Duv as its tolerances. */
export function toleranceBox(
  { kelvin, duv }: Around,
  tolerance: { readonly mired: number; readonly duv: number },
): readonly XY[] {
  const corner = (across: number, up: number): XY =>
    planckXY(1e6 / Math.max(10, 1e6 / kelvin + across), duv + up);
  const along = (up: number) =>
    steps(-1, 1, 0.25).map((share) => corner(share * tolerance.mired, up));
  return [...along(-tolerance.duv), ...along(tolerance.duv).toReversed()];
}
