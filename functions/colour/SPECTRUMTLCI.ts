import { define } from '../define.ts';
import { consistencyFrom } from '../spectrum/indices.ts';
import {
  filter,
  lightFrom,
  noFormula,
  remarkOn,
  spectrum,
  summedOver,
} from '../spectrum/parameters.ts';
import { exampleSpectra } from '../spectrum/exampleSpectra.ts';
import { noSpectra, type Spectra } from '../spectrum/spectra.ts';
import { isError, type FunctionError, type TableRow } from '../values.ts';

const name = 'SPECTRUMTLCI';

function runFrom(
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows: readonly TableRow[] | undefined,
): number | FunctionError {
  const light = lightFrom(name, spectra, rows, filterRows);
  return isError(light) ? light : consistencyFrom(name, light);
}

const tried = (rows: readonly TableRow[]) => runFrom(exampleSpectra, rows, undefined);

export default define({
  name,
  family: 'colour',
  summary: 'Television lighting consistency index of a light, from its spectrum.',
  job: 'You want to know how true colours look on a screen when a camera sees them under a lamp.',
  search: ['TLCI', 'Qa', 'camera colour', 'grading', 'how good is the light', 'broadcast'],
  parameters: [spectrum, filter],
  result: 'number',
  alike: ['SPECTRUMCRI', 'SPECTRUMSSI', 'SPECTRUMCCT'],
  limits: `One standard camera of three chips and one standard screen: your camera differs. ${summedOver} By the standard’s notes a colourist hardly corrects from 85 up, and cannot mend what is below 25.`,
  sources: [
    { from: 'EBU Tech 3355', at: 'Qa; patches and camera as its tables state them' },
    { from: 'ISO 11664-6', at: 'CIEDE2000' },
  ],
  examples: [
    { args: ['Tungsten'], result: 100, why: 'it is its own reference', within: 0.001 },
    {
      args: ['Phosphor white'],
      result: 50,
      why: 'blue under a broad yellow: much to correct',
      within: 0.1,
    },
  ],
  laws: {
    'it lies between none and a hundred': (rows) => {
      const index = tried(rows);
      return isError(index) || (index > 0 && index <= 100);
    },
  },
  formula: {
    none: noFormula,
    equation: '100 / (1 + (ΔE / 3.16)^2.4), ΔE the fourth-power mean of CIEDE2000 over 18 patches',
  },
  run: (...args) => runFrom(noSpectra, ...args),
  runFrom,
  remarkFrom: remarkOn,
});
