import { define } from '../define.ts';
import { between, duvRange, sampled } from '../domains.ts';
import { near } from '../near.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';
import { greenSurplus } from './greenBlock.ts';

function run(
  kelvin: In<'colourTemperature'>,
  duv: In<'duv'>,
): In<'greenCorrection'> | FunctionError {
  const surplus = greenSurplus(kelvin, duv);
  if (surplus > 0) return -100 * Math.log10(surplus);
  return refuse(`GREENCC: at ${kelvin} K no filter reaches Duv ${duv}.`);
}

export default define({
  name: 'GREENCC',
  family: 'colour',
  summary:
    'Green (+) or magenta (−) to add, in CC, so that a light comes back to the Planckian locus.',
  job: 'The colour meter shows a Duv and you want to know which plus or minus green goes on the lamp.',
  search: ['plus green', 'minus green', 'magenta', 'tint', 'fluorescent', 'gel'],
  parameters: [
    {
      name: 'kelvin',
      quantity: 'colourTemperature',
      domain: sampled(between(1500, 25_000), 2000, 10_000),
      help: 'Colour temperature of the light.',
    },
    { name: 'duv', quantity: 'duv', domain: duvRange, help: 'As metered: positive is green.' },
  ],
  result: 'greenCorrection',
  alike: ['DUV', 'MIREDSHIFT', 'CCT'],
  limits:
    'A model: Planckian light whose green third (500 to 600 nm) is too strong or weak, and an ideal filter that changes that third alone; CC is a hundred times its density. Real gels and lamps differ: meter again.',
  sources: [
    { from: 'common practice', at: 'CC is density times 100 in one third of the spectrum' },
    { from: 'CIE 15', at: 'CIE 1960 u, v, Planckian radiator' },
  ],
  examples: [
    {
      args: [3200, 0.0068],
      result: -7,
      why: 'what a quarter minus green is made for',
      source: 'common practice',
      within: 0.3,
    },
    { args: ['5600 K', 0], result: 0, why: 'on the locus nothing is added' },
  ],
  laws: {
    'too green asks for magenta, too pink for green': (kelvin, duv) => {
      const added = run(kelvin, duv);
      return isError(added) || Math.sign(added) === -Math.sign(duv) || near(added, 0);
    },
    'greener asks for more': (kelvin, duv) => {
      const [less, more] = [run(kelvin, duv), run(kelvin, duv + 0.001)];
      return isError(less) || isError(more) || more < less;
    },
  },
  formula: {
    none: 'Planck’s law is summed over the observer, 471 wavelengths.',
    equation:
      '−100 · log10 g, where P(λ, kelvin) with its green third times g lies duv across the locus',
  },
  run,
});
