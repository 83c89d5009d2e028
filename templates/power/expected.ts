import { comesTo, type ExpectedCell } from '../expected.ts';

/** The sail loft as it is plugged in: three circuits of 230 V, 80 % of each to be used. */
export const expected: readonly ExpectedCell[] = [
  comesTo('G13', 300 / (230 * 0.95), 'watts over volts and power factor'),
  comesTo('G15', (2 * 650) / 230, 'two of tungsten at 5.65 A together'),
  comesTo('C17', 'L3', 'the bench circuit is on the third phase'),
  comesTo('H5', 600 / (230 * 0.95) + 400 / (230 * 0.9), 'two panels and what the house draws'),
  comesTo('J5', 8.12, '12.8 A less 4.68 A', 0.005),
  comesTo('B5', '8.1 A free', 'nothing is amiss'),
  comesTo('H6', 2900 / 230, 'four tungsten lamps: 12.6 A'),
  comesTo('K6', 151.3, 'twelve times that in the moment they are struck', 0.05),
  comesTo('B6', 'strike one after the other', '151 A is over three times 16 A'),
  comesTo('L7', 2, 'four tubes at half a milliampere'),
  comesTo('C27', 4.678, 'what circuit blue carries', 0.001),
  comesTo('D29', 200 / (230 * 0.6), 'the tubes: 200 W at 0.6'),
  comesTo('E29', 150 / (230 * 0.6), 'the house’s own on the bench'),
  comesTo(
    'C30',
    15.318,
    'rest 1.932, 12.609, 1.087 A: √(((10.676)² + (11.522)² + (0.845)²) / 2) = 11.123, and 4.195 electronic',
    0.002,
  ),
  comesTo('B30', 'fullest phase 10.1 A above the emptiest', '12.61 − 2.54'),
  comesTo('C33', 3700, '600 + 1300 + 1600 + 200 W'),
  comesTo('D33', 600 / 0.95 + 2900 + 200 / 0.6, 'watts over power factor'),
  comesTo('D34', 4831.1, 'a quarter more', 0.1),
  comesTo('D35', 10_875, '3 × 2900 VA on the fullest phase, a quarter more', 1e-6),
  comesTo(
    'F38',
    (2900 / 230) * 2 * 0.03 * 7.98 * 1.2,
    'IEC 60228 class 5, 2.5 mm²: 7.98 Ω/km at 20 °C; 1.2 times that at 70 °C',
    1e-9,
  ),
  comesTo('B38', 'within what is allowed', '7.2 V is 3.2 %'),
  comesTo('B39', 'too much: shorter, thicker or less on it', '19.3 V is 8.4 %'),
  comesTo('F44', 2.55, '150 Wh × 0.85 / 50 W'),
];
