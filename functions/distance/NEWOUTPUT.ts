import { define } from '../define.ts';
import { sampled, shareAboveZero, zeroOrMore } from '../domains.ts';
import type { FunctionError, In } from '../values.ts';

function run(output: In<'share'>, factor: In<'factor'>): number | FunctionError {
  const share = output * factor;
  if (share <= 1 + 1e-12) return Math.min(share, 1);
  const needs =
    share < 100 ? `${Math.round(share * 100)} % of its light` : 'far more light than it has';
  return { code: '#NUM!', message: `needs ${needs}`, quiet: true };
}

export default define({
  name: 'NEWOUTPUT',
  family: 'distance',
  summary: 'The share of its light that a dimmed source must give after a correction.',
  job: 'You know the factor that closes the gap and want to know where to set the dimmer.',
  search: ['dimmer', 'dim', 'brighter', 'output', 'percent'],
  parameters: [
    { name: 'output', quantity: 'share', domain: shareAboveZero, help: 'Share of its light now.' },
    {
      name: 'factor',
      quantity: 'factor',
      domain: sampled(zeroOrMore, 0, 1),
      help: 'What its light must be multiplied by.',
    },
  ],
  result: 'share',
  alike: ['DIMMERFOR', 'DIMMERSTOPS', 'LIGHTFACTOR'],
  limits:
    'A share of light, not a control-channel value; a dimmed incandescent lamp also turns warmer.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [0.5, 0.5], result: 0.25, why: 'half of what it gives now' },
    { args: ['80 %', 1.25], result: 1, why: 'all it has' },
  ],
  laws: { 'a factor of one changes nothing': (output) => run(output, 1) === output },
  formula: 'output * factor',
  run,
});
