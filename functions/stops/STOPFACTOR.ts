import { define } from '../define.ts';
import { any } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(stops: In<'stops'>) {
  return 2 ** stops;
}

export default define({
  name: 'STOPFACTOR',
  family: 'stops',
  summary: 'How many times the light a number of stops is.',
  job: 'You need the light factor behind a difference in stops, for a dimmer, a number of lamps or a filter.',
  search: ['how many times', 'factor', 'multiply the light', 'stops to factor', 'filter factor'],
  parameters: [{ name: 'stops', quantity: 'stops', domain: any, help: 'More light is positive.' }],
  result: 'factor',
  alike: ['FACTORSTOPS', 'LEVELAT'],
  limits: 'None: a factor under 1 is less light.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [3], result: 8, why: 'three stops more is eight times the light' },
    { args: ['-1'], result: 0.5, why: 'one stop less is half the light' },
  ],
  laws: {
    'there and back multiply to one': (stops) => near(run(stops) * run(-stops), 1),
    'one stop more doubles the factor': (stops) => near(run(stops + 1), 2 * run(stops)),
  },
  formula: '2^stops',
  run,
});
