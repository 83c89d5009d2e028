import { define } from '../define.ts';
import { isError, type FunctionError, type In, type TableRow } from '../values.ts';
import { exampleKit } from './exampleKit.ts';
import { wantedKelvin, wantedTint } from './matchParameters.ts';
import { lossOf, nearestPieces } from './nearestPieces.ts';
import { kitParameter, piecesOf } from './swatches.ts';
import { tintedSources } from './tintedSources.ts';

const name = 'MATCHLOSS';

function run(
  white: In<'colourTemperature'>,
  whiteDuv: In<'duv'>,
  sources: readonly TableRow[],
  rows: readonly TableRow[],
): In<'stops'> | FunctionError {
  const kit = piecesOf(name, rows);
  if (isError(kit)) return kit;
  const lights = tintedSources(name, sources);
  if (isError(lights)) return lights;
  const wanted = { kelvin: white, duv: whiteDuv };
  return lights.reduce((sum, light) => sum + lossOf(nearestPieces(light, wanted, kit)), 0);
}

export default define({
  name,
  family: 'filter',
  summary: 'Stops that all sources lose together when each is brought to one white from your kit.',
  job: 'Several sources are unlike, and you want to know which one to leave as it is and balance the camera to.',
  search: ['which to leave', 'least loss', 'mixed sources', 'balance to', 'order of work'],
  parameters: [
    wantedKelvin,
    wantedTint,
    {
      name: 'sources',
      quantity: 'table',
      range: true,
      help: 'A row for each source: its kelvin, its Duv, and "no" where nothing can be put on it. A heading is passed over.',
    },
    kitParameter,
  ],
  result: 'stops',
  alike: ['FILTERFOR', 'FILTERLOSS', 'FILTERSTACK'],
  limits:
    'Each by the pieces that FILTERFOR picks, with its limits. The sum counts every source alike, whatever its level and size; one that takes nothing is left out and may stay off.',
  sources: [{ from: 'common practice', at: 'losses in stops add' }],
  examples: [
    {
      args: [
        3200,
        0,
        [
          [5500, 0, 'yes'],
          [5500, 0.008, 'yes'],
        ],
        exampleKit,
      ],
      result: 2,
      why: 'a full orange for each, a magenta for one: 0.7 + 0.7 + 0.6',
    },
    {
      args: [
        5500,
        0,
        [
          [5500, 0, 'yes'],
          [3200, 0, 'no'],
        ],
        exampleKit,
      ],
      result: 0,
      why: 'the one matches, the other cannot be changed',
    },
  ],
  laws: {
    'a second time over it is twice as much': (white, duv, sources, kit) => {
      const given = sources.filter(([first]) => typeof first?.value === 'number');
      const once = run(white, duv, given, kit);
      const twice = run(white, duv, [...given, ...given], kit);
      return !isError(once) && !isError(twice) && Math.abs(twice - 2 * once) < 1e-9;
    },
  },
  formula: {
    none: 'It picks pieces from a kit for each source.',
    equation: 'Σ loss of what FILTERFOR picks for each source',
  },
  run,
});
