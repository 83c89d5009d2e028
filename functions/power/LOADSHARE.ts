import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { breaker, powerFactor, volts, watts } from './parameters.ts';

function run(
  watts: In<'power'>,
  volts: In<'voltage'>,
  breaker: In<'current'>,
  powerFactor: number,
) {
  return watts / (volts * powerFactor) / breaker;
}

export default define({
  name: 'LOADSHARE',
  family: 'power',
  summary: 'Share of a breaker that a load takes.',
  job: 'You want to see at a glance how full a circuit is.',
  search: ['breaker', 'how full', 'overload', 'circuit', 'percent of breaker'],
  parameters: [watts, volts, breaker, powerFactor],
  result: 'share',
  alike: ['CIRCUITROOM', 'AMPS', 'CIRCUITSFOR'],
  limits:
    'Over 100 % trips; for hours of load many local rules allow less, often 80 %: see CIRCUITROOM.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [1840, 230, 16, 1], result: 0.5, why: '8 A of 16' },
    { args: ['2 kW', '120 V', '20 A', 1], result: 2000 / 2400, why: 'a 2 kW lamp on 20 A' },
  ],
  laws: {
    'half the power factor, twice the share': (watts, volts, breaker, powerFactor) =>
      near(
        run(watts, volts, breaker, powerFactor / 2),
        2 * run(watts, volts, breaker, powerFactor),
      ),
    'what the breaker carries fills it': (_watts, volts, breaker, powerFactor) =>
      near(run(volts * breaker * powerFactor, volts, breaker, powerFactor), 1),
  },
  formula: 'watts / (volts * power_factor) / breaker',
  run,
});
