import { define } from '../define.ts';
import { above, sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { radians } from './degrees.ts';
import type { In } from '../values.ts';

function run(lumens: In<'flux'>, angle: In<'angle'>) {
  // 2π(1 − cos θ/2), written as a square so that a narrow beam loses no digits.
  const solidAngle = 4 * Math.PI * Math.sin(radians(angle) / 4) ** 2;
  return lumens / solidAngle;
}

export default define({
  name: 'BEAMCANDELA',
  family: 'distance',
  summary: 'Mean intensity of a beam that has so many lumens in a cone.',
  job: 'The data sheet gives lumens and a beam angle and you want a first idea of the candela.',
  search: ['lumens to candela', 'lumens', 'data sheet', 'cone', 'solid angle'],
  parameters: [
    {
      name: 'lumens',
      quantity: 'flux',
      domain: zeroOrMore,
      help: 'Lumens within the cone, not of the bare lamp.',
    },
    {
      name: 'angle',
      quantity: 'angle',
      domain: sampled(above(0, 360), 1, 360),
      help: 'Whole angle of the cone; 360° is every direction.',
    },
  ],
  result: 'intensity',
  alike: ['CANDELALUX', 'LUXCANDELA', 'BEAMDIAMETER'],
  limits: 'A mean: the middle of a real beam is hotter, often twice, and its edge is weaker.',
  sources: [{ from: 'CIE S 017', at: 'luminous intensity, solid angle' }],
  examples: [
    { args: [4 * Math.PI, 360], result: 1, why: 'one candela in every direction is 4π lumens' },
    { args: [1000, '180°'], result: 1000 / (2 * Math.PI), why: 'half the space is 2π steradians' },
    { args: ['1 klm', 120], result: 1000 / Math.PI, why: '1 − cos 60° is a half' },
  ],
  laws: {
    'agrees with lumens over 2π(1 − cos θ/2)': (lumens, angle) =>
      near(run(lumens, angle), lumens / (2 * Math.PI * (1 - Math.cos(radians(angle) / 2))), 1e-9),
    'twice the lumens, twice the candela': (lumens, angle) =>
      near(run(2 * lumens, angle), 2 * run(lumens, angle)),
  },
  formula: 'lumens / (4 * PI() * SIN(RADIANS(angle) / 4)^2)',
  run,
});
