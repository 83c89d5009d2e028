/** What a cell of the sample must come to, and how that is worked out by hand. */
export interface Expected {
  readonly sheet:
    | 'Sail loft'
    | 'Boat shed'
    | 'Camera'
    | 'Tungsten dimming'
    | 'Recce'
    | 'Sun'
    | 'Reflected survey'
    | 'Match'
    | 'Fixtures and distances'
    | 'Set plan'
    | 'Backdrop'
    | 'Marks'
    | 'Power'
    | 'Compare'
    | 'Choosing'
    | 'Hire';
  readonly cell: string;
  readonly value: number | string;
  /** How far off a number may be: what was rounded on paper. */
  readonly within?: number;
  readonly why: string;
}

const loft = (cell: string, value: number | string, why: string, within?: number): Expected => ({
  sheet: 'Sail loft',
  cell,
  value,
  why,
  ...(within !== undefined && { within }),
});
const shed = (cell: string, value: number | string, why: string, within?: number): Expected => ({
  ...loft(cell, value, why, within),
  sheet: 'Boat shed',
});
const on = (
  sheet: Expected['sheet'],
  cell: string,
  value: number | string,
  why: string,
  within?: number,
): Expected => ({ ...loft(cell, value, why, within), sheet });
const clock = (hours: number, minutes: number): number => (hours * 60 + minutes) / 1440;

/**
 * f/1.4, f/2 and f/2.8 stand for 2^(1/2), 2^1 and 2^(3/2); a third of a stop is 2^(1/6) in f-number.
 * At ISO 800 and 1/50 s, S · t = 16: a flat reading of E lux is N² = E · 16 / 250, and f/N on the
 * dome is E = 340 · N² / 16. At ISO 1250, S · t = 25.
 */
