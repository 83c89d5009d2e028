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

const name = 'SPECTRUMCCT';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows: readonly TableRow[] | undefined,
): In<'colourTemperature'> | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  if (isError(light)) return light;
  const nearest = temperatureOf(name, light.xy.x, light.xy.y);
  return isError(nearest) ? nearest : nearest.kelvin;
}

const tried = (...args: [readonly TableRow[], readonly TableRow[] | undefined]) =>
  runFrom(exampleSpectra, ...args);

export default define({
  name,
  family: 'colour',
  summary: 'Correlated colour temperature of a light, from its spectrum.',
  job: 'You have a spectrum and want the kelvin to set on the camera or to match to.',
  search: [
    'kelvin from spectrum',
    'colour temperature of a light',
    'white balance',
    'spectrometer',
  ],
  parameters: [spectrum, filter],
  result: 'colourTemperature',
  alike: ['SPECTRUMDUV', 'SPECTRUMX', 'CCT', 'MIRED'],
  limits: `${summedOver} Refused farther than 0.05 Duv from the Planckian locus, as by CCT.`,
  sources: [
    { from: 'Ohno 2013', at: 'triangular and parabolic solution' },
    { from: 'CIE 15', at: 'tristimulus values by summation' },
  ],
  examples: [
    { args: ['Tungsten'], result: 3200, why: 'Planckian light of 3200 K', within: 0.5 },
    { args: ['Equal energy'], result: 5455, why: 'the same power at every wavelength', within: 1 },
    {
      args: ['Equal energy', 'Amber'],
      result: 2965,
      why: 'warmer behind an amber filter',
      within: 1,
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
    equation: 'the temperature at which the Planckian locus comes nearest to u, v (CIE 1960)',
  },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
