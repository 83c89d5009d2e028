import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { breaker, continuous, powerFactor, volts, watts } from './parameters.ts';

function run(
  watts: In<'power'>,
  volts: In<'voltage'>,
  breaker: In<'current'>,
  powerFactor: number,
  continuous: In<'share'>,
) {
  return volts * breaker * continuous * powerFactor - watts;
}

export default define({
  name: 'CIRCUITROOM',
  family: 'power',
  summary: 'Watts that are still free on a circuit.',
  job: 'Something is plugged in already and you want to know what else fits.',
  search: ['still free', 'what else fits', 'spare', 'socket', 'room on the circuit', 'breaker'],
  parameters: [
    { ...watts, help: 'What is on the circuit already, the house’s own load included.' },
    volts,
    breaker,
    powerFactor,
    continuous,
  ],
  result: 'power',
  alike: ['LOADSHARE', 'CIRCUITSFOR', 'WATTS'],
  limits:
    'Negative means overloaded. One power factor for what is there and what is added; take the lower.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [1000, 230, 16, 1, 1], result: 2680, why: '3680 W of circuit less 1000 W' },
    { args: [1000, 230, 16, 1], result: 1944, why: '80 % of it for hours of load' },
    { args: [3000, 230, 16, 0.9, 0.8], result: -350.4, why: 'overloaded by 350 W' },
  ],
  laws: {
    'what is added is no longer free': (watts, volts, breaker, powerFactor, continuous) =>
      near(
        run(watts + 100, volts, breaker, powerFactor, continuous),
        run(watts, volts, breaker, powerFactor, continuous) - 100,
      ),
  },
  formula: 'volts * breaker * continuous * power_factor - watts',
  run,
});
