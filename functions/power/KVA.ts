import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { powerFactor, watts } from './parameters.ts';

function run(watts: In<'power'>, powerFactor: number) {
  return watts / powerFactor;
}

export default define({
  name: 'KVA',
  family: 'power',
  summary: 'Apparent power of a load, in volt-amperes: what a generator must supply.',
  job: 'You order a generator, and it is rated in kVA.',
  search: ['generator', 'apparent power', 'volt-amperes', 'kilovolt-amperes', 'genny size'],
  parameters: [watts, powerFactor],
  result: 'apparentPower',
  alike: ['AMPS', 'WATTS', 'LOADSHARE'],
  limits:
    'For loads of one power factor; loads of different factors add to a little less than the sum.',
  sources: [{ from: 'IEC 60050-131', at: 'apparent power and power factor, from memory' }],
  examples: [
    { args: [4000, 1], result: 4000, why: 'tungsten: volt-amperes are watts' },
    { args: ['2.4 kW', 0.6], result: 4000, why: '2.4 kW of drivers load a generator like 4 kVA' },
  ],
  laws: {
    'the power factor gives the watts back': (watts, powerFactor) =>
      near(run(watts, powerFactor) * powerFactor, watts),
    'never less than the watts': (watts, powerFactor) => run(watts, powerFactor) >= watts,
  },
  formula: 'watts / power_factor',
  run,
});
