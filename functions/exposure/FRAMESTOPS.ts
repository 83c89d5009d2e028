import { define } from '../define.ts';
import { framesPerSecond } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(fps: In<'frameRate'>, baseFps: In<'frameRate'>) {
  return Math.log2(fps / baseFps);
}

export default define({
  name: 'FRAMESTOPS',
  family: 'exposure',
  summary: 'How many stops more light a frame rate needs than another, at the same shutter angle.',
  job: 'The shot goes to slow motion and you want to know what that costs.',
  search: ['slow motion', 'high speed', 'overcrank', 'undercrank', 'frame rate'],
  parameters: [
    {
      name: 'fps',
      quantity: 'frameRate',
      domain: framesPerSecond,
      help: 'Frames per second of this shot.',
    },
    {
      name: 'base_fps',
      quantity: 'frameRate',
      domain: framesPerSecond,
      help: 'Frames per second that the light was set for.',
    },
  ],
  result: 'stops',
  alike: ['SHUTTERTIME', 'EIAFTER', 'FLICKERTIME'],
  limits: 'Same shutter angle at both rates; positive means that more light is needed.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [96, 24], result: 2, why: 'four times the frames, a quarter of the time for each' },
    { args: [12, 24], result: -1, why: 'half the rate has a stop to spare' },
    { args: [48, 23.976], result: Math.log2(2.002), why: 'the rounded rate means 24000/1001' },
  ],
  laws: {
    'back to the base is the same the other way': (fps, baseFps) =>
      near(run(fps, baseFps), -run(baseFps, fps)),
  },
  formula: 'LN(fps / base_fps) / LN(2)',
  run,
});
