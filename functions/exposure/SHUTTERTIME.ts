import { define } from '../define.ts';
import { framesPerSecond, shutterAngle } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(angle: In<'angle'>, fps: In<'frameRate'>) {
  return angle / 360 / fps;
}

export default define({
  name: 'SHUTTERTIME',
  family: 'exposure',
  summary: 'Exposure time of a shutter angle at a frame rate.',
  job: 'The camera is set in degrees and the meter wants a time.',
  search: ['shutter angle', 'exposure time', 'degrees to seconds', '180 degrees', 'shutter speed'],
  parameters: [
    {
      name: 'angle',
      quantity: 'angle',
      domain: shutterAngle,
      help: 'Shutter angle in degrees, up to 360.',
    },
    {
      name: 'fps',
      quantity: 'frameRate',
      domain: framesPerSecond,
      help: 'Frames per second that the camera runs at; 23.976 means 24000/1001.',
    },
  ],
  result: 'time',
  alike: ['SHUTTERANGLE', 'FRAMESTOPS', 'FLICKERANGLE'],
  limits: 'The frame rate of the camera, not of the project.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [180, 24], result: 1 / 48, why: 'half of every 1/24 s' },
    { args: ['172.8°', 24], result: 1 / 50, why: '24 fps at 1/50 s' },
    { args: [180, 23.976], result: 1001 / 48_000, why: 'the rounded rate means its exact one' },
  ],
  laws: {
    'the time gives the angle back': (angle, fps) => near(run(angle, fps) * 360 * fps, angle),
    'twice the frame rate halves the time': (angle, fps) =>
      near(run(angle, 2 * fps), run(angle, fps) / 2),
  },
  formula: 'angle / 360 / fps',
  run,
});
