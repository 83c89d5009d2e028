import { comesTo } from '../expected.ts';

/** What can be worked out on paper; the levels are summed apart from us in the test. */
export const expected = [
  comesTo('I14', 180, 'it faces down the plan'),
  comesTo('E13', 0, 'upright: the lower corners are alike'),
  comesTo('J16', 'not even enough', 'more than half a stop between top and floor'),
  comesTo('B23', 1.3, 'the middle row, half of 2.6 m', 1e-12),
] as const;
