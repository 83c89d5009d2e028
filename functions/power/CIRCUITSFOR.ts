import { define } from '../define.ts';
import { near } from '../near.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';
import { fewestCircuits } from './packing.ts';
import { breaker, continuous, powerFactor, volts, watts } from './parameters.ts';

const most = 1000;

function run(
  loads: readonly In<'power'>[],
  volts: In<'voltage'>,
  breaker: In<'current'>,
  powerFactors: readonly number[],
  continuous: In<'share'>,
): number | FunctionError {
  if (loads.length > most) {
    return refuse(`CIRCUITSFOR: loads has ${loads.length} fixtures; it packs at most ${most}.`);
  }
  if (powerFactors.length !== 1 && powerFactors.length !== loads.length) {
    return refuse(
      `CIRCUITSFOR: power_factors must be one, or one for each of the ${loads.length} loads, not ${powerFactors.length}.`,
      '#VALUE!',
    );
  }
  const capacity = breaker * continuous;
  const amps = loads.map(
    (load, index) => load / (volts * (powerFactors[index] ?? powerFactors[0]!)),
  );
  const tooMuch = loads.find((_, index) => amps[index]! > capacity * (1 + 1e-9));
  if (tooMuch !== undefined) {
    return refuse(`CIRCUITSFOR: loads has one of ${tooMuch} W, more than a whole circuit carries.`);
  }
  return fewestCircuits(amps, capacity);
}

export default define({
  name: 'CIRCUITSFOR',
  family: 'power',
  summary: 'How many circuits carry all fixtures, each fixture whole on one of them.',
  job: 'You have the list of fixtures and want to know how many circuits to ask the house for.',
  search: ['how many circuits', 'distribute', 'load list', 'breakers', 'sockets', 'packing'],
  parameters: [
    { ...watts, name: 'loads', help: 'Watts of each fixture, a range.', range: true },
    volts,
    breaker,
    {
      ...powerFactor,
      name: 'power_factors',
      help: 'One for each fixture in the same order, or one for all.',
      range: true,
    },
    continuous,
  ],
  result: 'number',
  alike: ['CIRCUITROOM', 'LOADSHARE', 'AMPS'],
  limits:
    'Surely the fewest for a few dozen fixtures, close to it for more. Currents are added as numbers, which is on the safe side.',
  sources: [{ from: 'common practice' }],
  examples: [
    {
      args: [[1500, 1500, 1500], 230, 16, 1],
      result: 3,
      why: 'two of 1500 W are 56 W too much for 80 % of a circuit of 3680 W',
    },
    { args: [[800, 800, 800, 800], 230, 16, 1, 1], result: 1, why: '3200 W on a 3680 W circuit' },
    {
      args: [[650, null, 650], 120, 20, [1, 1]],
      result: 1,
      why: '10.8 A of 16; an empty cell is skipped',
    },
  ],
  laws: {
    'no fewer than the sum needs, no more than one each': (
      loads,
      volts,
      breaker,
      powerFactors,
      continuous,
    ) => {
      const circuits = run(loads, volts, breaker, powerFactors.slice(0, 1), continuous);
      if (isError(circuits)) return true;
      const amps = loads.reduce((sum, load) => sum + load, 0) / (volts * powerFactors[0]!);
      const needed = amps / (breaker * continuous);
      return circuits <= loads.length && (circuits >= needed || near(circuits, needed));
    },
  },
  formula: {
    none: 'It tries which fixtures go together; no spreadsheet function does.',
    equation:
      'the fewest circuits on each of which Σ loads / (volts · power_factors) ≤ breaker · continuous',
  },
  run,
});
