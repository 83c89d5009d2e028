import { define } from '../define.ts';
import { readAs } from '../quantities/read.ts';
import { defaultWriting } from '../quantities/settings.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
import { hottestDaylight, similarDaylightFrom, similarityFrom } from '../spectrum/indices.ts';
import {
  filter,
  lightFrom,
  noFormula,
  referenceFrom,
  remarkOn,
  spectrum,
} from '../spectrum/parameters.ts';
import { daylightCurve, planckCurve } from '../spectrum/reference.ts';
import { similarity } from '../spectrum/similarity.ts';
import { noSpectra, type Spectra } from '../spectrum/spectra.ts';
import { curveOf } from '../spectrum/spectrum.ts';
import { isError, refuse, type FunctionError, type TableRow } from '../values.ts';

const name = 'SPECTRUMSSI';
const coldest = 1000;

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  reference: readonly TableRow[] | undefined,
  filterRows: readonly TableRow[] | undefined,
): number | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  if (isError(light)) return light;
  if (reference === undefined) return similarityFrom(name, light);
  const curve = referenceCurve(spectra, reference);
  return isError(curve) ? curve : similarity(curveOf(light.spectrum), curve);
}

/** A temperature as a number or as text, else a spectrum. */
function referenceCurve(
  spectra: Spectra,
  rows: readonly TableRow[],
): ((nm: number) => number) | FunctionError {
  const only = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0]?.value : undefined;
  const kelvin = typeof only === 'string' ? kelvinOf(spectra, only) : only;
  if (typeof kelvin !== 'number') {
    const found = referenceFrom(name, spectra, rows);
    return isError(found) ? found : curveOf(found);
  }
  if (!(kelvin >= coldest && kelvin <= hottestDaylight))
    return refuse(
      `${name}: reference must be from ${coldest} to ${hottestDaylight} K, not ${kelvin}.`,
    );
  // CIE 15 names its phases of daylight by the c2 of their day: D55 is of 5503 K.
  return kelvin < similarDaylightFrom
    ? planckCurve(kelvin)
    : daylightCurve((kelvin * 1.4388) / 1.438);
}

/** A name that the book keeps is never a temperature. */
function kelvinOf(spectra: Spectra, text: string): number | undefined {
  if (spectra.named(text) !== undefined) return undefined;
  const reading = readAs('colourTemperature', text, defaultWriting);
  return reading.ok ? reading.value : undefined;
}

const tried = (rows: readonly TableRow[]) => runFrom(exampleSpectra, rows, rows, undefined);

export default define({
  name,
  family: 'colour',
  summary: 'Spectral similarity index of a light and a reference, from their spectra.',
  job: 'You want to know whether a lamp will match tungsten or daylight on any camera, or another lamp.',
  search: ['SSI', 'spectral match', 'similarity', 'same as tungsten', 'same as daylight'],
  parameters: [
    spectrum,
    {
      name: 'reference',
      quantity: 'table',
      range: true,
      optional: true,
      help: 'A colour temperature such as 3200, two columns of cells, or the name of a spectrum kept in the book; left out, the light’s own colour temperature.',
    },
    filter,
  ],
  result: 'number',
  alike: ['SPECTRUMTLCI', 'SPECTRUMCRI', 'SPECTRUMCCT'],
  limits: `Bands of 10 nm from 375 to 675 nm. Below ${similarDaylightFrom} K the reference is Planckian, from there daylight: 5500 means D55. The standard reports whole numbers; here nothing is rounded.`,
  sources: [{ from: 'SMPTE ST 2122', at: 'weights, bands and smoothing' }],
  examples: [
    { args: ['Tungsten'], result: 100, why: 'it is its own reference', within: 0.01 },
    {
      args: ['Phosphor white', 5600],
      result: 60.093,
      why: 'no lamp of blue and yellow is daylight',
      within: 1e-3,
    },
    {
      args: ['Phosphor white', 'Tungsten'],
      result: 58.2315,
      why: 'against another spectrum of the book',
      within: 1e-3,
    },
    { args: ['Tungsten', '3200 K'], result: 100, why: 'a temperature as text', within: 0.01 },
  ],
  laws: {
    'every light is like itself': (rows) => Math.abs(Number(tried(rows)) - 100) < 1e-9,
  },
  formula: {
    none: noFormula,
    equation: '100 − 32 · √Σ of the smoothed, weighted differences of thirty bands, squared',
  },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
