import { comesTo, type ExpectedCell } from '../expected.ts';

/** A week as three days, 4 % of insurance, 1200 to spend; travel at half and return at nothing. */
export const expected: readonly ExpectedCell[] = [
  comesTo('E12', 1, 'preparation in the loft'),
  comesTo('I12', 0.5, 'travel to the ice house'),
  comesTo('K12', 0, 'the way back'),
  comesTo(
    'D42',
    10,
    'stands on the 22nd: 7 in the loft and 3 in the shed, though 14 stand on the plans',
  ),
  comesTo('N42', 11, 'and a spare'),
  comesTo('D40', 4, 'tubes: 3 in the loft, 4 in the ice house, never on one day'),
  comesTo('N40', 5, 'and a spare'),
  comesTo('T42', 5.5, 'four days at a whole one, travel at half, shoot, nothing for the return'),
  comesTo('U42', 99, '11 · 3 · min(5.5, 3)'),
  comesTo('U47', 90, '60 · (0.5 + 1)'),
  comesTo('U38', 72, 'two frames: four days are a week at three, 2 · 12 · 3'),
  comesTo('G58', 260.9, 'weight out on the 22nd, summed by hand', 1e-9),
  comesTo('Q57', 324.6, '9 + 6 + 6 + 7 + 5 + 55 + 130 + 1.6 + 48 + 12 + 45', 1e-9),
  comesTo('G61', 1.2, '4 · 0.6 · 0.5 m²', 1e-9),
  comesTo('N63', 2, '12 · 6 m and a tenth are 79.2 m of 50'),
  comesTo('B3', 630, '108 + 72 + 48 + 60 + 99 + 39 + 12 + 48 + 54 + 90'),
  comesTo('D3', 139, '60 + 55 + 2 · 12'),
  comesTo('H3', 794.2, '630 + 139 + 25.20', 1e-9),
  comesTo('B4', '405.80 left of the budget', '1200 − 794.20'),
  comesTo('F4', 'goes in one load: 325 kg, 1.1 m³', '600 kg and 6 m³ may'),
  comesTo('B5', 'everything needed is on the order once', 'every name is there'),
];
