import { comesTo } from '../expected.ts';

/** What can be worked out on paper; the levels are summed apart from us in the test. */
export const expected = [
  comesTo('J5', 0.5, 'the diffusion of the back light'),
  comesTo('J12', 0, 'the first point is the key'),
  comesTo('U12', 'agrees', 'the key is wanted where it is'),
  comesTo('L11', 'Key', 'shares stand under the names of the lights'),
  comesTo('P11', '', 'four lights, and room for six'),
  comesTo('N15', 0, 'the back light shows the canvas its back'),
  comesTo('K13', 14, 'metered with the lamps off'),
] as const;
