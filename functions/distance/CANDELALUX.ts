import { define } from '../define.ts';
import { incidenceAngle, onSet, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { cosine } from './degrees.ts';
import type { In } from '../values.ts';

function run(candela: In<'intensity'>, distance: In<'length'>, incidence: In<'angle'>) {
  return (candela * cosine(incidence)) / distance ** 2;
}

export default define({
  name: 'CANDELALUX',
  family: 'distance',
  summary: 'Illuminance from an intensity at a distance, straight on or at a slant.',
  job: 'The data sheet gives candela and you want to know what the meter will say from over there.',
  search: ['candela', 'throw', 'data sheet', 'intensity to lux', 'cosine law', 'slant'],
  parameters: [
    {
      name: 'candela',
      quantity: 'intensity',
      domain: zeroOrMore,
      help: 'Intensity in the direction of the subject.',
    },
    { name: 'distance', quantity: 'length', domain: onSet, help: 'Source to subject.' },
    {
      name: 'incidence',
      quantity: 'angle',
      domain: incidenceAngle,
      default: 0,
      help: 'Between the light and straight on to the surface; 0 facing the source.',
    },
  ],
  result: 'illuminance',
  alike: ['LUXCANDELA', 'INVERSESQUARE', 'BEAMCANDELA'],
  limits:
    'From about five times the source’s widest dimension; nearer, a lens or a face is no point.',
  sources: [{ from: 'CIE S 017', at: 'photometric distance law, cosine law' }],
  examples: [
    { args: [900, 3], result: 100, why: '900 candela at 3 m, straight on' },
    { args: [100, 5, '60°'], result: 2, why: 'at 60° half of it arrives' },
    { args: ['2 kcd', 2, 90], result: 0, why: 'light that only grazes gives nothing' },
  ],
  laws: {
    'twice as far, a quarter of the light': (candela, distance, incidence) =>
      near(run(candela, 2 * distance, incidence), run(candela, distance, incidence) / 4),
    'no candela, no light': (_candela, distance, incidence) => run(0, distance, incidence) === 0,
  },
  formula: 'candela * COS(RADIANS(incidence)) / distance^2',
  run,
});
