import { define } from '../define.ts';
import { lightLevel, sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(luminance: In<'luminance'>, greyLuminance: In<'luminance'>, stopsAbove: In<'stops'>) {
  return stopsAbove - Math.log2(luminance / greyLuminance);
}

export default define({
  name: 'HEADROOM',
  family: 'exposure',
  summary: 'Stops left before a bright place clips.',
  job: 'You spot a window or a lamp in shot and want to know whether the camera holds it.',
  search: ['clipping', 'highlights', 'window', 'too hot', 'blown out', 'latitude'],
  parameters: [
    {
      name: 'luminance',
      quantity: 'luminance',
      domain: lightLevel,
      help: 'Spot reading of the bright place.',
    },
    {
      name: 'grey_luminance',
      quantity: 'luminance',
      domain: lightLevel,
      help: 'What the taking stop puts at middle grey: SPOTLUMINANCE, not a reading of the card.',
    },
    {
      name: 'stops_above',
      quantity: 'stops',
      domain: sampled(zeroOrMore, 0, 10),
      help: 'Stops that the camera holds above middle grey.',
    },
  ],
  result: 'stops',
  alike: ['FOOTROOM', 'SPOTLUMINANCE', 'GREYSTOPS'],
  limits: 'Negative means lost. As good as the camera’s own figure for its range.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [400, 6.25, 7], result: 1, why: 'six stops over grey leave one of seven' },
    { args: [1600, 6.25, 7], result: -1, why: 'eight stops over grey: clipped by one' },
  ],
  laws: {
    'one stop brighter, one stop less room': (luminance, greyLuminance, stopsAbove) =>
      near(
        run(2 * luminance, greyLuminance, stopsAbove),
        run(luminance, greyLuminance, stopsAbove) - 1,
      ),
    'grey itself has all the room': (_luminance, greyLuminance, stopsAbove) =>
      run(greyLuminance, greyLuminance, stopsAbove) === stopsAbove,
  },
  formula: 'stops_above - LN(luminance / grey_luminance) / LN(2)',
  run,
});
