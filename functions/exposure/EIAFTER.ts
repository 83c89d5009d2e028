import { define } from '../define.ts';
import { any, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { iso } from './parameters.ts';

function run(iso: In<'iso'>, loss: In<'stops'>) {
  return iso / 2 ** loss;
}

export default define({
  name: 'EIAFTER',
  family: 'exposure',
  summary: 'Speed to set on the meter behind filters that lose light.',
  job: 'A filter goes on the camera and the meter should know about it.',
  search: ['exposure index', 'filter on the lens', 'ND', 'meter setting', 'compensate'],
  parameters: [
    { ...iso, help: 'Speed of the camera without the filters.' },
    {
      name: 'loss',
      quantity: 'stops',
      domain: sampled(any, 0, 10),
      help: 'Stops lost in all filters together; losses are positive.',
    },
  ],
  result: 'iso',
  alike: ['FILTERSTACK', 'DENSITYSTOPS', 'TNUMBER', 'FACTORSTOPS'],
  limits: 'Not needed where the camera meters through the lens.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [800, 2], result: 200, why: 'two stops of loss quarter the speed' },
    { args: [800, '1'], result: 400, why: 'one stop halves it' },
  ],
  laws: {
    'one stop more of loss halves the speed': (iso, loss) =>
      near(run(iso, loss + 1), run(iso, loss) / 2),
    'losses add': (iso, loss) => near(run(run(iso, loss), loss), run(iso, 2 * loss)),
  },
  formula: 'iso / 2^loss',
  run,
});
