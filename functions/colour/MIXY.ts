import { define } from '../define.ts';
import { near } from '../near.ts';
import { isError, type FunctionError, type In, type TableRow } from '../values.ts';
import { lights, mixed } from './mixed.ts';

const name = 'MIXY';

function run(rows: readonly TableRow[]): In<'chromaticity'> | FunctionError {
  const sum = mixed(name, rows);
  return isError(sum) ? sum : sum.y;
}

export default define({
  name,
  family: 'colour',
  summary: 'Chromaticity y of several lights together at a point.',
  job: 'A window, a lamp and a practical all reach the face and you want to know what colour they come to.',
  search: ['mixed light', 'sum of colours', 'several sources', 'mix of lamps', 'additive mixture'],
  parameters: [lights],
  result: 'chromaticity',
  alike: ['MIXX', 'CCT', 'DUV', 'COLOURDIFFERENCE'],
  limits:
    'Levels of one kind, in lux or in candela per square metre, each with that light alone. What each shadow shows is its own light and not the mix.',
  sources: [
    { from: 'CIE 15', at: 'tristimulus values add' },
    { from: 'CIE S 017', at: 'additive mixture' },
  ],
  examples: [
    {
      args: [
        [
          [100, 0.4476, 0.4074],
          [100, 0.3127, 0.329],
        ],
      ],
      result: 0.364,
      why: 'tungsten and daylight, as much of each',
      within: 1e-4,
    },
    {
      args: [
        [
          ['level', 'x', 'y'],
          [300, 0.4476, 0.4074],
          [null, null, null],
        ],
      ],
      result: 0.4074,
      why: 'a light alone keeps its colour',
    },
  ],
  laws: {
    'twice the same lights have the same colour': (rows) => {
      const given = rows.filter(([level]) => typeof level?.value === 'number');
      return near(Number(run(given)), Number(run([...given, ...given])));
    },
  },
  formula: {
    none: 'A table is gone through row by row.',
    equation: 'Σ level · 1 over Σ level / y',
  },
  run,
});
