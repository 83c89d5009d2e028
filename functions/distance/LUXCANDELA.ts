import { define } from '../define.ts';
import { onSet, slantAngle, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { cosine } from './degrees.ts';
import type { In } from '../values.ts';

function run(lux: In<'illuminance'>, distance: In<'length'>, incidence: In<'angle'>) {
  return (lux * distance ** 2) / cosine(incidence);
}

export default define({
  name: 'LUXCANDELA',
  family: 'distance',
  summary: 'Intensity of a source from a reading at a distance.',
  job: 'You metered a lamp and want the candela, to know what it gives from anywhere else.',
  search: ['lux to candela', 'measure a lamp', 'intensity', 'how strong is it'],
  parameters: [
    {
      name: 'lux',
      quantity: 'illuminance',
      domain: zeroOrMore,
      help: 'Reading of this source alone.',
    },
    { name: 'distance', quantity: 'length', domain: onSet, help: 'Source to meter.' },
    {
      name: 'incidence',
      quantity: 'angle',
      domain: slantAngle,
      default: 0,
      help: 'Between the light and straight on to the meter; 0 facing the source.',
    },
  ],
  result: 'intensity',
  alike: ['CANDELALUX', 'INVERSESQUARE', 'BEAMCANDELA'],
  limits: 'From about five times the source’s widest dimension; a flat receptor when at a slant.',
  sources: [{ from: 'CIE S 017', at: 'photometric distance law, cosine law' }],
  examples: [
    { args: [100, 3], result: 900, why: '100 lux at 3 m' },
    { args: ['10 lx', 5, '60°'], result: 500, why: 'at 60° only half of it was metered' },
  ],
  laws: {
    'the intensity gives the reading again': (lux, distance, incidence) =>
      near((run(lux, distance, incidence) * cosine(incidence)) / distance ** 2, lux),
    'a reading twice as far means four times the candela': (lux, distance, incidence) =>
      near(run(lux, 2 * distance, incidence), 4 * run(lux, distance, incidence)),
  },
  formula: 'lux * distance^2 / COS(RADIANS(incidence))',
  run,
});
