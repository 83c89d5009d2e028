import { comesTo, type ExpectedCell } from '../expected.ts';

export const expected: readonly ExpectedCell[] = [
  comesTo('B3', '6 of 9 rows', '12A with three lights, 12B with two, 12C with one'),
  comesTo('E6', 'A camera EI 800, T2.8', 'what it is set to'),
  comesTo(
    'E7',
    'B camera EI 1250 against 800: 0.64 stop more, T3.5 beside T2.8',
    'log2(1250 / 800) = 0.644; 2.828 · 2^0.322 = 3.54',
  ),
  comesTo('B16', '12C', 'scene 12 again on the fourth day'),
  comesTo('C16', 46_290, '25 September 2026'),
  comesTo('A17', '', 'no more of scene 12'),
];
