import { define } from '../define.ts';
import type { In } from '../values.ts';
import { fps, mains } from './parameters.ts';

function run(fps: In<'frameRate'>, mains: In<'frequency'>) {
  const pulses = 2 * mains;
  return Math.abs(pulses - fps * Math.round(pulses / fps));
}

export default define({
  name: 'FLICKERBEAT',
  family: 'time',
  summary: 'How often a second the picture pulses under mains light.',
  job: 'The picture breathes and you want to know whether the frame rate explains it.',
  search: ['flicker', 'beat', 'pulsing', 'breathing', 'how fast', 'mains'],
  parameters: [fps, mains],
  result: 'frequency',
  alike: ['FLICKERRESIDUE', 'FLICKERCHECK', 'FLICKERANGLE'],
  limits: 'How fast, not how much: a clean shutter shows none of it, whatever the beat.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [25, 60], result: 5, why: '120 pulses a second against five times 25 frames' },
    { args: [24, 50], result: 4, why: '100 pulses against four times 24 frames' },
    { args: [24, 60], result: 0, why: 'in step: the picture stands' },
  ],
  laws: {
    'at most half the frame rate': (fps, mains) => run(fps, mains) <= fps / 2 + 1e-9,
  },
  formula: 'ABS(2 * mains - fps * ROUND(2 * mains / fps, 0))',
  run,
});
