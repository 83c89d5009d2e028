import { comesTo } from '../expected.ts';

/**
 * A stop down takes the colour temperature by 2^−(0.42 / 3.4) = 2^−0.12353 = 0.91794: the exponents of
 * voltage for colour temperature and for light as lighting handbooks print them (from memory).
 * 3200 K are 312.5 mired.
 */
export const expected = [
  comesTo('B5', 0, 'at full nothing is lost'),
  comesTo('C5', 3200, 'at full'),
  comesTo('E5', 'matches', 'the lamp is balanced as the camera is'),
  comesTo('B7', 0.322, 'log2(1 / 0.8)', 0.0005),
  comesTo('E7', 'matches', '8.7 mired, and 10 are allowed'),
  comesTo('B10', 1, 'half the light'),
  comesTo('C10', 2937.4, '3200 · 0.91794', 0.1),
  comesTo('D10', 27.9, '10⁶ / 2937.4 − 312.5 = 340.4 − 312.5', 0.05),
  comesTo('E10', '28 mired too warm', 'lower colour temperature than the camera is balanced for'),
  comesTo('B13', 2, 'a quarter of the light', 1e-12),
  comesTo('C13', 2696.4, '3200 · 0.91794²', 0.2),
  comesTo('D13', 58.4, '10⁶ / 2696.4 − 312.5', 0.05),
  comesTo('B16', 3, 'an eighth of the light', 1e-12),
  comesTo('C16', 2475.1, '3200 · 0.91794³', 0.2),
  comesTo('B17', 3.322, 'log2(10)', 0.0005),
  comesTo('C17', 2407.8, '3200 · 10^−0.12353 = 3200 · 0.75244', 0.1),
  comesTo('B18', 4, 'a sixteenth of the light', 1e-12),
  comesTo('D19', 139.9, '3200 · 0.69069 = 2210.2 K, 452.4 − 312.5', 0.1),
  comesTo('E19', '140 mired too warm', 'a twentieth of the light'),
] as const;
