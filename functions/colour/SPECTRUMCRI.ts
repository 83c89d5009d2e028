import { define } from '../define.ts';
import { near } from '../near.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
import { hottestDaylight, renderingFrom } from '../spectrum/indices.ts';
import {
  filter,
  lightFrom,
  noFormula,
  remarkOn,
  spectrum,
  summedOver,
} from '../spectrum/parameters.ts';
import { noSpectra, type Spectra } from '../spectrum/spectra.ts';
import { isError, type FunctionError, type TableRow } from '../values.ts';
import { temperatureOf } from './temperatureOf.ts';

const name = 'SPECTRUMCRI';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  sample: number,
  filterRows: readonly TableRow[] | undefined,
): number | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  if (isError(light)) return light;
  const rendering = renderingFrom(name, light);
  if (isError(rendering)) return rendering;
  return rendering.special[sample - 1] ?? rendering.general;
}

/** So far from the locus the standard does not want the index used (CIE 13.3, 5.3). */
const farthest = 0.0054;

function remarkFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  _: number,
  filterRows: readonly TableRow[] | undefined,
): string | undefined {
  const light = lightFrom(name, spectra, rows, filterRows);
  const nearest = isError(light) ? light : temperatureOf(name, light.xy.x, light.xy.y);
  const tinted = !isError(nearest) && Math.abs(nearest.duv) > farthest;
  const tint = tinted
    ? `Duv ${nearest.duv.toFixed(4)} is farther from white than ${farthest}: CIE 13.3 would not give an index.`
    : undefined;
  return [remarkOn(spectra, rows), tint].filter((one) => one !== undefined).join(' ') || undefined;
}

const sample = {
  name: 'sample',
  quantity: 'number',
  domain: {
    says: 'a whole number from 0 to 14',
    allows: (value: number) => Number.isInteger(value) && value >= 0 && value <= 14,
    samples: [0, 14],
    choices: Array.from({ length: 15 }, (_, index) => index),
  },
  default: 0,
  help: '0 for Ra, the mean of the first eight; 1 to 14 for one sample: 9 is red, 13 is skin.',
} as const;

const tried = (...args: [readonly TableRow[], number]) =>
  runFrom(exampleSpectra, ...args, undefined);

export default define({
  name,
  family: 'colour',
  summary: 'Colour rendering index Ra of a light, or one of R1 to R14, from its spectrum.',
  job: 'You want to know how true colours look to the eye under a lamp; R9 is the red that skin needs.',
  search: ['CRI', 'Ra', 'R9', 'colour rendering', 'how good is the light', 'skin tones'],
  parameters: [spectrum, sample, filter],
  result: 'number',
  alike: ['SPECTRUMTLCI', 'SPECTRUMSSI', 'SPECTRUMCCT'],
  limits: `What eyes see, not what a camera sees. ${summedOver} The reference is Planckian below 5000 K and daylight up to ${hottestDaylight} K. A standard reports whole numbers; here nothing is rounded, and it may be less than nothing.`,
  sources: [
    { from: 'CIE 13.3', at: 'Ra and R1 to R14' },
    { from: 'CIE 15', at: 'phases of daylight' },
  ],
  examples: [
    { args: ['Tungsten', 0], result: 100, why: 'it is its own reference', within: 0.001 },
    {
      args: ['Phosphor white', 0],
      result: 72.9,
      why: 'blue under a broad yellow: the eight pastels are fair',
      within: 0.15,
    },
    {
      args: ['Phosphor white', 9],
      result: -31.3,
      why: 'and red is poor, which R9 says and Ra hides',
      within: 0.3,
    },
  ],
  laws: {
    'nothing is truer than the reference': (rows, sample) => Number(tried(rows, sample)) <= 100,
    'Ra is the mean of the first eight': (rows) => {
      const eight = [1, 2, 3, 4, 5, 6, 7, 8].map((sample) => Number(tried(rows, sample)));
      const mean = eight.reduce((sum, one) => sum + one, 0) / 8;
      return near(Number(tried(rows, 0)), mean, 1e-9);
    },
  },
  formula: {
    none: noFormula,
    equation: '100 − 4.6 · ΔE(U*V*W*) of a test colour under the light and its reference',
  },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom,
});
