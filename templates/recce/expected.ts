import { comesTo, type ExpectedCell } from '../expected.ts';

/**
 * Altitudes and azimuths of the sun by the almanac’s formula, see tests/accuracy/references/sun.ts: on
 * 21 September at 15:00 it stands at 30.2° in 215.6°, on the 25th at 12:30 at 33.8°.
 */
export const expected: readonly ExpectedCell[] = [
  comesTo('K4', 30.25, 'the almanac at 14:00 universal time', 0.1),
  comesTo('L4', 215.6, 'the same', 0.1),
  comesTo('N4', 11_800, '800 + 15,500 · √sin 30.25° = 11,801'),
  comesTo('N6', 12_000, 'overcast: 300 + 21,000 · sin 33.77° = 11,973'),
  comesTo('C11', 'Sun in window 2 from 14:58 to 17:23', 'azimuth 215° at 14:58; 14° high at 17:23'),
  comesTo('O10', 0, 'it passes a metre beside the chair: 0.5 + 3 · tan 60.6°'),
  comesTo(
    'O11',
    67_000,
    '127,500 · exp(−0.21 / sin 30.25°) · 0.8 = 67,240; at the pane 0.32 m beside and 1.24 m up, in 0.6 and 1.6',
  ),
  comesTo('O15', 0, 'no sun out of an overcast sky'),
  comesTo('C20', '10.8 A free on the blue circuit', '16 · 0.8 − 400 / (230 · 0.9) = 10.87'),
  comesTo('I21', 12.8, '16 · 0.8'),
  comesTo('I23', 6, '10 · 0.8 − 460 / 230'),
  comesTo('F30', (Math.PI * 21) / 120, 'π · L / E'),
  comesTo('G34', 1.956, 'log2(0.698 / 0.18)', 0.001),
  comesTo('H41', 157.5, 'f/2.8 and a third, flat: 250 · 2^(10/3) / 16', 0.05),
  comesTo('H42', 301.4, '28 fc · 10.764', 0.05),
  comesTo('H43', 42.5, 'f/1.4 on the dome: 340 · 2 / 16', 1e-9),
];
