import { define } from '../define.ts';
import { near } from '../near.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
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

const name = 'SPECTRUMY';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows: readonly TableRow[] | undefined,
): In<'chromaticity'> | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  if (isError(light)) return light;
  return light.xy.y;
}

const tried = (...args: [readonly TableRow[], readonly TableRow[] | undefined]) =>
  runFrom(exampleSpectra, ...args);

export default define({
  name,
  family: 'colour',
  summary: 'Chromaticity y of a light, from its spectrum.',
  job: 'You have a spectrum from a meter or a data sheet and want y for a plan, a lamp or a match.',
  search: [
    'xy of a light',
    'spectral power distribution',
    'CIE 1931',
    'spectrometer',
    'chromaticity of a light',
  ],
  parameters: [spectrum, filter],
  result: 'chromaticity',
  alike: ['SPECTRUMX', 'SPECTRUMCCT', 'SPECTRUMDUV', 'CCT'],
  limits: `${summedOver} The CIE 1931 2° observer.`,
  sources: [
    { from: 'CIE 15', at: 'tristimulus values by summation, 7.1' },
    { from: 'ISO 11664-1', at: 'CIE 1931 observer' },
  ],
  examples: [
    {
      args: ['Equal energy'],
      result: 1 / 3,
      why: 'the same power at every wavelength',
      source: 'CIE 15',
      within: 5e-5,
    },
    { args: ['Tungsten'], result: 0.399, why: 'Planckian light of 3200 K', within: 1e-4 },
    {
      args: ['Tungsten', 'Grey'],
      result: 0.399,
      why: 'a grey filter changes no colour',
      within: 1e-4,
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
    equation: 'Y / (X + Y + Z), each the sum of S(λ) · τ(λ) · x̄, ȳ, z̄(λ)',
  },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
