import { define } from '../define.ts';
import { between, duvRange, sampled } from '../domains.ts';
import { near } from '../near.ts';
import { isError, type In } from '../values.ts';
import { planckXY } from './planckXY.ts';
import { temperatureOf } from './temperatureOf.ts';

function run(kelvin: In<'colourTemperature'>, duv: In<'duv'>): In<'chromaticity'> {
  return planckXY(kelvin, duv).x;
}

export default define({
  name: 'PLANCKX',
  family: 'colour',
  summary:
    'Chromaticity x of Planckian light of a colour temperature, shifted to green or magenta.',
  job: 'You have kelvin and tint and need x for a lamp or a plan that takes x and y.',
  search: ['kelvin to xy', 'blackbody', 'black body', 'chromaticity', 'coordinates'],
  parameters: [
    {
      name: 'kelvin',
      quantity: 'colourTemperature',
      domain: sampled(between(500, 1_000_000), 1500, 20_000),
      help: 'Colour temperature.',
    },
    {
      name: 'duv',
      quantity: 'duv',
      domain: duvRange,
      default: 0,
      help: 'Distance from the locus: positive is green, negative magenta.',
    },
  ],
  result: 'chromaticity',
  alike: ['PLANCKY', 'DAYLIGHTX', 'CCT'],
  limits:
    'The CIE 1931 2° observer; c2 = 1.4388e-2 m·K as colour standards take it, which makes illuminant A 2855.5 K.',
  sources: [
    { from: 'CIE 15', at: 'Planckian radiator, CIE 1960 u, v' },
    { from: 'ISO 11664-1', at: 'observer, interpolated to 1 nm' },
  ],
  examples: [
    {
      args: [(2848 * 1.4388) / 1.435],
      result: 0.44758,
      why: 'illuminant A, 2848 K at the old value of c2',
      source: 'CIE 15',
      within: 2e-5,
    },
    {
      args: [1_000_000],
      result: 0.24,
      why: 'the hot end of the locus, close to where endless heat ends',
      within: 5e-4,
    },
  ],
  laws: {
    'its colour temperature is the one given': (kelvin, duv) => {
      const { x, y } = planckXY(kelvin, duv);
      const found = temperatureOf('PLANCKX', x, y);
      return !isError(found) && near(found.kelvin, kelvin, 1e-4) && near(found.duv, duv, 1e-5);
    },
  },
  formula: {
    none: 'Planck’s law is summed over the observer, 471 wavelengths.',
    equation: 'x, y of Σ M(λ, kelvin) · (x̄, ȳ, z̄), then duv across the locus in u, v (CIE 1960)',
  },
  run,
});
