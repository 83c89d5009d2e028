import { define } from '../define.ts';
import { share } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { keepsStep, residue } from './flicker.ts';
import { fps, mains, time } from './parameters.ts';

function run(
  time: In<'time'>,
  mains: In<'frequency'>,
  modulation: In<'share'>,
  fps: In<'frameRate'> | undefined,
) {
  return fps !== undefined && keepsStep(fps, mains) ? 0 : residue(time, mains, modulation);
}

export default define({
  name: 'FLICKERRESIDUE',
  family: 'time',
  summary: 'How much of a flicker the shutter lets through: half the swing over the average.',
  job: 'A shutter is not quite clean and you want to know what is left of the flicker.',
  search: ['flicker', 'pulsing', 'how bad', 'modulation', 'ripple', 'mains'],
  parameters: [
    time,
    mains,
    {
      name: 'modulation',
      quantity: 'share',
      domain: share,
      default: 1,
      help: 'Swing of the source itself: all of it, from nothing to twice the average, unless given.',
    },
    {
      ...fps,
      optional: true,
      help: 'With the frame rate, nothing is left between frames that keep step with the mains.',
    },
  ],
  result: 'share',
  alike: ['FLICKERSTOPS', 'FLICKERCHECK', 'FLICKERTIME', 'FLICKERBEAT'],
  limits:
    'For a source that swings like a sine, (max − min) / (max + min) over all moments of exposure. In step with the mains a rolling shutter may still show fixed bands.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['1/50', 50], result: 0, why: 'two whole pulses: nothing left' },
    {
      args: ['1/60', 50],
      result: (Math.sqrt(3) / 2 / (5 * Math.PI)) * 3,
      why: '|sin(5π/3)| / (5π/3)',
    },
    { args: ['1/50', 60, 1, 24], result: 0, why: '24 frames keep step with 120 pulses a second' },
  ],
  laws: {
    'half the swing, half the residue': (time, mains, modulation, fps) =>
      near(run(time, mains, modulation / 2, fps), run(time, mains, modulation, fps) / 2),
    'never more than the source itself swings': (time, mains, modulation, fps) =>
      run(time, mains, modulation, fps) <= modulation,
  },
  formula:
    'IF(COUNT(fps) = 0, 1, IF(ABS(2 * mains / fps - ROUND(2 * mains / fps, 0)) <= 0.000000001 * 2 * mains / fps, IF(2 * mains / fps > 0.5, 0, 1), 1)) * modulation * ABS(SIN(2 * PI() * mains * time) / (2 * PI() * mains * time))',
  run,
});
