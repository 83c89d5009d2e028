import { define } from '../define.ts';
import { exposureTime, framesPerSecond } from '../domains.ts';
import { near } from '../near.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';

function run(time: In<'time'>, fps: In<'frameRate'>): number | FunctionError {
  const angle = 360 * time * fps;
  // A time worked out from 360° may come back a hair over.
  if (angle > 360 * (1 + 1e-12)) {
    return refuse(
      `SHUTTERANGLE: time must be no more than one frame, ${1 / fps} s, not ${time} s.`,
    );
  }
  return Math.min(angle, 360);
}

export default define({
  name: 'SHUTTERANGLE',
  family: 'exposure',
  summary: 'Shutter angle of an exposure time at a frame rate.',
  job: 'You want 1/50 s and the camera is set in degrees.',
  search: ['shutter angle', 'seconds to degrees', '1/50', 'shutter speed', '172.8'],
  parameters: [
    {
      name: 'time',
      quantity: 'time',
      domain: exposureTime,
      help: 'Exposure time of one frame; no longer than the frame itself.',
    },
    {
      name: 'fps',
      quantity: 'frameRate',
      domain: framesPerSecond,
      help: 'Frames per second that the camera runs at; 23.976 means 24000/1001.',
    },
  ],
  result: 'angle',
  alike: ['SHUTTERTIME', 'FLICKERANGLE', 'INCIDENTTIME'],
  limits: 'No shutter is open for longer than its frame: over 360° is refused.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['1/50', 24], result: 172.8, why: '24 fps at 1/50 s' },
    { args: [0.01, 30], result: 108, why: '1/100 s at 30 fps' },
  ],
  laws: {
    'the angle gives the time back, or the time was too long': (time, fps) => {
      const angle = run(time, fps);
      return isError(angle) ? time * fps > 1 : near(angle / 360 / fps, time);
    },
  },
  formula: '360 * time * fps',
  run,
});
