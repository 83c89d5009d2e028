import { define } from '../define.ts';
import { stopsInWords } from '../stops/verdictWords.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';
import { keepsStep, nearestCleanAngle, residue } from './flicker.ts';
import { fps, mains, time } from './parameters.ts';

/** From brightest to darkest frame; less than this is seen by nobody. */
const invisible = 0.01;

function run(
  time: In<'time'>,
  fps: In<'frameRate'>,
  mains: In<'frequency'>,
): string | FunctionError {
  if (time > (1 + 1e-9) / fps) {
    return refuse(
      `FLICKERCHECK: time must be no more than one frame, ${1 / fps} s, not ${time} s.`,
    );
  }
  const left = residue(time, mains, 1);
  const stops = Math.log2((1 + left) / (1 - left));
  if (stops < invisible) return 'clean';
  const swing = stops > 10 ? 'more than 10 stops' : `up to ${stopsInWords(stops)}`;
  const what = keepsStep(fps, mains) ? `fixed bands of ${swing}` : `pulses by ${swing}`;
  return `${what}; ${remedy(time, fps, mains)}`;
}

function remedy(time: number, fps: number, mains: number): string {
  const angle = nearestCleanAngle(fps, mains, 360 * time * fps);
  return angle === undefined
    ? 'no shutter is clean at this frame rate'
    : `clean at ${Number(angle.toFixed(1))}°`;
}

export default define({
  name: 'FLICKERCHECK',
  family: 'time',
  summary:
    'Says in words whether mains light flickers in the picture, and which angle would be clean.',
  job: 'You set frame rate and shutter in a house with its own lights and want to be warned.',
  search: ['flicker', 'banding', 'pulsing', 'rolling shutter', 'safe', 'check', 'mains'],
  parameters: [time, fps, mains],
  result: 'text',
  alike: ['FLICKERANGLE', 'FLICKERRESIDUE', 'FLICKERTIME'],
  limits:
    'The worst case: a source that swings all the way like a sine. Under 0.01 stop counts as clean. In step with the mains a rolling shutter may show fixed bands, a global one nothing.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['1/50', 25, 50], result: 'clean', why: '25 fps at 180° on 50 Hz: two whole pulses' },
    {
      args: ['1/48', 24, 50],
      result: 'pulses by up to 0.1 stop; clean at 172.8°',
      why: '24 fps at 180° on 50 Hz lets some through',
    },
    {
      args: ['1/48', 24, 60],
      result: 'fixed bands of up to 0.4 stop; clean at 144°',
      why: 'in step with 60 Hz, so the bands stand still',
    },
  ],
  laws: {
    'a shutter open for whole pulses is clean': (_time, fps, mains) => {
      const angle = nearestCleanAngle(fps, mains, 180);
      return angle === undefined || run(angle / 360 / fps, fps, mains) === 'clean';
    },
    'a frame without end is refused': (time, fps, mains) =>
      isError(run(time, fps, mains)) === time > (1 + 1e-9) / fps,
  },
  formula: {
    none: 'It gives words; FLICKERRESIDUE and FLICKERANGLE give the numbers behind them.',
    equation:
      'log2((1 + r) / (1 − r)) stops, r = |sin(2π · mains · time) / (2π · mains · time)|; fixed bands where 2 · mains / fps is whole, else pulses',
  },
  run,
});
