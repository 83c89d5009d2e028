import { comesTo, type ExpectedCell } from '../expected.ts';

/** The sail loft as it is plugged in: three circuits of 230 V, 80 % of each to be used. */
export const expected: readonly ExpectedCell[] = [
  comesTo('G13', 300 / (230 * 0.95), 'watts over volts and power factor'),
  comesTo('G15', (2 * 650) / 230, 'two of tungsten at 5.65 A together'),
  comesTo('F17', 'L3', 'the bench circuit is on the third phase'),
  comesTo('G5', 600 / (230 * 0.95) + 400 / (230 * 0.9), 'two panels and what the house draws'),
  comesTo('I5', 8.12, '12.8 A less 4.68 A', 0.005),
  comesTo('L5', '8.1 A free', 'nothing is amiss'),
  comesTo('G6', 2900 / 230, 'four tungsten lamps: 12.6 A'),
  comesTo('J6', 151.3, 'twelve times that in the moment they are struck', 0.05),
  comesTo('L6', 'strike one after the other', '151 A is over three times 16 A'),
  comesTo('K7', 2, 'four tubes at half a milliampere'),
  comesTo('B27', 4.678, 'what circuit blue carries', 0.001),
  comesTo('C29', 200 / (230 * 0.6), 'the tubes: 200 W at 0.6'),
  comesTo('D29', 150 / (230 * 0.6), 'the house’s own on the bench'),
  comesTo(
    'B30',
    15.318,
    'rest 1.932, 12.609, 1.087 A: √(((10.676)² + (11.522)² + (0.845)²) / 2) = 11.123, and 4.195 electronic',
    0.002,
  ),
  comesTo('C30', 'the fullest phase carries 10.1 A more than the emptiest', '12.61 − 2.54'),
  comesTo('B33', 3700, '600 + 1300 + 1600 + 200 W'),
  comesTo('C33', 600 / 0.95 + 2900 + 200 / 0.6, 'watts over power factor'),
  comesTo('C34', 4831.1, 'a quarter more', 0.1),
  comesTo('C35', 10_875, '3 × 2900 VA on the fullest phase, a quarter more', 1e-6),
  comesTo(
    'E38',
    (2900 / 230) * 2 * 0.03 * 7.98 * 1.2,
    'IEC 60228 class 5, 2.5 mm²: 7.98 Ω/km at 20 °C; 1.2 times that at 70 °C',
    1e-9,
  ),
  comesTo('H38', 'within what is allowed', '7.2 V is 3.2 %'),
  comesTo('H39', 'too much: shorter, thicker or less on it', '19.3 V is 8.4 %'),
  comesTo('E44', 2.55, '150 Wh × 0.85 / 50 W'),
];
