import { comesTo, type ExpectedCell } from '../expected.ts';

const clock = (cell: string, hours: number, minutes: number, why: string, within: number) =>
  comesTo(cell, (hours * 60 + minutes) / 1440, why, within / 1440);

/**
 * Hours x: 0, 0.5, 1, 1.5, 2, mean 1. Stops y: 0, −0.1, −0.3, −0.4, −0.7, mean −0.3.
 * Σ(x − 1)(y + 0.3) = −0.3 − 0.1 + 0 − 0.05 − 0.4 = −0.85; Σ(x − 1)² = 1 + 0.25 + 0 + 0.25 + 1 = 2.5.
 * The line: −0.85 / 2.5 = −0.34 an hour, −0.3 + 0.34 = 0.04 at the first.
 * By the line 0.04, −0.13, −0.30, −0.47, −0.64; off it −0.04, 0.03, 0, 0.07, −0.06.
 * 24 November at 55° north, 1.5° west. Almanac, from memory: declination −20.57°, the sun 13.2 min early:
 * it passes the meridian at 12 h + 1.5° / 15 − 13.2 min = 11:52.8.
 */
export const expected: readonly ExpectedCell[] = [
  comesTo('E12', 0, 'the first is what is counted from'),
  comesTo('E16', -0.7, 'seven tenths under', 1e-9),
  comesTo('F14', 'agrees', 'three tenths are within a third'),
  comesTo('F15', '0.4 stop under', 'four are not'),
  comesTo('I15', 1.5, 'from 13:00 to 14:30', 1e-9),
  comesTo('B7', -0.34, '−0.85 / 2.5', 1e-9),
  comesTo('D7', 0.04, '−0.3 + 0.34 · 1', 1e-9),
  comesTo('J15', -0.47, '0.04 − 0.34 · 1.5', 1e-9),
  comesTo('K15', 0.07, '−0.4 + 0.47', 1e-9),
  comesTo('F7', 0.060553, '√((0.0016 + 0.0009 + 0 + 0.0049 + 0.0036) / 3) = √0.0036667', 1e-6),
  comesTo('B8', 0.12179, '3.18 · 0.060553 / √2.5: t for 3 degrees of freedom', 1e-5),
  clock('D8', 14, 6, '(1/3 + 0.04) / 0.34 = 1.098 h = 65.9 min after 13:00', 0.01),
  comesTo('F8', 5, 'of sixteen rows five are filled'),
  comesTo('B9', -0.7, 'the reading of 15:00', 1e-9),
  comesTo('E17', '', 'no reading'),
  comesTo('G17', '', 'no time, no sun'),
  clock('B5', 7, 55.2, 'a = −0.833°: cos H = 0.5089, H = 59.41° = 3 h 57.6 min before', 2),
  clock('D5', 15, 50.4, '3 h 57.6 min after the meridian', 2),
  comesTo(
    'G12',
    13.15,
    'H = 16.8°: sin a = −0.28781 + 0.53701 · 0.9573 = 0.2263, 13.08°, and 0.07° of refraction',
    0.1,
  ),
  comesTo(
    'B6',
    'Down 0.34 stop an hour; the tolerance of 1/3 stop is left at 14:06. The sun rises at 07:55 and sets at 15:50.',
    'the drift is more than the 0.12 that the scatter hides',
  ),
];
