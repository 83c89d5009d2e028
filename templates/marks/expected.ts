import { comesTo } from '../expected.ts';

/**
 * Fill and back are far from the marks: a third of a stop either way is 2^(1/6) = 1.1225 of the
 * distance. The key is a frame 1.2 m square.
 */
export const expected = [
  comesTo('J12', 0, 'the first mark is the reference'),
  comesTo(
    'M12',
    11.32,
    'a panel 0.6 m wide from √(2.4² + 1.8² + 0.4²) = 3.027 m: 2 · atan(0.3 / 3.027)',
    0.05,
  ),
  comesTo('N12', 1.72, 'a lens of 10 cm from √(1.2² + 2.6² + 1.7²) = 3.330 m', 0.005),
  comesTo('M21', 2.697, '3.027 / 1.1225', 0.01),
  comesTo('M22', 3.398, '3.027 · 1.1225', 0.01),
  comesTo('N21', 2.967, '3.330 / 1.1225', 0.002),
  comesTo('N22', 3.738, '3.330 · 1.1225', 0.002),
  comesTo('L20', 'Key', 'a column for each light'),
  comesTo('O20', '', 'three lights, and room for six'),
] as const;
