import { define } from '../define.ts';
import { between, oneOf, positive, sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { resistance, sections, type ConductorClass } from './conductors.ts';

/** Out and back: two conductors for every metre of cable. */
function run(
  amps: In<'current'>,
  length: In<'length'>,
  area: In<'conductorArea'>,
  temperature: In<'temperature'>,
  conductorClass: number,
) {
  const ohms =
    2 * (length / 1000) * resistance(area, temperature, conductorClass as ConductorClass);
  return amps * ohms;
}

export default define({
  name: 'VOLTDROP',
  family: 'power',
  summary: 'Voltage lost in a cable, out and back.',
  job: 'The generator stands far away and you want to know what arrives at the lamp.',
  search: ['long cable', 'voltage drop', 'cable run', 'extension', 'dim lamps', 'cable size'],
  parameters: [
    {
      name: 'amps',
      quantity: 'current',
      domain: sampled(zeroOrMore, 0, 125),
      help: 'Current that the load draws.',
    },
    {
      name: 'length',
      quantity: 'length',
      domain: sampled(positive, 1, 300),
      help: 'Length of the cable, one way.',
    },
    {
      name: 'area',
      quantity: 'conductorArea',
      domain: oneOf(...sections),
      help: 'Section of one conductor in mm², as printed on the cable: one of the standard sections.',
    },
    {
      name: 'temperature',
      quantity: 'temperature',
      domain: between(-40, 120),
      default: 70,
      help: 'Temperature of the conductor itself; 70 °C unless given, as in a cable well loaded.',
    },
    {
      name: 'conductor_class',
      quantity: 'number',
      domain: oneOf(2, 5),
      default: 5,
      help: '5 for flexible cable, 2 for the stranded conductors of fixed wiring; 5 unless given.',
    },
  ],
  result: 'voltage',
  alike: ['AMPS', 'WATTS', 'NEUTRALAMPS'],
  limits:
    'Two conductors of plain copper that meet the standard, resistance only. Sections from 50 mm² up also lose to reactance.',
  sources: [
    { from: 'IEC 60228', at: 'tables 2 and 3, plain copper; annex for temperature, from memory' },
  ],
  examples: [
    {
      args: [32, 80, 6, 20, 2],
      result: 2 * 32 * 0.08 * 3.08,
      why: 'fixed wiring at 20 °C: 3.08 ohm a kilometre',
    },
    {
      args: ['16 A', '50 m', '2.5 mm2'],
      result: 1.6 * 7.98 * 1.2,
      why: 'flexible cable, warm: 15.3 V of 230 are gone',
    },
  ],
  laws: {
    'twice as long loses twice as much': (amps, length, area, temperature, conductorClass) =>
      near(
        run(amps, 2 * length, area, temperature, conductorClass),
        2 * run(amps, length, area, temperature, conductorClass),
      ),
    'a warmer conductor loses more': (amps, length, area, temperature, conductorClass) =>
      run(amps, length, area, temperature + 1, conductorClass) >=
      run(amps, length, area, temperature, conductorClass),
  },
  formula: {
    none: 'The resistance of each section is a printed table.',
    equation: 'U = 2 · I · l · R₂₀ · (230 + t) / 250',
  },
  run,
});