export const expected: readonly Expected[] = [
  loft('D3', 1 / 50, '180 / 360 / 25'),
  loft('D5', 6.25, 'N² · K / (S · t) = 8 · 12.5 / 16'),
  loft('F4', 'clean', '1/50 s is two pulses of 100 Hz light'),
  loft('B8', 3.17, '(2^(3/2) / 2^(2/3))² = 2^(5/3)', 0.005),
  loft('D8', 3.84, '(118.4 − 5.4 + 45.2 − 5.4) / (45.2 − 5.4)', 0.005),
  loft('E12', 0, 'the key side is at the taking stop'),
  loft('F12', 'agrees', 'no difference'),
  loft('E13', -5 / 3, 'from f/2.8 down to f/1.4 are 2 stops, and 1/3 up', 1e-9),
  loft('F13', '1/3 stop over', '−1 2/3 where −2 was wanted, and a quarter is allowed'),
  loft('S13', 53.5, '340 · 2^(4/3) / 16', 0.1),
  loft('U13', 39.8, '4.2 fc are 45.2 lx, less 0.5 fc = 5.4 lx with the lamps off', 0.1),
  loft('G13', 0.72, '1 + (42.5 − 53.5) / 39.8', 0.005),
  loft('H13', 2.47, '2.1 / √0.7225', 0.005),
  loft('I13', 0.05, '7 % · 0.7225 = 5.06 %', 0.001),
  loft('J13', '74 % of the light here is its own', '39.8 of 53.5'),
  loft('E14', 1, 'from f/2.8 to f/4', 1e-9),
  loft('E15', -2, 'from f/2.8 to f/1.4', 1e-9),
  loft('E16', -1.6, 'f/1.4 and four tenths', 1e-9),
  loft('F16', '0.4 stop over', '−1.6 where −2 was wanted'),
  loft('H16', 3.22, '2.8 · 2^(0.4 / 2)', 0.005),
  loft('I16', 0.49, '65 % · 2^−0.4', 0.005),
  loft('J16', 'if this lamp alone lights the point', 'no single reading was taken'),
  loft('E17', -0.56, 'log2((85 · 16 / 250) / 8) = log2(0.68)', 0.005),
  loft('E20', 7.585, 'log2(1200 / 6.25)', 0.001),
  loft('F20', 'clips by 1.1 stops', '7.585 − 6.5'),
  loft('E21', 0.143, 'log2(6.9 / 6.25)', 0.001),
  loft('E22', -3.506, 'log2(0.55 / 6.25)', 0.001),
  loft('F22', 'in range', 'a stop above the lowest'),
  loft('E25', -2.9, '10⁶ / 3230 − 10⁶ / 3200', 0.01),
  loft('E27', -167.6, '10⁶ / 6900 − 10⁶ / 3200', 0.05),
  loft(
    'F27',
    '168 mired too blue, green by 0.003',
    'higher colour temperature than the camera is balanced for, and the tint of the walk',
  ),
  loft('F25', '3 mired too blue, green by 0.001', '2.9 mired, Duv 0.0011'),
  shed('D3', 1 / 50, 'typed as a time'),
  shed('D5', 4, '8 · 12.5 / 25'),
  shed('E12', 1 / 3, 'f/3.2 is a third above f/2.8', 1e-9),
  shed('E13', -4 / 3, 'from f/3.2 down to f/2 are 1 1/3 stops', 1e-9),
  shed('B8', 2.52, '2^(4/3)', 0.001),
  shed('K13', 41.5, 'a decimal comma in the file'),
  shed('E14', 0.36, 'f/3.6 is no engraved mark, so it is 3.6: 2 · log2(3.6 / 2^(10/6))', 0.005),
  shed('E16', -7 / 3, 'from f/3.2 down to f/1.4', 1e-9),
  shed('E20', 0.485, 'log2(5.6 / 4)', 0.001),
  shed('B25', 0.0095, 'the tint from the note, with its decimal comma'),
  on('Camera', 'B15', 6.25, 'camera A is that of the sail loft: 8 · 12.5 / 16'),
  on('Camera', 'C15', 4, 'camera B is that of the boat shed: 8 · 12.5 / 25'),
  on('Camera', 'C23', '0.64 stop less', 'log2(1250 / 800)'),
  on('Tungsten dimming', 'E10', '28 mired too warm', '10⁶ / (3200 · 2^−(0.42 / 3.4)) − 312.5'),
  // 23 September at 55° north, 1.5° west: declination −0.1° at sunrise, −0.2° at noon and −0.3° at
  // sunset, the sun 7 min 30 s early (almanac, from memory): on the meridian at 12:58.5.
  on('Sun', 'B6', clock(6, 53.2), 'cos H = −0.0231, H = 6 h 5.3 min', 2 / 1440),
  on('Sun', 'D6', clock(19, 2.7), 'cos H = −0.0181, H = 6 h 4.2 min', 2 / 1440),
  on('Sun', 'D7', 34.8, '90 − 55 − 0.2', 0.1),
  on('Recce', 'C11', 'Sun in window 2 from 14:58 to 17:23', 'as in templates/recce'),
  on('Recce', 'H41', 157.5, 'at the speed and time of the sheet of the loft', 0.05),
  on('Reflected survey', 'F6', 12.41, 'log2(1200 / 0.22)', 0.005),
  on('Reflected survey', 'E9', 'clips by 1.1 stops', 'as on the sheet of the loft'),
  on('Reflected survey', 'F10', 0.844, '0.77 + 0.926 · 0.08, at log2(190 / 6.25) = 4.926', 0.001),
  on('Reflected survey', 'E11', '0.3 stop over', 'log2(31 / 6.25) = 2.31 where 2 was wanted'),
  on('Reflected survey', 'D14', -0.867, '1 fL is 3.426 cd/m²: log2(3.426 / 6.25)', 0.001),
  on('Reflected survey', 'E18', 'lost by 0.3 stop', 'log2(0.22 / 6.25) = −4.83, and 4.5 are held'),
  // What the walk of the loft says of key, fill and window. 3200 K is 312.5 mired; the kit is invented.
  on('Match', 'K10', '168 mired too blue', '10⁶ / 6900 = 144.9 mired; Duv 0.003 is still within'),
  on('Match', 'P10', 167.57, '312.5 − 144.93', 0.005),
  on('Match', 'R10', -7.57, 'a full orange of 160 is so much short', 0.005),
  on('Match', 'S10', 0.001, '0.003 − 0.002', 1e-12),
  on('Match', 'V10', 2.884, '0.5 fc = 5.38 lx through 0.9 stop: 5.382 / 2^0.9', 0.001),
  on(
    'Match',
    'L10',
    '6900 K at a 3200 K camera: 168 mired too blue; full orange + eighth magenta leaves 8 mired and costs about 1 stop',
    '0.75 and 0.15',
  ),
  on('Match', 'H11', 113.02, '11 fc are 118.40 lx, less 5.38 with the lamps off', 0.005),
  on('Match', 'K11', 'agrees', '10⁶ / 3230 = 309.6 mired, 2.9 off'),
  on('Match', 'K12', '18 mired too blue, green by 0.007', '312.5 − 295.0, and Duv 0.0068'),
  on('Match', 'R12', 2.49, '295.0 + 20 − 312.5', 0.005),
  on('Match', 'Z13', 4083.7, 'McCamy 1992: −449 n³ + 3525 n² − 6823.3 n + 5520.33, n = 0.2392', 5),
  on('Match', 'O13', 'Half orange + Half magenta', '67.7 mired too blue, green by 0.009'),
  on(
    'Match',
    'K14',
    'meant: 214 mired too warm',
    '10⁶ / 1900 = 526.3 mired, and a flame is to look like one',
  ),
  on('Match', 'O14', 'none', 'it is meant so'),
  on('Match', 'F2', 2.4, '0.9 + 0.6 + 0.9', 1e-12),
  on(
    'Match',
    'B4',
    'Leave Key, Oil lamp. Correct Fill (eighth orange + half magenta, 1/2 stop), then Window (full orange + eighth magenta, 1 stop), then Bench tube (half orange + half magenta, 1 stop).',
    'by loss: 0.6, 0.9 and 0.9',
  ),
  on(
    'Match',
    'B5',
    'It costs less to leave Fill and balance the camera to it, 3390 K and green by 0.007: all lose 1 1/2 stops together; at the white wanted 2 1/2 stops.',
    'window full orange + eighth green, key eighth blue + half green, tube quarter orange: 0.8 + 0.5 + 0.25',
  ),
  on('Match', 'F6', 0.41737, 'Σ E · x / y over Σ E / y of the five', 1e-5),
  on('Match', 'G6', 0.40112, 'Σ E over Σ E / y', 1e-5),
  on('Match', 'H33', 4.42, '2 pieces of 1.3 m × 1.7 m', 1e-12),
  on(
    'Match',
    'J33',
    5.2,
    'lying, two strips of 1.3 m off a roll of 1.2 m, and two pieces of each',
    1e-12,
  ),
  // The rig as planned, against what was read on the sheet of the loft with the same distances and outputs.
  on('Fixtures and distances', 'H3', 449.2, '4600 / 3.2²', 0.05),
  on(
    'Fixtures and distances',
    'H4',
    39.8,
    '7 % of 620 · (2 / 2.1)² and a little: a face of 1.2 m',
    0.1,
  ),
  on('Fixtures and distances', 'H5', 266.6, '26,000 / 3.5052² · 80 % · 2^(−8/3)', 0.05),
  on('Set plan', 'J5', 8 / 3, 'diffusion 2 and gel 2/3', 1e-9),
  on(
    'Set plan',
    'H12',
    158,
    '119 lx of the key through its frame, and what comes round the head',
    1,
  ),
  on('Set plan', 'U14', 'agrees', 'the back light a stop above the key, as it was read'),
  on(
    'Set plan',
    'U13',
    '0.8 stop over',
    'nothing stands in the way of a plan; in the loft −1 2/3 was read',
  ),
  on('Backdrop', 'J16', 'even enough', '0.7 stop, and one is allowed'),
  on('Marks', 'J12', 0, 'the first mark is the reference'),
  on('Power', 'B5', '8.1 A free', '12.8 A less two panels and what the house draws'),
  on('Compare', 'B2', 170, 'f/2.8 at ISO 800 and 1/50 s: 8 · 340 · 50 / 800'),
  on('Compare', 'B12', 'enough', '255 lx where 170 are wanted'),
  on('Choosing', 'M8', 42.5, 'two stops under the key'),
  on(
    'Hire',
    'C35',
    0.8 * (16 + 16 + 10) - 400 / (230 * 0.9) - 150 / (230 * 0.6),
    'breakers of the loft, 80 % of each, less what the house draws',
    1e-9,
  ),
];

/** Cells that wait, and for what. */
export const waiting: readonly Pick<Expected, 'sheet' | 'cell'>[] = [
  { sheet: 'Boat shed', cell: 'R17' },
  { sheet: 'Boat shed', cell: 'F17' },
];
