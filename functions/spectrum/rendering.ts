import { uvOf, type UV } from '../colour/chromaticity.ts';
import type { Tristimulus } from '../colour/observer.ts';
import { tristimulusOf, type Sampled } from './grid.ts';
import { referenceCurve, type ReferenceKind } from './reference.ts';

/** Colour rendering of CIE 13.3. */
export interface Rendering {
  /** Ra, the mean of the first eight. */
  readonly general: number;
  /** R1 to R14. */
  readonly special: readonly number[];
}

/** From this colour temperature on the reference is daylight (CIE 13.3-1995, 5.2). */
const daylightFrom = 5000;

export const kindOfReference = (kelvin: number): ReferenceKind =>
  kelvin < daylightFrom ? 'planck' : 'daylight';

/** The reference is Planckian below 5000 K and a phase of daylight from there, unless it is named. */
export function renderingOf(
  light: Sampled,
  kelvin: number,
  kind: ReferenceKind = kindOfReference(kelvin),
): Rendering {
  const { grid } = light;
  const reference = { grid, values: grid.nanometres.map(referenceCurve(kind, kelvin)) };
  const test = coloursUnder(light);
  const wanted = coloursUnder(reference);
  const adapt = adaptation(test.white, wanted.white);
  const special = test.colours.map((colour, index) => {
    const difference = apart(
      uniform(colour.Y, adapt(colour), wanted.white),
      uniform(wanted.colours[index]!.Y, wanted.colours[index]!, wanted.white),
    );
    return 100 - 4.6 * difference;
  });
  return { general: special.slice(0, 8).reduce((sum, one) => sum + one / 8, 0), special };
}

interface Seen extends UV {
  /** Luminance factor in percent of the light’s own. */
  readonly Y: number;
}

function coloursUnder(light: Sampled): { readonly white: UV; readonly colours: readonly Seen[] } {
  const whole = tristimulusOf(light);
  const { grid, values } = light;
  const colours = grid.colours.map((colour) => {
    const sent = tristimulusOf({ grid, values: values.map((value, at) => value * colour[at]!) });
    return { ...uvOf(sent), Y: (100 * sent.Y) / whole.Y };
  });
  return { white: uvOf(whole), colours };
}

/** Von Kries in the c, d of CIE 13.3, 5.7: a colour under the test light as under the reference. */
function adaptation(from: UV, to: UV): (seen: UV) => UV {
  const [was, is] = [cd(from), cd(to)];
  return (seen) => {
    const own = cd(seen);
    const c = (is.c / was.c) * own.c;
    const d = (is.d / was.d) * own.d;
    const sum = 16.518 + 1.481 * c - d;
    return { u: (10.872 + 0.404 * c - 4 * d) / sum, v: 5.52 / sum };
  };
}

const cd = ({ u, v }: UV) => ({
  c: (4 - u - 10 * v) / v,
  d: (1.708 * v + 0.404 - 1.481 * u) / v,
});

/** CIE 1964 W*, U*, V*. */
function uniform(Y: number, { u, v }: UV, white: UV): Tristimulus {
  const W = 25 * Math.cbrt(Y) - 17;
  return { X: 13 * W * (u - white.u), Y: W, Z: 13 * W * (v - white.v) };
}

const apart = (one: Tristimulus, other: Tristimulus) =>
  Math.hypot(one.X - other.X, one.Y - other.Y, one.Z - other.Z);
