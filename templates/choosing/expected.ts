import { comesTo, type ExpectedCell } from '../expected.ts';

/** Before anything is chosen: nothing taken, nothing lit. */
export const expected: readonly ExpectedCell[] = [
  comesTo('J11', 300 / (230 * 0.95), 'a panel: watts over volts and power factor'),
  comesTo('J14', 800 / 230, 'an open face'),
  comesTo('B5', 0, 'nothing is taken'),
  comesTo('L9', 0, 'so there is no light'),
  comesTo('O9', '', 'no fourth point'),
];
