import { define } from '../define.ts';
import { exactMark, nominalMark, type Parts } from '../marks/index.ts';
import type { In } from '../values.ts';
import { parts, writable } from './scaleParameter.ts';

function run(fNumber: In<'fNumber'>, parts: number) {
  return nominalMark(fNumber, parts as Parts);
}

export default define({
  name: 'FMARK',
  family: 'stops',
  summary: 'The engraved mark nearest to an f-number.',
  job: 'A calculation gives f/3.17 and you want to know where to set the ring.',
  search: ['round', 'nearest stop', 'lens marks', 'third stops', 'half stops', 'engraved'],
  parameters: [
    { name: 'f_number', quantity: 'fNumber', domain: writable, help: 'The f-number to be named.' },
    {
      ...parts,
      default: 3,
      help: 'Marks in a stop: 1 for whole stops, 2 for halves, 3 for thirds; thirds unless given.',
    },
  ],
  result: 'fNumber',
  alike: ['FEXACT', 'FTENTHS', 'FNUMBERAT'],
  limits: 'The mark is a rounded name: FSTOPS and the other f-number functions read it as exact.',
  sources: [{ from: 'ISO 517', at: 'marked f-numbers' }],
  examples: [
    { args: [2.2 * Math.SQRT2], result: 3.2, why: 'one stop over f/2.2 is the mark f/3.2' },
    { args: [3.17, 2], result: 3.3, why: 'a lens with half stops says 3.3' },
    { args: [3.17, 1], result: 2.8, why: 'the nearest whole stop' },
  ],
  laws: {
    'at most a sixth of a stop away on the scale of thirds': (fNumber) =>
      Math.abs(2 * Math.log2(exactMark(run(fNumber, 3), 3) / fNumber)) <= 1 / 6 + 1e-9,
  },
  formula: {
    none: 'The engraved names are a table; they do not follow from rounding the exact values.',
    equation: 'N = 2^(k / 2p), k = round(2p · log2 N)',
  },
  run,
});
