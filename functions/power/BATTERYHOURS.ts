import { define } from '../define.ts';
import { positive, sampled, shareAboveZero, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(wattHours: In<'energy'>, watts: In<'power'>, efficiency: In<'share'>) {
  return (wattHours * efficiency) / watts;
}

export default define({
  name: 'BATTERYHOURS',
  family: 'power',
  summary: 'How long a battery runs a load.',
  job: 'You light without mains and want to know when to change batteries.',
  search: ['battery', 'how long', 'runtime', 'change batteries', 'off grid'],
  parameters: [
    {
      name: 'watt_hours',
      quantity: 'energy',
      domain: sampled(zeroOrMore, 0, 5000),
      help: 'What the battery holds, as printed on it.',
    },
    {
      name: 'watts',
      quantity: 'power',
      domain: sampled(positive, 5, 2000),
      help: 'What the load draws.',
    },
    {
      name: 'efficiency',
      quantity: 'share',
      domain: sampled(shareAboveZero, 0.5, 1),
      default: 0.9,
      help: 'Share that reaches the load; 90 % unless given.',
    },
  ],
  result: 'duration',
  alike: ['ENERGY', 'AMPS'],
  limits: 'A new battery at room temperature; cold and age take a third and more.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [98, 49], result: 1.8, why: 'two hours less a tenth' },
    { args: ['1.2 kWh', '150 W', 1], result: 8, why: 'nothing lost on the way' },
  ],
  laws: {
    'half the load, twice as long': (wattHours, watts, efficiency) =>
      near(run(wattHours, watts / 2, efficiency), 2 * run(wattHours, watts, efficiency)),
  },
  formula: 'watt_hours * efficiency / watts',
  run,
});
