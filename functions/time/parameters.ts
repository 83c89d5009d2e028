import type { Parameter } from '../define.ts';
import { exposureTime, framesPerSecond, positive, sampled } from '../domains.ts';

export const mains = {
  name: 'mains',
  quantity: 'frequency',
  domain: sampled(positive, 16, 400),
  help: 'Frequency of the mains; the light pulses twice as often.',
} as const satisfies Parameter;

export const fps = {
  name: 'fps',
  quantity: 'frameRate',
  domain: framesPerSecond,
  help: 'Frames per second that the camera runs at.',
} as const satisfies Parameter;

export const time = {
  name: 'time',
  quantity: 'time',
  domain: exposureTime,
  help: 'Exposure time of one frame, as written.',
} as const satisfies Parameter;
