import { temperatureOf } from '../colour/temperatureOf.ts';
import { isError, refuse, type FunctionError } from '../values.ts';
import type { Light } from './light.ts';
import { referenceCurve } from './reference.ts';
import { renderingOf, type Rendering } from './rendering.ts';
import { similarity } from './similarity.ts';
import { curveOf } from './spectrum.ts';
import { consistency } from './television.ts';

/** Phases of daylight are stated up to here (CIE 15). */
export const hottestDaylight = 25_000;
/** From here on the reference of the similarity index is daylight. */
export const similarDaylightFrom = 4000;

/** Kelvin for which there is a reference, or the sentence that there is none. */
function kelvinFor(name: string, { xy }: Light): number | FunctionError {
  const nearest = temperatureOf(name, xy.x, xy.y);
  if (isError(nearest)) return nearest;
  if (nearest.kelvin <= hottestDaylight) return nearest.kelvin;
  return refuse(
    `${name}: at ${Math.round(nearest.kelvin)} K there is no reference; daylight is stated up to ${hottestDaylight} K.`,
  );
}

const renderings = new WeakMap<Light, Rendering | FunctionError>();

export function renderingFrom(name: string, light: Light): Rendering | FunctionError {
  const known = renderings.get(light);
  if (known) return known;
  const kelvin = kelvinFor(name, light);
  const rendering = isError(kelvin) ? kelvin : renderingOf(light.sampled, kelvin);
  renderings.set(light, rendering);
  return rendering;
}

export function consistencyFrom(name: string, light: Light): number | FunctionError {
  const kelvin = kelvinFor(name, light);
  if (isError(kelvin)) return kelvin;
  return (
    consistency(light.sampled, kelvin) ??
    refuse(`${name}: under this light the camera clips every colour of the chart.`)
  );
}

/** Against Planckian light below 4000 K and daylight from there, of the light’s own temperature. */
export function similarityFrom(name: string, light: Light): number | FunctionError {
  const kelvin = kelvinFor(name, light);
  if (isError(kelvin)) return kelvin;
  const kind = kelvin < similarDaylightFrom ? 'planck' : 'daylight';
  return similarity(curveOf(light.spectrum), referenceCurve(kind, kelvin));
}
