import { define } from '../define.ts';
import { near } from '../near.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
import { luxOf } from '../spectrum/light.ts';
import {
  filter,
  lightFrom,
  noFormula,
  remarkOn,
  spectrum,
  summedOver,
} from '../spectrum/parameters.ts';
import { noSpectra, type Spectra } from '../spectrum/spectra.ts';
import { isError, refuse, type FunctionError, type In, type TableRow } from '../values.ts';

const name = 'SPECTRUMLUX';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows: readonly TableRow[] | undefined,
): In<'illuminance'> | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  if (isError(light)) return light;
  if (light.spectrum.measures === 'irradiance') return luxOf(light);
  return refuse(`${name}: only the shape of this spectrum is known; lux needs power in W/(m²·nm).`);
}

const tried = (...args: [readonly TableRow[], readonly TableRow[] | undefined]) =>
  runFrom(exampleSpectra, ...args);

export default define({
  name,
  family: 'colour',
  summary:
    'Illuminance of a light, from its spectrum in watts on a square metre for each nanometre.',
  job: 'Your spectrometer gives power and you want lux, or the lux behind a filter.',
  search: [
    'lux from spectrum',
    'irradiance',
    'radiometric to photometric',
    'watts per square metre',
  ],
  parameters: [spectrum, filter],
  result: 'illuminance',
  alike: ['SPECTRUMLOSS', 'SPECTRUMX', 'EVLUX'],
  limits: `${summedOver} Power in W/(m²·nm) where the light arrives; a spectrum kept in the book as a shape alone has no lux.`,
  sources: [
    { from: 'CIE 15', at: 'Km = 683 lm/W, ȳ as V(λ)' },
    { from: 'ISO 11664-1', at: 'CIE 1931 observer' },
  ],
  examples: [
    {
      args: ['Equal energy'],
      result: 72.98,
      why: 'a milliwatt at every wavelength: 683 · 106.86 / 1000',
      within: 0.05,
    },
    {
      args: ['Equal energy', 'Grey'],
      result: 18.245,
      why: 'a quarter of it behind two stops',
      within: 0.02,
    },
  ],
  laws: {
    'a quarter comes through a quarter': (rows, _) => {
      const [bare, behind] = [tried(rows, undefined), tried(rows, [[{ value: 'Grey' }]])];
      return isError(bare) ? isError(behind) : near(Number(bare) / 4, Number(behind), 1e-9);
    },
  },
  formula: { none: noFormula, equation: '683 · Σ S(λ) · τ(λ) · ȳ(λ) · Δλ' },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
