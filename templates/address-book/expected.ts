import { comesTo, type ExpectedCell } from '../expected.ts';

export const expected: readonly ExpectedCell[] = [
  comesTo('D38', 600, 'two panels of 300 W'),
  comesTo('E38', 18, '2 · 9 kg'),
  comesTo('E39', 2.8, '2 · 1.4 kg', 1e-9),
  comesTo('F39', 0.02, '2 · 0.01 m³', 1e-9),
];
