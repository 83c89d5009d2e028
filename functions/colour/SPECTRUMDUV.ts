import { define } from '../define.ts';
import { near } from '../near.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
import { temperatureOf } from './temperatureOf.ts';
import {
  filter,
  lightFrom,
  noFormula,
  remarkOn,
  spectrum,
  summedOver,
} from '../spectrum/parameters.ts';
import { noSpectra, type Spectra } from '../spectrum/spectra.ts';
import { isError, type FunctionError, type In, type TableRow } from '../values.ts';

const name = 'SPECTRUMDUV';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows: readonly TableRow[] | undefined,
): In<'duv'> | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  if (isError(light)) return light;
  const nearest = temperatureOf(name, light.xy.x, light.xy.y);
  return isError(nearest) ? nearest : nearest.duv;
}

const tried = (...args: [readonly TableRow[], readonly TableRow[] | undefined]) =>
  runFrom(exampleSpectra, ...args);

export default define({
  name,
  family: 'colour',
  summary: 'Green or magenta of a light beside its colour temperature, from its spectrum.',
  job: 'You have a spectrum and want to know whether the lamp is green or pink, and how much.',
  search: ['tint from spectrum', 'green or magenta', 'distance from the locus', 'spectrometer'],
  parameters: [spectrum, filter],
  result: 'duv',
  alike: ['SPECTRUMCCT', 'DUV', 'GREENCC'],
  limits: `${summedOver} Positive is green, above the Planckian locus. Refused farther than 0.05 from it.`,
  sources: [
    { from: 'Ohno 2013', at: 'triangular and parabolic solution' },
    { from: 'CIE 15', at: 'tristimulus values by summation' },
  ],
  examples: [
    { args: ['Tungsten'], result: 0, why: 'Planckian light lies on the locus', within: 2e-5 },
    {
      args: ['Equal energy'],
      result: -0.00442,
      why: 'the same power at every wavelength is a little pink',
      within: 2e-5,
    },
  ],
  laws: {
    'a grey filter changes nothing': (rows, _) => {
      const [bare, behind] = [tried(rows, undefined), tried(rows, [[{ value: 'Grey' }]])];
      return isError(bare) ? isError(behind) : near(Number(bare), Number(behind), 1e-9);
    },
  },
  formula: {
    none: noFormula,
    equation: 'distance of u, v (CIE 1960) from the Planckian locus, positive to green',
  },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
