import { define } from '../define.ts';
import { colourTemperature } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(from: In<'colourTemperature'>, to: In<'colourTemperature'>): In<'mired'> {
  return 1e6 / to - 1e6 / from;
}

export default define({
  name: 'MIREDSHIFT',
  family: 'colour',
  summary: 'Shift that a filter needs to turn one colour temperature into another; positive warms.',
  job: 'You want to match a lamp to daylight or to tungsten and look for the gel.',
  search: ['gel', 'correction', 'CTO', 'CTB', 'warm up', 'cool down', 'match'],
  parameters: [
    {
      name: 'from',
      quantity: 'colourTemperature',
      domain: colourTemperature,
      help: 'The light as it is.',
    },
    {
      name: 'to',
      quantity: 'colourTemperature',
      domain: colourTemperature,
      help: 'The light as it should be.',
    },
  ],
  result: 'mired',
  alike: ['KELVINTHROUGH', 'MIRED', 'GREENCC'],
  limits: 'Along the Planckian locus only: it says nothing of green and magenta.',
  sources: [{ from: 'mired tables', at: 'shift is the difference of the mired values' }],
  examples: [
    {
      args: [3400, 5500],
      result: -112,
      why: 'as printed: from 3400 K to 5500 K cools',
      source: 'mired tables',
      within: 0.5,
    },
    { args: [4000, 3200], result: 62.5, why: '312.5 less 250 warms' },
  ],
  laws: {
    'there and back is no shift': (from, to) => near(run(from, to), -run(to, from)),
    'shifts add': (from, to) => near(run(from, 4000) + run(4000, to), run(from, to)),
  },
  formula: '1000000 / to - 1000000 / from',
  run,
});
