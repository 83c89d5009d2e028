import { comesTo, type ExpectedCell } from '../expected.ts';

export const expected: readonly ExpectedCell[] = [
  comesTo('B7', 'all back', 'two of two'),
  comesTo('B8', 'all back, 1 damaged', 'a torn cloth'),
  comesTo('B12', '1 missing', '11 − 10'),
  comesTo('I14', 14, '2 · 7'),
  comesTo('B17', 'not counted yet', 'nothing typed'),
  comesTo('B4', '1 not counted yet, 3 missing, 3 damaged', '1 + 2; frame, open face, lead'),
  comesTo('I4', 127, '15 + 22 + 64 + 14 + 12'),
  comesTo('B31', 'reorder 1', '2 − 1'),
  comesTo('F32', 0, 'enough'),
  comesTo('B33', 'reorder 4', '6 − 2'),
];
