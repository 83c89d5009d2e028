import { define } from '../define.ts';
import { countFromOne } from '../domains.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';
import { cleanAngle, nearestCleanAngle, pulsesAFrame } from './flicker.ts';
import { fps, mains } from './parameters.ts';

function run(
  fps: In<'frameRate'>,
  mains: In<'frequency'>,
  n: number | undefined,
): number | FunctionError {
  const angle = n === undefined ? nearestCleanAngle(fps, mains, 180) : cleanAngle(fps, mains, n);
  if (angle !== undefined && angle <= 360 * (1 + 1e-9)) return Math.min(angle, 360);
  const pulses = n === undefined || n === 1 ? 'one pulse' : `${n} pulses`;
  return refuse(
    `FLICKERANGLE: at ${fps} fps a frame is shorter than ${pulses} of the mains, so no shutter angle is clean.`,
  );
}

export default define({
  name: 'FLICKERANGLE',
  family: 'time',
  summary: 'Shutter angle that is open for whole pulses of mains light.',
  job: 'House fixtures flicker in the picture and you want the angle that does not see it.',
  search: ['flicker', 'clean angle', '172.8', '144', 'shutter', 'mains', 'banding'],
  parameters: [
    fps,
    mains,
    {
      name: 'n',
      quantity: 'number',
      domain: countFromOne,
      optional: true,
      help: 'How many pulses the shutter is open for; as many as bring it nearest to 180° unless given.',
    },
  ],
  result: 'angle',
  alike: ['FLICKERTIME', 'FLICKERCHECK', 'SHUTTERANGLE'],
  limits: 'For light that follows the mains. Of two angles as near to 180° the smaller is taken.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [24, 50], result: 172.8, why: 'two pulses at 50 Hz: the 1/50 s of 24 fps' },
    { args: [24, 60], result: 144, why: 'of 144° and 216° the smaller' },
    { args: [24, '60 Hz', 5], result: 360, why: 'five pulses fill the frame' },
    { args: [25, 50], result: 180, why: 'nothing to change at 25 fps' },
  ],
  laws: {
    'open for a whole number of pulses': (fps, mains, n) => {
      const angle = run(fps, mains, n);
      if (isError(angle)) return pulsesAFrame(fps, mains) < (n ?? 1);
      const pulses = (angle / 360) * pulsesAFrame(fps, mains);
      return Math.abs(pulses - Math.round(pulses)) < 1e-6 && pulses > 0.5;
    },
  },
  formula:
    '180 * fps / mains * IF(COUNT(n) = 1, n, MIN(INT(2 * mains / fps + 0.000000001), MAX(1, ROUNDUP(mains / fps - 0.500000001, 0))))',
  run,
});
