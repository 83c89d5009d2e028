import { comesTo, type ExpectedCell } from '../expected.ts';

/** The sail loft of `loft.ts`. 3200 K is 312.5 mired; the kit is invented, in round figures. */
export const expected: readonly ExpectedCell[] = [
  comesTo('K10', '168 mired too blue', '10⁶ / 6900 = 144.9 mired; Duv 0.002 is within 0.003'),
  comesTo('P10', 167.57, '312.5 − 144.93', 0.005),
  comesTo('R10', -7.57, 'a full orange of 160 is so much short', 0.005),
  comesTo('V10', 202.2, '340 lx through 3/4 stop: 340 / 2^0.75', 0.05),
  comesTo(
    'L10',
    '6900 K at a 3200 K camera: 168 mired too blue; full orange leaves 8 mired and costs about 3/4 stop',
    'in a sentence',
  ),
  comesTo('K11', 'agrees', '10⁶ / 3250 = 307.7 mired, 4.8 off'),
  comesTo('O12', 'Half orange + Half magenta', '68.6 mired too blue, green by 0.010'),
  comesTo('R12', 11.4, '243.9 + 80 − 312.5', 0.01),
  comesTo('S12', 0.002, '0.010 − 0.008', 1e-12),
  comesTo('U12', 0.9, '0.45 and 0.45', 1e-12),
  comesTo('Z13', 7078, 'McCamy 1992: 449 n³ + 3525 n² + 6823.3 n + 5520.33, n = 0.2058', 5),
  comesTo('O13', 'none', 'nothing can be put on it'),
  comesTo('R14', 34.17, '10⁶ / 2400 − 70 − 312.5', 0.005),
  comesTo('F2', 2.55, '0.75 + 0.9 + 0.9', 1e-12),
  comesTo(
    'B4',
    'Leave Key panel, Skylight. Correct North window (full orange, 3/4 stop), then Bench tubes (half orange + half magenta, 1 stop), then Oil lamp (half blue, 1 stop).',
    'by loss: 0.75, 0.9 and 0.9',
  ),
  comesTo(
    'B5',
    'Fewer stay off if you leave North window and balance the camera to it, 6900 K: all lose 4 1/2 stops together; at the white wanted 2 1/2 stops, and 1 that cannot be filtered stays off.',
    'the skylight is within 4 mired of the window; 1.6 + 0.9 + 0.45 + 1.6 for the others',
  ),
  comesTo('F6', 0.38175, 'Σ E · x / y over Σ E / y of the five', 1e-5),
  comesTo('G6', 0.37101, 'Σ E over Σ E / y', 1e-5),
  comesTo('H33', 5.04, '4 panes of 0.9 m × 1.4 m', 1e-12),
  comesTo('J33', 5.6, 'one strip of 1.4 m off a roll of 1.2 m for each', 1e-12),
];
