import { define } from '../define.ts';
import type { FunctionError, In, TableRow } from '../values.ts';
import { exampleKit } from './exampleKit.ts';
import { piecesParameter } from './matchParameters.ts';
import { kitParameter, sumOf } from './swatches.ts';

const name = 'FILTERLOSS';

const run = (pieces: string, kit: readonly TableRow[]): In<'stops'> | FunctionError =>
  sumOf(name, 'loss', pieces, kit);

export default define({
  name,
  family: 'filter',
  summary: 'Stops that a piece of your kit, or two together, take.',
  job: 'You have chosen what goes on a lamp and want to know what light it costs.',
  search: ['gel loss', 'how much light', 'what it costs', 'kit', 'swatch book'],
  parameters: [piecesParameter, kitParameter],
  result: 'stops',
  alike: ['FILTERFOR', 'FILTERSHIFT', 'FILTERTINT', 'FILTERSTACK'],
  limits:
    'As good as what the kit says, for the light that its book was made with. A shift left blank is none.',
  sources: [{ from: 'common practice', at: 'losses in stops add' }],
  examples: [
    { args: ['Full blue', exampleKit], result: 1.5, why: 'as the kit says' },
    { args: ['Full orange + Full magenta', exampleKit], result: 1.3, why: '0.7 and 0.6' },
    { args: ['none', exampleKit], result: 0, why: 'nothing on, nothing lost' },
  ],
  formula: { none: 'It looks names up in a kit and adds.', equation: 'Σ loss of the pieces named' },
  run,
});
