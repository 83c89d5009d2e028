import { comesTo, type ExpectedCell } from '../expected.ts';

/** A week as three days, 4 % of insurance, 900 to spend. */
export const expected: readonly ExpectedCell[] = [
  comesTo('F8', 3, '21, 22 and 23 September'),
  comesTo('K8', 256.5, '95 × 3 days less a tenth'),
  comesTo('K9', 0, 'in the price of the kit'),
  comesTo('K10', 108, '2 × 18 × 3'),
  comesTo('K11', 90, '2 × 15 × 3'),
  comesTo('K12', 40, 'five days at 12 are more than the week at 40'),
  comesTo('L12', 8, '40 over five days'),
  comesTo('K13', 240, '4 × 20 × 3'),
  comesTo('K14', 108, '6 × 6 × 3'),
  comesTo('B3', 842.5, '256.5 + 108 + 90 + 40 + 240 + 108'),
  comesTo('D3', 33.7, '4 % of it'),
  comesTo('B4', '23.80 left of the budget', '900 − 876.20'),
  comesTo('B24', 121.5, 'sail loft on the 21st: 85.5 + 36'),
  comesTo('B27', 0, 'nothing there on the 24th'),
  comesTo('C26', 38, 'boat shed on the 23rd: 30 + 8'),
  comesTo('E26', 159.5, 'both on the 23rd'),
  comesTo('F26', 8, 'one kit, two panels, two fresnels; two open faces and a frame'),
  comesTo('B31', 364.5, 'sail loft: 256.5 + 108'),
  comesTo('D31', 348, 'ice house: 240 + 108'),
  comesTo('E32', 0, 'every row is on a day and at a place'),
  comesTo(
    'B5',
    '159.50 on one day, 13 pieces out at most',
    'the 23rd; the 25th with 2 + 1 + 4 + 6',
  ),
];
