import { comesTo } from '../expected.ts';

/**
 * The lamps are invented; the profile has 26,000 cd in its middle and a beam of 19°, the spot
 * 48,000 cd, the soft panel 4300 cd, the open face 8200 cd and a beam of 100° across.
 */
export const expected = [
  comesTo('H3', 179.5, '26,000 / 3.2² · 10 % · 2^(−1/2)', 0.1),
  comesTo('J3', -0.419, 'log2(179.5 / 240)', 0.001),
  comesTo('K3', '0.4 stop under', 'a third is allowed'),
  comesTo('L3', 2.768, '3.2 · √(179.5 / 240)', 0.001),
  comesTo('M3', 1.071, '2 · 3.2 · tan 9.5°', 0.001),
  comesTo('N3', 1.79, '2 · atan(0.1 / 6.4)', 0.005),
  comesTo('O3', 0.5, 'five times its lens of 10 cm', 1e-9),
  comesTo('P3', '', '3.2 m is far enough'),
  comesTo('Q3', 200, 'as its file says'),
  comesTo('H4', 339.9, '8200 / 2.8² · 65 % · 2^−1', 0.1),
  comesTo('M4', 6.674, '2 · 2.8 · tan 50°', 0.01),
  comesTo('H5', 68.25, '4300 / 2.1² · 7 %', 0.01),
  comesTo(
    'P5',
    'near: up to 0.1 stop less',
    '2.1 m is less than 5 · √(0.6² + 0.3²) = 3.35 m; log2(1 + (0.671 / 4.2)²) = 0.036',
  ),
  comesTo('P7', 'near: up to 0.5 stop less', 'log2(1 + (1.697 / 3)²) = 0.4005, upwards'),
  comesTo('H6', 635.7, '48,000 / 4.8768² · 2^(−5/3): 16 feet are 4.8768 m', 0.1),
  comesTo('L6', 5.02, '4.8768 · √(635.7 / 600)', 0.001),
  comesTo('Q7', 'not stated', 'a frame typed in from one reading'),
  comesTo('H14', 1885, '620 lx at 2 m are 1928 cd/m²; at 1 m corner factors of 0.6 by 0.6', 1),
  comesTo('I14', 2480, '620 · (2 / 1)²', 1e-9),
  comesTo('J14', 0.396, 'log2(2480 / 1885)', 0.001),
  comesTo('N14', 61.9, '2 · atan(0.6)', 0.05),
  comesTo('E15', 376.7, '35 · 10.764', 0.05),
  comesTo('I15', 167.4, '376.7 · (2 / 3)²', 0.05),
] as const;
