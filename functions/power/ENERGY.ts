import { define } from '../define.ts';
import { sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { watts } from './parameters.ts';

function run(watts: In<'power'>, hours: In<'duration'>) {
  return watts * hours;
}

export default define({
  name: 'ENERGY',
  family: 'power',
  summary: 'Energy that a load uses in some hours.',
  job: 'You plan batteries, fuel or the meter reading that the house will charge.',
  search: ['kilowatt hours', 'consumption', 'fuel', 'electricity bill', 'watt hours'],
  parameters: [
    watts,
    {
      name: 'hours',
      quantity: 'duration',
      domain: sampled(zeroOrMore, 0, 100),
      help: 'How long it runs.',
    },
  ],
  result: 'energy',
  alike: ['BATTERYHOURS', 'HIRE'],
  limits: 'At full output; a dimmed fixture uses less, though not in proportion to its light.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [650, 10], result: 6500, why: '6.5 kWh for a day of a 650 W lamp' },
    { args: ['2 kW', '30 min'], result: 1000, why: 'half an hour of 2 kW' },
  ],
  laws: {
    'twice as long uses twice as much': (watts, hours) =>
      near(run(watts, 2 * hours), 2 * run(watts, hours)),
  },
  formula: 'watts * hours',
  run,
});
