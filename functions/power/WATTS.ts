import { define } from '../define.ts';
import { sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { phaseFactor, phases, powerFactor, volts } from './parameters.ts';

function run(amps: In<'current'>, volts: In<'voltage'>, powerFactor: number, phases: number) {
  return phaseFactor(phases) * amps * volts * powerFactor;
}

export default define({
  name: 'WATTS',
  family: 'power',
  summary: 'Power that a current carries.',
  job: 'You know what the circuit gives in amps and want to know what it can light.',
  search: ['power', 'how many watts', 'amps to watts', 'socket', 'what can it carry'],
  parameters: [
    {
      name: 'amps',
      quantity: 'current',
      domain: sampled(zeroOrMore, 0, 200),
      help: 'Current in the line.',
    },
    volts,
    powerFactor,
    phases,
  ],
  result: 'power',
  alike: ['AMPS', 'KVA', 'CIRCUITROOM'],
  limits: 'With three phases, the same current in each line.',
  sources: [{ from: 'IEC 60050-131', at: 'active power and power factor, from memory' }],
  examples: [
    { args: [16, 230, 1], result: 3680, why: 'a full 16 A circuit of tungsten' },
    { args: ['20 A', '120 V', 0.6], result: 1440, why: 'less light from the same amps' },
  ],
  laws: {
    'the current gives the power back': (amps, volts, powerFactor, phases) =>
      near(
        run(amps, volts, powerFactor, phases) / (phaseFactor(phases) * volts * powerFactor),
        amps,
      ),
  },
  formula: 'IF(phases = 3, SQRT(3), 1) * amps * volts * power_factor',
  run,
});
