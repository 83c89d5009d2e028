import { define } from '../define.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
import {
  givenFilter,
  lightFrom,
  noFormula,
  remarkOn,
  spectrum,
  summedOver,
} from '../spectrum/parameters.ts';
import { noSpectra, type Spectra } from '../spectrum/spectra.ts';
import { isError, type FunctionError, type In, type TableRow } from '../values.ts';

const name = 'SPECTRUMLOSS';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows: readonly TableRow[],
): In<'stops'> | FunctionError {
  const bare = lightFrom(name, spectra, rows);
  if (isError(bare)) return bare;
  const behind = lightFrom(name, spectra, rows, filterRows);
  return isError(behind) ? behind : Math.log2(bare.tristimulus.Y / behind.tristimulus.Y);
}

export default define({
  name,
  family: 'colour',
  summary: 'Stops that a filter takes from this light, from the two spectra.',
  job: 'The swatch book gives the loss for one light only and you want it for the lamp that you have.',
  search: ['filter loss', 'gel loss', 'transmission of a filter', 'stops through a gel'],
  parameters: [spectrum, givenFilter],
  result: 'stops',
  alike: ['SPECTRUMCCT', 'TRANSMISSIONSTOPS', 'DIFFUSIONLOSS'],
  limits: `As the eye and a meter weigh the light; a camera’s red or blue may lose more. ${summedOver}`,
  sources: [
    { from: 'CIE 15', at: 'luminous transmittance, Σ S · τ · ȳ / Σ S · ȳ' },
    { from: 'ISO 11664-1', at: 'CIE 1931 observer' },
  ],
  examples: [
    { args: ['Tungsten', 'Grey'], result: 2, why: 'a quarter is two stops', within: 1e-9 },
    {
      args: ['Equal energy', 'Amber'],
      result: 0.906,
      why: 'an amber filter on an even light',
      within: 1e-3,
    },
    {
      args: ['Tungsten', 'Amber'],
      result: 0.825,
      why: 'it takes less from a warm one',
      within: 1e-3,
    },
  ],
  laws: {
    'a filter never adds light': (rows, filterRows) => {
      const stops = runFrom(exampleSpectra, rows, filterRows);
      return isError(stops) || stops >= -1e-12;
    },
  },
  formula: { none: noFormula, equation: 'log2 of Σ S(λ) · ȳ(λ) over Σ S(λ) · τ(λ) · ȳ(λ)' },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
