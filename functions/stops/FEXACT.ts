import { define } from '../define.ts';
import { lensStop } from '../domains.ts';
import { exactMark, marks, type Mark, type Parts } from '../marks/index.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { parts } from './scaleParameter.ts';

const engraved: readonly Mark[] = [...marks[1], ...marks[2], ...marks[3]];

/** A mark arrives as its exact value; its name tells where it lies on another scale. */
function run(mark: In<'fNumber'>, parts: number | undefined) {
  const name = engraved.find(({ exact }) => exact === mark)?.nominal ?? mark;
  const onScale = parts === undefined ? mark : exactMark(name, parts as Parts);
  return onScale === name ? mark : onScale;
}

export default define({
  name: 'FEXACT',
  family: 'stops',
  summary: 'The exact f-number that an engraved mark stands for.',
  job: 'You want to see what a mark really means, or which mark of two scales was meant.',
  search: ['exact', 'mark', 'real f-number', 'engraved', '5.6', 'rounded name'],
  parameters: [
    {
      name: 'mark',
      quantity: 'fNumber',
      domain: lensStop,
      help: 'The mark as engraved, such as 5.6.',
    },
    {
      ...parts,
      optional: true,
      help: 'Scale that it stands on: 1 for whole stops, 2 for halves, 3 for thirds; the nearer one unless given.',
    },
  ],
  result: 'fNumber',
  alike: ['FMARK', 'FTENTHS', 'FSTOPS'],
  limits: 'A number that is no mark, or no mark of that scale, keeps its own value.',
  sources: [{ from: 'ISO 517', at: 'series of f-numbers' }],
  examples: [
    { args: [5.6], result: 2 ** 2.5, why: '5.6 is a rounded name for 2^(5/2)' },
    { args: [1.2, 3], result: 2 ** (1 / 3), why: 'f/1.2 among thirds of a stop' },
    { args: [1.2, 2], result: 2 ** 0.25, why: 'f/1.2 among halves: another value' },
    {
      args: ['f/13', 2],
      result: 2 ** 3.75,
      why: 'f/13 is a third-stop mark unless halves are meant',
    },
  ],
  laws: {
    'what is exact stays exact': (mark, parts) =>
      near(run(run(mark, parts), parts), run(mark, parts)),
  },
  formula: {
    none: 'The engraved names are a table; they do not follow from rounding the exact values.',
    equation: 'N = 2^(k / 2p), k = round(2p · log2 N)',
  },
  run,
});
