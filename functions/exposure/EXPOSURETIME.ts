import { define } from '../define.ts';
import { above, positive, sampled } from '../domains.ts';
import { refuse } from '../values.ts';

export default define({
  name: 'EXPOSURETIME',
  family: 'exposure',
  summary: 'Exposure time of a shutter written as an angle or as a time.',
  job: 'Camera crews say 180° or 1/50 as they please, and the sum needs seconds.',
  search: ['shutter', 'angle to time', 'shutter speed'],
  parameters: [
    {
      name: 'shutter',
      quantity: 'measured',
      kinds: ['angle', 'time'],
      domain: above(0, 3600),
      help: '180° or 1/50 s; a plain number is an angle.',
    },
    {
      name: 'fps',
      quantity: 'frameRate',
      domain: sampled(positive, 1, 240),
      help: 'Frames a second.',
    },
  ],
  result: 'time',
  alike: ['SHUTTERTIME', 'SHUTTERANGLE'],
  limits: 'A time longer than a frame is refused: the shutter cannot be open that long.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['180°', 25], result: 1 / 50, why: 'half of a twenty-fifth' },
    { args: ['1/50 s', 25], result: 1 / 50, why: 'a time stays what it is' },
    {
      args: ['172.8°', 24],
      result: 1 / 50,
      why: 'the clean angle at 24 fps on 50 Hz',
      within: 1e-15,
    },
  ],
  formula: {
    none: 'The equation depends on what was written: a time as it stands, or angle / 360 / fps.',
    equation: 't = angle / 360 / fps',
  },
  run: ({ measured, value }, fps) => {
    const time = measured === 'angle' ? value / 360 / fps : value;
    if (measured === 'angle' && value > 360)
      return refuse(`A shutter angle is at most 360°, not ${value}°.`);
    if (time > (1 + 1e-9) / fps) {
      return refuse(`A shutter cannot be open for ${value} s at ${fps} frames a second.`);
    }
    return time;
  },
});
