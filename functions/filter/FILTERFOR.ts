import { lightKelvin, lightTint, wantedKelvin, wantedTint } from './matchParameters.ts';
import { define } from '../define.ts';
import { isError, type FunctionError, type In, type TableRow } from '../values.ts';
import { exampleKit } from './exampleKit.ts';
import { nearestPieces } from './nearestPieces.ts';
import { kitParameter, namesOf, piecesOf } from './swatches.ts';

const name = 'FILTERFOR';

function run(
  kelvin: In<'colourTemperature'>,
  duv: In<'duv'>,
  white: In<'colourTemperature'>,
  whiteDuv: In<'duv'>,
  rows: readonly TableRow[],
): string | FunctionError {
  const kit = piecesOf(name, rows);
  if (isError(kit)) return kit;
  return namesOf(nearestPieces({ kelvin, duv }, { kelvin: white, duv: whiteDuv }, kit));
}

export default define({
  name,
  family: 'filter',
  summary: 'Which piece or pair of your kit brings a light nearest to a white.',
  job: 'A lamp is off the camera’s white and you want to know what of the kit goes on it.',
  search: ['which gel', 'correction filter', 'nearest gel', 'match a source', 'orange or blue'],
  parameters: [lightKelvin, lightTint, wantedKelvin, wantedTint, kitParameter],
  result: 'text',
  alike: ['FILTERSHIFT', 'FILTERTINT', 'FILTERLOSS', 'MATCHLOSS', 'MIREDSHIFT'],
  limits:
    'Shifts in mired and in Duv are taken to add, which holds for smooth spectra near the light that the book was made for; with gaps in the spectrum meter again. One piece, or one that mostly warms or cools with one that mostly adds green or magenta; an orange never goes on what is not too blue, nor a magenta on what is not too green; a piece that brings it nearer by less than 0.0011 in u′v′ stays off.',
  sources: [
    { from: 'mired tables', at: 'shifts add to the mired value' },
    { from: 'CIE 15', at: '8.1, distance in the CIE 1976 diagram (clause from memory)' },
  ],
  examples: [
    {
      args: [5500, 0, 3200, 0, exampleKit],
      result: 'Full orange',
      why: 'the tables say 131 mired from 5500 to 3200 K, and this kit has 130',
      source: 'mired tables',
    },
    {
      args: [5500, 0.008, 3200, 0, exampleKit],
      result: 'Full orange + Full magenta',
      why: 'green as well, so a piece against it goes on too',
    },
    { args: ['3200 K', 0, '3200 K', 0, exampleKit], result: 'none', why: 'it matches already' },
  ],
  formula: {
    none: 'It picks pieces from a kit and measures against Planck’s law.',
    equation:
      'the pieces for which Δu′v′ of (10⁶ / kelvin + Σ mired, duv + Σ Duv) to the white is least',
  },
  run,
});
