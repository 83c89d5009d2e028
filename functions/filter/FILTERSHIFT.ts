import { define } from '../define.ts';
import type { FunctionError, In, TableRow } from '../values.ts';
import { exampleKit } from './exampleKit.ts';
import { piecesParameter } from './matchParameters.ts';
import { kitParameter, sumOf } from './swatches.ts';

const name = 'FILTERSHIFT';

const run = (pieces: string, kit: readonly TableRow[]): In<'mired'> | FunctionError =>
  sumOf(name, 'mired', pieces, kit);

export default define({
  name,
  family: 'filter',
  summary: 'Mired shift of a piece of your kit, or of two together; positive warms.',
  job: 'You have chosen what goes on a lamp and want to know how far it warms or cools.',
  search: ['gel shift', 'how warm', 'how blue', 'kit', 'swatch book'],
  parameters: [piecesParameter, kitParameter],
  result: 'mired',
  alike: ['FILTERFOR', 'FILTERTINT', 'FILTERLOSS', 'KELVINTHROUGH'],
  limits:
    'As good as what the kit says, for the light that its book was made with. A shift left blank is none.',
  sources: [{ from: 'mired tables', at: 'shifts add' }],
  examples: [
    { args: ['full orange', exampleKit], result: 130, why: 'any case will do' },
    { args: ['Half orange + Full orange', exampleKit], result: 195, why: 'shifts add' },
  ],
  formula: {
    none: 'It looks names up in a kit and adds.',
    equation: 'Σ mired of the pieces named',
  },
  run,
});
