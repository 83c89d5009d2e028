import { define } from '../define.ts';
import { near } from '../near.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
import { peakOf } from '../spectrum/light.ts';
import { filter, lightFrom, noFormula, remarkOn, spectrum } from '../spectrum/parameters.ts';
import { noSpectra, type Spectra } from '../spectrum/spectra.ts';
import { isError, type FunctionError, type In, type TableRow } from '../values.ts';

const name = 'SPECTRUMPEAK';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows: readonly TableRow[] | undefined,
): In<'number'> | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  if (isError(light)) return light;
  return peakOf(light.spectrum);
}

const tried = (...args: [readonly TableRow[], readonly TableRow[] | undefined]) =>
  runFrom(exampleSpectra, ...args);

export default define({
  name,
  family: 'colour',
  summary: 'Wavelength at which a light is strongest, in nanometres.',
  job: 'You want to know what colour a single emitter is, or where the spike of a lamp stands.',
  search: ['dominant line', 'peak wavelength', 'nanometres', 'strongest colour', 'spike'],
  parameters: [spectrum, filter],
  result: 'number',
  alike: ['SPECTRUMX', 'SPECTRUMCRI'],
  limits: `The highest single reading from 380 to 780 nm, the shorter wavelength where two are alike. It says nothing about the colour of a mixed light.`,
  sources: [{ from: 'CIE S 017', at: 'peak wavelength' }],
  examples: [
    {
      args: [
        [
          [380, 0],
          [400, 1],
          [420, 5],
          [440, 9],
          [460, 5],
          [480, 1],
          [500, 0],
          [520, 0],
          [540, 0],
          [560, 0],
          [580, 0],
          [600, 0],
          [620, 0],
          [640, 0],
          [660, 0],
          [680, 0],
          [700, 0],
        ],
      ],
      result: 440,
      why: 'a blue emitter, read every 20 nm',
    },
    { args: ['Tungsten'], result: 780, why: 'tungsten goes on rising into the infrared' },
    { args: ['Phosphor white'], result: 575, why: 'the phosphor outshines the emitter under it' },
  ],
  laws: {
    'a grey filter changes nothing': (rows, _) => {
      const [bare, behind] = [tried(rows, undefined), tried(rows, [[{ value: 'Grey' }]])];
      return isError(bare) ? isError(behind) : near(Number(bare), Number(behind), 1e-9);
    },
  },
  formula: { none: noFormula, equation: 'the λ of the greatest S(λ) · τ(λ)' },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
