import { define } from '../define.ts';
import { lightLevel, onSet } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(lux: In<'illuminance'>, distance: In<'length'>, wantedLux: In<'illuminance'>) {
  return distance * Math.sqrt(lux / wantedLux);
}

export default define({
  name: 'DISTANCEFOR',
  family: 'distance',
  summary: 'How far a small source must stand to give the light that is wanted.',
  job: 'You know what the lamp gives where it stands and want to know where to put it instead.',
  search: ['how far', 'move the lamp', 'where to put it', 'too hot', 'back off', 'closer'],
  parameters: [
    {
      name: 'lux',
      quantity: 'illuminance',
      domain: lightLevel,
      help: 'Reading taken facing the source.',
    },
    {
      name: 'distance',
      quantity: 'length',
      domain: onSet,
      help: 'Source to meter at that reading.',
    },
    {
      name: 'wanted_lux',
      quantity: 'illuminance',
      domain: lightLevel,
      help: 'Reading that is wanted.',
    },
  ],
  result: 'length',
  alike: ['INVERSESQUARE', 'PANELDISTANCE', 'DIMMERFOR'],
  limits:
    'Within 1 % from five times the source’s widest dimension. Not for focused beams or a large soft source close by: see PANELDISTANCE.',
  sources: [{ from: 'CIE S 017', at: 'photometric distance law, solved for the distance' }],
  examples: [
    { args: [800, 2, 200], result: 4, why: 'a quarter of the light is twice as far' },
    {
      args: ['50 fc', '10 ft', '200 fc'],
      result: 5 * 0.3048,
      why: 'four times the light is half as far',
    },
  ],
  laws: {
    'at that distance the wanted light arrives': (lux, distance, wantedLux) =>
      near(lux * (distance / run(lux, distance, wantedLux)) ** 2, wantedLux),
    'the light there is needs no move': (lux, distance) => near(run(lux, distance, lux), distance),
  },
  formula: 'distance * SQRT(lux / wanted_lux)',
  run,
});
