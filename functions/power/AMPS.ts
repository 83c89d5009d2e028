import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { phaseFactor, phases, powerFactor, volts, watts } from './parameters.ts';

function run(watts: In<'power'>, volts: In<'voltage'>, powerFactor: number, phases: number) {
  return watts / (phaseFactor(phases) * volts * powerFactor);
}

export default define({
  name: 'AMPS',
  family: 'power',
  summary: 'Current that a load draws.',
  job: 'You plug fixtures together and want to know what the breaker sees.',
  search: ['current', 'ampere', 'how many amps', 'load', 'breaker', 'draw'],
  parameters: [watts, volts, powerFactor, phases],
  result: 'current',
  alike: ['WATTS', 'KVA', 'LOADSHARE', 'NEUTRALAMPS'],
  limits:
    'Running current: lamps and drivers draw many times more in the moment they are switched on.',
  sources: [{ from: 'IEC 60050-131', at: 'active power and power factor, from memory' }],
  examples: [
    { args: ['2.3 kW', 230, 1], result: 10, why: 'tungsten: watts over volts' },
    { args: [1150, 230, 0.5], result: 10, why: 'half the power factor, twice the current' },
    {
      args: ['60 kW', 400, 0.9, 3],
      result: 60_000 / (Math.sqrt(3) * 360),
      why: 'three phases share the load: 96 A in each line',
    },
  ],
  laws: {
    'twice the load, twice the current': (watts, volts, powerFactor, phases) =>
      near(run(2 * watts, volts, powerFactor, phases), 2 * run(watts, volts, powerFactor, phases)),
    'three phases carry the same load with less in each line': (watts, volts, powerFactor) =>
      near(run(watts, volts, powerFactor, 3) * Math.sqrt(3), run(watts, volts, powerFactor, 1)),
  },
  formula: 'watts / (IF(phases = 3, SQRT(3), 1) * volts * power_factor)',
  run,
});
