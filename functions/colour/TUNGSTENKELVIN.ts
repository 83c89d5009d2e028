import { define } from '../define.ts';
import { colourTemperature, passing, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

/** Light goes with the 3.4th power of the voltage, colour temperature with the 0.42th. */
const voltageToLight = 3.4;
const voltageToKelvin = 0.42;

function run(kelvin: In<'colourTemperature'>, share: In<'share'>): In<'colourTemperature'> {
  return kelvin * share ** (voltageToKelvin / voltageToLight);
}

export default define({
  name: 'TUNGSTENKELVIN',
  family: 'colour',
  summary: 'Colour temperature of a tungsten lamp dimmed to a share of its light.',
  job: 'You dim a tungsten lamp and want to know how warm it turns.',
  search: ['dimmer', 'warm', 'dimmed', 'incandescent', 'practical', 'bulb'],
  parameters: [
    {
      name: 'kelvin',
      quantity: 'colourTemperature',
      domain: sampled(colourTemperature, 2500, 3400),
      help: 'Colour temperature at full.',
    },
    {
      name: 'share',
      quantity: 'share',
      domain: sampled(passing, 0.05, 1),
      help: 'Share of its light that is left.',
    },
  ],
  result: 'colourTemperature',
  alike: ['DIMMERFOR', 'DIMMERSTOPS', 'MIREDSHIFT'],
  limits:
    'Incandescent lamps only, best within a few stops of full; exponents differ a little from lamp to lamp. Not for LED that imitate dimming.',
  sources: [
    {
      from: 'IES Lighting Handbook',
      at: 'incandescent lamps: exponents 3.4 and 0.42 of the voltage (from memory)',
    },
  ],
  examples: [
    { args: [3200, 1], result: 3200, why: 'at full nothing changes' },
    { args: [3200, 0.5 ** 3.4], result: 3200 * 0.5 ** 0.42, why: 'at half the voltage' },
    {
      args: ['3200 K', '50 %'],
      result: 2937,
      why: 'a stop down it is about 260 K warmer',
      within: 1,
    },
  ],
  laws: {
    'a stop down, always by the same factor': (kelvin, share) =>
      near(run(kelvin, share / 2) / run(kelvin, share), 0.5 ** (0.42 / 3.4)),
  },
  formula: 'kelvin * share^(0.42 / 3.4)',
  run,
});
