import { comesTo, type ExpectedCell } from '../expected.ts';

/** f/4 at ISO 800 and 1/50 s wants N² · C / (S · t) = 16 · 340 / 16 = 340 lx over 1.5 m. */
export const expected: readonly ExpectedCell[] = [
  comesTo('B2', 340, '16 · 340 · 50 / 800'),
  comesTo('C10', 900, 'one at the distance it was read from'),
  comesTo('D10', 1.404, 'log2(900 / 340)', 0.001),
  comesTo('E10', 4.767, '2 · 2 m · tan 50°', 0.001),
  comesTo('F10', 45 * 3 + 0.3 * 8 * 4 * 0.3, 'four days charged as three, and 9.6 kWh at 0.30'),
  comesTo('B10', 'enough, could be dimmed by 1.4 stops', '900 lx where 340 are wanted'),
  comesTo('C11', 587.76, '2 · 900 · (2 / 3.5)²', 0.005),
  comesTo('C12', 255.5, '511 lx through one stop'),
  comesTo('B12', '0.4 stops short', 'log2(255.5 / 340) = −0.41'),
  comesTo('B13', 'too narrow, by 0.3 m', '2 · 5 m · tan 7° = 1.23 m of 1.5 m'),
  comesTo('Q14', 6.9565, '1600 W on 230 V', 0.0001),
  comesTo('R14', 1, 'three of 3.48 A go on 80 % of 16 A'),
  comesTo('B14', 'enough', '393.75 lx'),
  comesTo('Q15', 1.449, '200 W at 0.6', 0.001),
  comesTo('B15', 'dearer and no better than Two panels, far', '587 lx over 8.3 m for less'),
  comesTo('A22', 'Fresnel, diffused', 'the cheapest of all: 54 and 6.24 for energy'),
  comesTo('G24', 300, 'one panel stands third by cost'),
  comesTo(
    'B6',
    'One panel, near is the cheapest that is enough, at 137.88.',
    'the fresnels are not',
  ),
];
