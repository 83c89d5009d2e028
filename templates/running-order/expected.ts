import { comesTo, type ExpectedCell } from '../expected.ts';

/** 0.4 h to rig a light, 0.2 to strike, 0.25 to move, 2 to travel. */
export const expected: readonly ExpectedCell[] = [
  comesTo('A19', '12B interview, close', 'shot as the second'),
  comesTo('O19', 1, 'the fill goes close'),
  comesTo('S20', 'no moves, the rig of 12B interview, close', 'the same lights at the same places'),
  comesTo('M21', 1, 'the bench light comes'),
  comesTo('N21', 3, 'fill and both of the canvas go'),
  comesTo('O21', 1, 'the key goes to the bench'),
  comesTo('P21', 1.25, '0.4 + 3 · 0.2 + 0.25', 1e-9),
  comesTo('P22', 3.4, 'all three out, two in, and the way: 0.6 + 0.8 + 2', 1e-9),
  comesTo('Q19', 46_286 + 11.5 / 24, '08:00, 2 h to rig and 1.5 h to shoot', 1e-6),
  comesTo('Q22', 46_287 + 8 / 24, '16:30 and 6.4 h: past 19:00, so the next morning', 1e-6),
  comesTo('Q23', 46_288 + 8 / 24, '14:24 and 5.2 h: past 19:00 again', 1e-6),
  comesTo('T22', 'Boat shed, slip, –, door, –, –, –, –, –.', 'no light is a dash'),
  comesTo(
    'B3',
    '22 moves, 10.5 h to rig, strike and travel; as listed 38 moves',
    '5 + 1 + 0 + 5 + 5 + 4 + 2; 5 + 5 + 5 + 7 + 7 + 7 + 2',
  ),
];
