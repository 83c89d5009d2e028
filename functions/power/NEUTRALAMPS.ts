import { define } from '../define.ts';
import type { Parameter } from '../define.ts';
import { sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

/** Written as differences, so that a balanced load leaves exactly nothing. */
function run(first: In<'current'>, second: In<'current'>, third: In<'current'>) {
  const squares = (first - second) ** 2 + (second - third) ** 2 + (third - first) ** 2;
  return Math.sqrt(squares / 2);
}

const line = {
  quantity: 'current',
  domain: sampled(zeroOrMore, 0, 125),
} as const satisfies Omit<Parameter, 'name' | 'help'>;

export default define({
  name: 'NEUTRALAMPS',
  family: 'power',
  summary: 'Current in the neutral of three phases that are loaded unevenly.',
  job: 'You spread the fixtures over three phases and want to know what comes back.',
  search: ['neutral', 'three phase', 'balance the phases', 'uneven load', 'distro'],
  parameters: [
    { ...line, name: 'first', help: 'Current in the first phase.' },
    { ...line, name: 'second', help: 'Current in the second phase.' },
    { ...line, name: 'third', help: 'Current in the third phase.' },
  ],
  result: 'current',
  alike: ['AMPS', 'LOADSHARE', 'CIRCUITSFOR'],
  limits:
    'Loads of one power factor. Dimmers and drivers without correction bring harmonics that add in the neutral, up to 1.7 times a phase.',
  sources: [{ from: 'IEC 60050-131', at: 'sum of three phasors at 120°' }],
  examples: [
    { args: [20, 20, 20], result: 0, why: 'balanced: nothing comes back' },
    { args: [30, 20, 10], result: Math.sqrt(300), why: 'phasors at 120°: 17.3 A' },
    { args: [16, 0, 0], result: 16, why: 'one phase alone: all of it comes back' },
  ],
  laws: {
    'which phase is which does not matter': (first, second, third) =>
      near(run(first, second, third), run(third, first, second)),
    'the same more on each phase changes nothing': (first, second, third) =>
      near(run(first + 5, second + 5, third + 5), run(first, second, third), 1e-11),
  },
  formula: 'SQRT(((first - second)^2 + (second - third)^2 + (third - first)^2) / 2)',
  run,
});
