import { comesTo, type ExpectedCell } from '../expected.ts';

/**
 * ISO 800 and 1/50 s: S · t = 16, so N² = E · 16 / C with each meter's own constant (ISO 2720), 340
 * and 330 here. An offset is 2 · log2 of the second f-number over the first. By rows it is 0.2, 0.3,
 * 0.1, 0.2, 0.2, 0.3, 0.19973, 0.1: in all 1.59973.
 * Student's t for 7 degrees of freedom and 95 in 100 is 2.36: JCGM 100:2008, table G.2, from memory.
 */
export const expected: readonly ExpectedCell[] = [
  comesTo('F12', 4, '340 · 16 / 340 = 4²'),
  comesTo('D12', 0.2, 'two tenths over f/4', 1e-9),
  comesTo('F15', 5.65685, '√(680 · 16 / 340) = √32', 1e-5),
  comesTo('D15', 0.2, 'two tenths over f/5.6, which is √32', 1e-9),
  comesTo('D17', 0.3, 'f-numbers are held against each other as read', 1e-9),
  comesTo('G18', 4.28669, '√(379 · 16 / 330) = √18.37576', 1e-5),
  comesTo('D18', 0.19973, 'log2(18.37576 / 16) = log2(1.148485)', 1e-5),
  comesTo('D20', '', 'no pair'),
  comesTo('B7', 0.19997, '1.59973 / 8', 1e-5),
  comesTo('E13', 0.1, '0.3 − 0.2', 1e-4),
  comesTo('D7', 0.07559, '√((0.1² + 0.1² + 0.1² + 0.1²) / 7) = √0.005714', 1e-5),
  comesTo('F7', 0.2, '0.3 − 0.1', 1e-9),
  comesTo('B8', 0.06307, '2.36 · 0.07559 / √8', 1e-5),
  comesTo('D8', 0.04307, 'log2(340 / 330): a smaller constant reads more', 1e-5),
  comesTo('B9', 0.19997, 'told apart: 0.2 is more than 0.06', 1e-5),
  comesTo('F8', 379.06, '330 · 2^0.19997 = 330 · 1.14867', 0.01),
  comesTo('D9', 8, 'of twelve rows eight are filled'),
  comesTo(
    'B6',
    'Spare meter reads 0.20 stop over House meter: it can be told from the spread of 0.08 stop in 8 pairs.',
    'mean 0.20, spread 0.076',
  ),
  comesTo('C26', 3.73216, '4 · 2^(−0.19997 / 2) = 4 · 0.93304', 1e-4),
  comesTo('D26', 295.99, '340 · 3.73216² / 16', 0.05),
  comesTo('C27', 8.8768, '8 · 2^(0.25 − 0.099985) = 8 · 1.10960', 1e-3),
  comesTo('C28', 3.73216, '330 lx at its own constant are f/4', 1e-4),
  comesTo('C29', '', 'nothing typed'),
];
