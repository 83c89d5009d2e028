import { define } from '../define.ts';
import { lightLevel, sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(luminance: In<'luminance'>, greyLuminance: In<'luminance'>, stopsBelow: In<'stops'>) {
  return stopsBelow + Math.log2(luminance / greyLuminance);
}

export default define({
  name: 'FOOTROOM',
  family: 'exposure',
  summary: 'Stops left before a dark place sinks into noise.',
  job: 'You spot a dark corner and want to know whether the camera still sees into it.',
  search: ['shadows', 'noise', 'too dark', 'crushed', 'dark corner', 'latitude'],
  parameters: [
    {
      name: 'luminance',
      quantity: 'luminance',
      domain: lightLevel,
      help: 'Spot reading of the dark place.',
    },
    {
      name: 'grey_luminance',
      quantity: 'luminance',
      domain: lightLevel,
      help: 'What the taking stop puts at middle grey: SPOTLUMINANCE, not a reading of the card.',
    },
    {
      name: 'stops_below',
      quantity: 'stops',
      domain: sampled(zeroOrMore, 0, 10),
      help: 'Stops that the camera holds below middle grey.',
    },
  ],
  result: 'stops',
  alike: ['HEADROOM', 'SPOTLUMINANCE', 'GREYSTOPS'],
  limits: 'Negative means lost. As good as the camera’s own figure for its range.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [0.78125, 6.25, 5], result: 2, why: 'three stops under grey leave two of five' },
    { args: [0.1953125, 6.25, 4], result: -1, why: 'five stops under grey: lost by one' },
  ],
  laws: {
    'one stop darker, one stop less room': (luminance, greyLuminance, stopsBelow) =>
      near(
        run(luminance / 2, greyLuminance, stopsBelow),
        run(luminance, greyLuminance, stopsBelow) - 1,
      ),
    'grey itself has all the room': (_luminance, greyLuminance, stopsBelow) =>
      run(greyLuminance, greyLuminance, stopsBelow) === stopsBelow,
  },
  formula: 'stops_below + LN(luminance / grey_luminance) / LN(2)',
  run,
});
