import { comesTo } from '../expected.ts';

/**
 * N² = L · S · t / K = E · S · t / C (ISO 2720), K = 12.5 and C = 340; f/2.8 means N² = 8.
 * S · t is 800 / 50 = 16 for camera A, 1250 / 50 = 25 for B and 1250 / 200 = 6.25 for C.
 */
export const expected = [
  comesTo('B13', 1 / 50, '180 / 360 / 25'),
  comesTo('C13', 1 / 50, 'typed as a time'),
  comesTo('D13', 1 / 200, '180 / 360 / 100'),
  comesTo('B14', 800, 'no filters'),
  comesTo('B15', 6.25, '8 · 12.5 / 16'),
  comesTo('C15', 4, '8 · 12.5 / 25'),
  comesTo('D15', 16, '8 · 12.5 / 6.25'),
  comesTo('B16', 170, '340 · 8 / 16'),
  comesTo('C16', 108.8, '340 · 8 / 25'),
  comesTo('D16', 435.2, '340 · 8 / 6.25'),
  comesTo('B17', 565.7, '6.25 · 2^6.5 = 6.25 · 90.51', 0.05),
  comesTo('D17', 512, 'grey sits a stop up, so 5 of the 6 stops are left: 16 · 2^5'),
  comesTo('B18', 0.2762, '6.25 / 2^4.5 = 6.25 / 22.63', 0.0001),
  comesTo('D18', 0.25, 'and 6 are below it: 16 / 2^6'),
  comesTo('B20', 2 ** 1.5, 'camera A sets its own stop', 1e-12),
  comesTo('C20', 3.5355, '√(6.25 · 25 / 12.5) = √12.5', 0.0001),
  comesTo('D20', 1.7678, '√(6.25 · 6.25 / 12.5) = √3.125', 0.0001),
  comesTo('B21', 0, 'from its own stop'),
  comesTo('C21', 0.644, 'log2(1250 / 800) = log2(1.5625)', 0.0005),
  comesTo('D21', -1.356, 'log2(6.25 / 16)', 0.0005),
  comesTo('C22', -0.644, 'at one stop, less by what it is faster: log2(4 / 6.25)', 0.0005),
  comesTo('D22', 1.356, 'log2(16 / 6.25)', 0.0005),
  comesTo('B23', 'as camera A', 'itself'),
  comesTo('C23', '0.64 stop less', 'at f/2.8 the faster camera wants less light'),
  comesTo('D23', '1.36 stops more', 'a quarter of the time, 0.64 stop of it won back by the speed'),
  comesTo('B25', 'clean', '1/50 s is two pulses of 100 Hz light'),
  comesTo('B26', 'clean', 'the same time, typed as a time'),
  comesTo(
    'B27',
    'fixed bands of up to 2.2 stops; clean at 360°',
    'half a pulse: 2/π of the swing is left, log2(1.6366 / 0.3634) = 2.17; a whole frame is one pulse',
  ),
] as const;
