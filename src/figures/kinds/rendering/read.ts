import type { Tristimulus } from '../../../../functions/colour/observer.ts';
import { tristimulusOf, type Sampled } from '../../../../functions/spectrum/grid.ts';
import { referenceCurve } from '../../../../functions/spectrum/reference.ts';
import { referenceOf, reportOf } from '../../../../functions/spectrum/report.ts';
import { isError } from '../../../../functions/values.ts';
import type { Given, Undrawn } from '../../figure.ts';
import { screenColour } from '../../kit/screen.ts';
import { spectrumIn } from '../spectrum/given.ts';
import { words } from '../../../words/words.ts';

/** A test colour: its index, and what it looks like under the reference and under the light. */
export interface Tested {
  readonly index: number;
  readonly wanted: string;
  readonly under: string;
}

export interface RenderingRead {
  readonly name: string;
  readonly filterName: string | undefined;
  /** Ra. */
  readonly general: number;
  /** R1 to R14, in order. */
  readonly tested: readonly Tested[];
  readonly reference: { readonly kind: 'planck' | 'daylight'; readonly kelvin: number };
}

export function readRendering(given: Given): RenderingRead | Undrawn {
  const found = spectrumIn(given);
  if ('reason' in found) return found;
  const { name, filterName, light } = found;
  if (!light) return { reason: words.renderingFigure.filterAlone(name) };
  const report = reportOf(name, light);
  if (isError(report.rendering)) return { reason: report.rendering.message };
  const reference = referenceOf(report)!;
  const { grid } = light.sampled;
  const curve = referenceCurve(reference.kind, reference.kelvin);
  const wanted = coloursUnder({ grid, values: grid.nanometres.map(curve) });
  const under = coloursUnder(light.sampled);
  const { general, special } = report.rendering;
  const tested = special.map((index, at) => ({ index, wanted: wanted[at]!, under: under[at]! }));
  return { name, filterName, general, tested, reference };
}

/** Each test colour as a screen shows it to an eye that is used to the light. */
function coloursUnder({ grid, values }: Sampled): readonly string[] {
  const white = ofOne(tristimulusOf({ grid, values }));
  return grid.colours.map((colour) => {
    const sent = tristimulusOf({ grid, values: values.map((value, at) => value * colour[at]!) });
    return screenColour(white(sent), white(tristimulusOf({ grid, values })));
  });
}

/** On a scale on which the light’s white is 1. */
const ofOne =
  ({ Y: whole }: Tristimulus) =>
  ({ X, Y, Z }: Tristimulus): Tristimulus => ({ X: X / whole, Y: Y / whole, Z: Z / whole });
