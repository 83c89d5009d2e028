import { define } from '../define.ts';
import { onSet, positive, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(size: In<'length'>, times: In<'factor'>) {
  return size * times;
}

export default define({
  name: 'FARFIELD',
  family: 'distance',
  summary: 'Distance from which the inverse square law may be used for a source of a size.',
  job: 'You want to know whether a source may be reckoned as small from where the subject is.',
  search: ['five times rule', 'small source', 'when does inverse square hold', 'point source'],
  parameters: [
    { name: 'size', quantity: 'length', domain: onSet, help: 'Widest dimension of the lit face.' },
    {
      name: 'times',
      quantity: 'factor',
      domain: sampled(positive, 2, 20),
      default: 5,
      help: 'How many times its size; at five the error of a disc is 1 %, of a square 1.33 %.',
    },
  ],
  result: 'length',
  alike: ['INVERSESQUARE', 'INVERSESQUAREERROR', 'PANELLUX'],
  limits:
    'For matt faces. A lens or reflector is small only from much farther away, at the distance where its beam has formed.',
  sources: [{ from: 'IES Lighting Handbook', at: 'five-times rule (from memory)' }],
  examples: [
    { args: [1.2], result: 6, why: 'a 1.2 m face may be reckoned as small from 6 m' },
    { args: ['2 ft', 10], result: 20 * 0.3048, why: 'ten times for a closer answer' },
  ],
  laws: {
    'twice the size, twice as far': (size, times) =>
      near(run(2 * size, times), 2 * run(size, times)),
  },
  formula: 'size * times',
  run,
});
