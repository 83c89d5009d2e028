import { comesTo, type ExpectedCell } from '../expected.ts';

/** What is read on the day, typed before the cells below are looked at. Invented. */
export const typed: readonly (readonly [cell: string, text: string])[] = [
  ['C9', '1.2 kcd/m2'],
  ['C10', '100 cd/m2'],
  ['C11', '25 cd/m2'],
  ['C13', '6.25 cd/m2'],
  ['C14', '0.3 fL'],
  ['C17', '0.2 cd/m2'],
];

/**
 * f/2.8 is 2^(3/2), so N² = 8; at 180° and 25 frames the time is 1/50 s, and 8 · 12.5 / (800 / 50) =
 * 6.25 cd/m² is grey (ISO 2720, K = 12.5). The camera holds 6.5 stops above it and 4.5 below.
 */
export const expected: readonly ExpectedCell[] = [
  comesTo('D3', 1 / 50, '180 / 360 / 25'),
  comesTo('D4', 6.25, '8 · 12.5 / 16'),
  comesTo('B6', 565.7, '6.25 · 2^6.5 = 6.25 · 90.51', 0.05),
  comesTo('D6', 0.2762, '6.25 / 2^4.5 = 6.25 / 22.63', 0.0001),
  comesTo('F6', 12.551, 'log2(1200 / 0.2) = log2(6000)', 0.0005),
  comesTo('D9', 7.585, 'log2(1200 / 6.25) = log2(192)', 0.0005),
  comesTo('F9', 'off table', 'the table ends four stops up'),
  comesTo('G9', -1.085, '6.5 − 7.585', 0.0005),
  comesTo('H9', 12.085, '4.5 + 7.585', 0.0005),
  comesTo('E9', 'clips by 1.1 stops', '1.085 past what the camera holds'),
  comesTo('I9', '', 'nothing is wanted of the brightest'),
  comesTo('D10', 4, '100 / 6.25 = 16', 1e-12),
  comesTo('F10', 0.952, 'the last row of the table', 1e-12),
  comesTo('E10', 'agrees', 'wanted four stops up'),
  comesTo('I10', 100, '6.25 · 2^4', 1e-12),
  comesTo('J10', '', 'nothing to do'),
  comesTo('D11', 2, '25 / 6.25 = 4', 1e-12),
  comesTo('F11', 0.686, 'on a row of the table', 1e-12),
  comesTo('E11', '1/2 stop under', '2 where 2.5 was wanted, and a third is allowed'),
  comesTo('I11', 35.36, '6.25 · 2^2.5 = 6.25 · 5.657', 0.005),
  comesTo('J11', 1.414, '2^0.5', 0.0005),
  comesTo('F13', 0.38, 'grey itself', 1e-12),
  comesTo('G13', 6.5, 'all the room there is', 1e-12),
  comesTo('D14', -2.604, '0.3 fL · 3.42626 = 1.0279 cd/m²; log2(1.0279 / 6.25)', 0.0005),
  comesTo('F14', 0.1562, '0.134 + (3 − 2.604) · (0.19 − 0.134)', 0.0001),
  comesTo('D17', -4.966, 'log2(0.2 / 6.25) = log2(0.032)', 0.0005),
  comesTo('F17', 0.068, '0.067 + (5 − 4.966) · (0.095 − 0.067)', 0.0001),
  comesTo('H17', -0.466, '4.5 − 4.966', 0.0005),
  comesTo('E17', 'lost by 0.5 stop', '0.466 below what the camera holds'),
  comesTo('J17', 1.953, 'it wants 0.966 stop more: 2^0.966', 0.001),
];

/** Cells that wait for a reading. */
export const waiting = ['D12', 'E12', 'F12', 'J12'] as const;
