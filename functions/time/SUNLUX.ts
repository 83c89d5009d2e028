import { define } from '../define.ts';
import { between, sampled } from '../domains.ts';
import type { In } from '../values.ts';

/**
 * lg E = a + bx + cx² + dx³ with x = altitude/90, from each altitude up to the row above it:
 * Janiczek and DeYoung, table of solar coefficients.
 */
const pieces = [
  { from: 20, powers: [3.74, 3.97, -4.07, 1.47] },
  { from: 5, powers: [3.05, 13.28, -45.98, 64.33] },
  { from: -0.8, powers: [2.88, 22.26, -207.64, 1034.3] },
  { from: -5, powers: [2.88, 21.81, -258.11, -858.36] },
  { from: -12, powers: [2.7, 12.17, -431.69, -1899.83] },
  { from: -18, powers: [13.84, 262.72, 1447.42, 2797.93] },
] as const;

function run(altitude: In<'angle'>): In<'illuminance'> {
  const piece = pieces.find(({ from }) => altitude >= from);
  if (piece === undefined) return 0;
  const [a, b, c, d] = piece.powers;
  const x = altitude / 90;
  return 10 ** (a + b * x + c * x ** 2 + d * x ** 3);
}

const written = pieces.reduceRight(
  (below, { from, powers: [a, b, c, d] }) =>
    `IF(altitude >= ${from}, 10^(${a} + ${b} * (altitude / 90) + ${c} * (altitude / 90)^2 + ${d} * (altitude / 90)^3), ${below})`,
  '0',
);

export default define({
  name: 'SUNLUX',
  family: 'time',
  summary: 'Illuminance from sun and sky together on a level plane under a clear sky.',
  job: 'You want a first idea of the daylight at an hour, or of how fast it goes at dusk.',
  search: ['daylight', 'how bright is the sun', 'dusk', 'magic hour', 'twilight', 'clear sky'],
  parameters: [
    {
      name: 'altitude',
      quantity: 'angle',
      domain: sampled(between(-90, 90), -18, 90),
      help: 'Altitude of the sun above level, as SUNALTITUDE gives it; negative below the horizon.',
    },
  ],
  result: 'illuminance',
  alike: ['SUNALTITUDE', 'SUNRISE', 'SUNSET', 'EVLUX'],
  limits:
    'Good to about a stop, for a clear sky and a level plane; a surface facing a low sun gets more, and cloud takes one to four stops. Below −18° it is 0: moon and lamps are not reckoned.',
  sources: [{ from: 'Janiczek 1987' }],
  examples: [
    { args: [0], result: 10 ** 2.88, why: 'at the horizon about 760 lx', source: 'Janiczek 1987' },
    {
      args: [90],
      result: 10 ** (3.74 + 3.97 - 4.07 + 1.47),
      why: 'overhead about 129,000 lx',
      source: 'Janiczek 1987',
    },
    {
      args: ['-6°'],
      result: 3.4,
      why: 'the end of civil twilight',
      source: 'Janiczek 1987',
      within: 0.05,
    },
    { args: [-30], result: 0, why: 'at night nothing is left of the sun' },
  ],
  laws: {
    'higher gives more, but for the seams of the pieces': (altitude) =>
      altitude > 89 || run(altitude + 1) > run(altitude) * 0.97,
  },
  formula: written,
  run,
});
