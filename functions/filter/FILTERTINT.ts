import { define } from '../define.ts';
import type { FunctionError, In, TableRow } from '../values.ts';
import { exampleKit } from './exampleKit.ts';
import { piecesParameter } from './matchParameters.ts';
import { kitParameter, sumOf } from './swatches.ts';

const name = 'FILTERTINT';

const run = (pieces: string, kit: readonly TableRow[]): In<'duv'> | FunctionError =>
  sumOf(name, 'duv', pieces, kit);

export default define({
  name,
  family: 'filter',
  summary: 'What a piece of your kit, or two together, add to Duv; positive is green.',
  job: 'You have chosen what goes on a lamp and want to know how green or pink it turns.',
  search: ['plus green', 'minus green', 'tint of a gel', 'kit', 'swatch book'],
  parameters: [piecesParameter, kitParameter],
  result: 'duv',
  alike: ['FILTERFOR', 'FILTERSHIFT', 'FILTERLOSS', 'GREENCC'],
  limits:
    'As good as what the kit says, for the light that its book was made with. A shift left blank is none.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['Full magenta', exampleKit], result: -0.008, why: 'it takes green away' },
    {
      args: ['Full orange + Full magenta', exampleKit],
      result: -0.007,
      why: 'this orange is a little green itself',
    },
  ],
  formula: { none: 'It looks names up in a kit and adds.', equation: 'Σ Duv of the pieces named' },
  run,
});
