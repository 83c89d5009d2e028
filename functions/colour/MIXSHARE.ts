import { define } from '../define.ts';
import { between, chromaticityX, sampled } from '../domains.ts';
import { refuse, type FunctionError, type In } from '../values.ts';
import { primeFromXY } from './prime.ts';

type C = In<'chromaticity'>;

const chromaticityY = sampled(between(0.001, 1), 0.28, 0.45);

function run(x1: C, y1: C, x2: C, y2: C, x: C, y: C): In<'share'> | FunctionError {
  const [one, two, goal] = [
    primeFromXY({ x: x1, y: y1 }),
    primeFromXY({ x: x2, y: y2 }),
    primeFromXY({ x, y }),
  ];
  const [du, dv] = [two.u - one.u, two.v - one.v];
  const squared = du ** 2 + dv ** 2;
  if (squared === 0) return refuse('MIXSHARE: the two lights have one colour.');
  const along = ((goal.u - one.u) * du + (goal.v - one.v) * dv) / squared;
  const way = Math.min(1, Math.max(0, along));
  // In u′, v′ a light weighs as its level over its v′.
  return (way * two.v) / (way * two.v + (1 - way) * one.v);
}

const u = (n: string) => `4 * x${n} / (-2 * x${n} + 12 * y${n} + 3)`;
const v = (n: string) => `9 * y${n} / (-2 * x${n} + 12 * y${n} + 3)`;
const [du, dv] = [`(${u('2')} - ${u('1')})`, `(${v('2')} - ${v('1')})`];
const way =
  `MIN(1, MAX(0, ((${u('')} - ${u('1')}) * ${du} + (${v('')} - ${v('1')}) * ${dv}) / ` +
  `(${du}^2 + ${dv}^2)))`;

export default define({
  name: 'MIXSHARE',
  family: 'colour',
  summary:
    'Share of the light that the second of two channels gives where their mix comes nearest to a colour.',
  job: 'A bi-colour fixture has a warm and a cool channel, and you want to know how to set them for a white.',
  search: ['bi-colour', 'two channels', 'warm and cool', 'mix to a white', 'crossfade'],
  parameters: [
    {
      name: 'x1',
      quantity: 'chromaticity',
      domain: chromaticityX,
      help: 'CIE 1931 x of the first channel.',
    },
    { name: 'y1', quantity: 'chromaticity', domain: chromaticityY, help: 'Its y.' },
    {
      name: 'x2',
      quantity: 'chromaticity',
      domain: chromaticityX,
      help: 'x of the second channel.',
    },
    { name: 'y2', quantity: 'chromaticity', domain: chromaticityY, help: 'Its y.' },
    { name: 'x', quantity: 'chromaticity', domain: chromaticityX, help: 'x of the colour wanted.' },
    { name: 'y', quantity: 'chromaticity', domain: chromaticityY, help: 'Its y.' },
  ],
  result: 'share',
  alike: ['MIXX', 'MIXY', 'COLOURDIFFERENCE', 'DIMMERFOR'],
  limits:
    'A share of the light at the point, not of the control: where the channels differ in output, or fade unevenly, go by the meter. Nearest in CIE 1976 u′v′; what is off the line between the two channels stays off.',
  sources: [
    { from: 'CIE 15', at: 'tristimulus values add; CIE 1976 u′, v′' },
    { from: 'CIE S 017', at: 'additive mixture' },
  ],
  examples: [
    {
      args: [0.4476, 0.4074, 0.3127, 0.329, 0.3729, 0.364],
      result: 0.5,
      why: 'tungsten and daylight, as much of each, by their tristimulus values',
      source: 'CIE 15',
      within: 1e-3,
    },
    { args: [0.4476, 0.4074, 0.3127, 0.329, 0.4476, 0.4074], result: 0, why: 'the first alone' },
    {
      args: [0.4476, 0.4074, 0.3127, 0.329, 0.28, 0.29],
      result: 1,
      why: 'bluer than both: the second alone',
    },
  ],
  laws: {
    'the other way round the rest is the other’s': (x1, y1, x2, y2, x, y) => {
      const [there, back] = [run(x1, y1, x2, y2, x, y), run(x2, y2, x1, y1, x, y)];
      return Math.abs(Number(there) + Number(back) - 1) < 1e-9;
    },
  },
  formula: `${way} * ${v('2')} / (${way} * ${v('2')} + (1 - ${way}) * ${v('1')})`,
  run,
});
