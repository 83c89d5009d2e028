import { comesTo, type ExpectedCell } from '../expected.ts';

const minutes = (cell: string, hours: number, rest: number, why: string): ExpectedCell =>
  comesTo(cell, (hours * 60 + rest) / 1440, why, 2 / 1440);

/**
 * 21 June at 55° north, 1.5° west. Almanac, from memory: declination 23.44°, the sun 1 min 50 s late.
 * It passes the meridian at 12 h + 1 h of summer time + 1.5° / 15 + 1 min 50 s = 13:07:50.
 * sin a = sin φ · sin δ + cos φ · cos δ · cos H = 0.32585 + 0.52624 · cos H.
 */
export const expected: readonly ExpectedCell[] = [
  minutes('B6', 4, 26.6, 'a = −0.833°: cos H = −0.6468, H = 130.30° = 8 h 41.2 min'),
  minutes('D6', 21, 49, '8 h 41.2 min after the meridian'),
  minutes('B7', 13, 7.8, 'on the meridian'),
  comesTo('D7', 58.44, '90 − 55 + 23.44', 0.05),
  minutes('B8', 5, 59.9, 'a = 9.91° lifted to 10°: cos H = −0.2922, H = 106.99° = 7 h 8.0 min'),
  minutes('D8', 20, 15.8, '7 h 8.0 min after the meridian'),
  minutes('A11', 4, 0, 'where the rows begin'),
  minutes('A17', 10, 0, 'six hours on'),
  comesTo('B17', 43.26, 'H = −46.96°: sin a = 0.6850, and 0.02° of refraction', 0.1),
  comesTo('C17', 113, 'sin A = cos δ · sin H / cos a = 0.9205, 67.0° east of south', 0.2),
  comesTo('D17', 'south-east', 'within 22.5° of 135°'),
  comesTo('G17', 1.063, '1 / tan 43.26°', 0.005),
  comesTo('D11', 'below horizon', 'before sunrise'),
  comesTo('G11', '', 'no sun, no shadow'),
  comesTo('D20', 'south', 'minutes before the meridian'),
  comesTo(
    'E20',
    100_000,
    'Janiczek and DeYoung at 58.4°: lg E = 3.74 + 2.578 − 1.716 + 0.402 = 5.004, to two figures',
    1e-6,
  ),
  comesTo('F20', 0, 'as good as the highest', 0.01),
];
