import { define } from '../define.ts';
import { onSet } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(nearer: In<'length'>, farther: In<'length'>) {
  return 2 * Math.log2(farther / nearer);
}

export default define({
  name: 'FALLOFF',
  family: 'distance',
  summary: 'Stops lost between a near and a far distance from a small source.',
  job: 'You want to know how much darker the back of the table is than the front.',
  search: ['inverse square', 'how fast it drops', 'front to back', 'drop', 'depth'],
  parameters: [
    { name: 'near', quantity: 'length', domain: onSet, help: 'Source to the near place.' },
    { name: 'far', quantity: 'length', domain: onSet, help: 'Source to the far place.' },
  ],
  result: 'stops',
  alike: ['INVERSESQUARE', 'DISTANCEFOR', 'FARFIELD'],
  limits:
    'For a small source; a large soft source close by falls off more slowly: compare two PANELLUX.',
  sources: [{ from: 'CIE S 017', at: 'photometric distance law, in stops' }],
  examples: [
    { args: [2, 4], result: 2, why: 'twice as far loses two stops' },
    {
      args: ['4 m', 4 * Math.SQRT2],
      result: 1,
      why: 'from 4 to 5.66 m: metres follow the scale of f-numbers, a stop a mark',
    },
    { args: [3, 3], result: 0, why: 'the same distance loses nothing' },
  ],
  laws: {
    'one step after another adds up': (nearer, farther) =>
      near(run(nearer, 2 * farther), run(nearer, farther) + 2),
    'the way back gains what the way out lost': (nearer, farther) =>
      near(run(nearer, farther), -run(farther, nearer)),
  },
  formula: '2 * LN(far / near) / LN(2)',
  run,
});
