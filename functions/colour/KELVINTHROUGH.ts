import { define } from '../define.ts';
import { any, colourTemperature, sampled } from '../domains.ts';
import { near } from '../near.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';

function run(
  kelvin: In<'colourTemperature'>,
  shift: In<'mired'>,
): In<'colourTemperature'> | FunctionError {
  const mired = 1e6 / kelvin + shift;
  if (mired > 0) return 1e6 / mired;
  return refuse(
    `KELVINTHROUGH: ${kelvin} K shifted by ${shift} mired is ${mired} mired, bluer than any colour temperature.`,
  );
}

export default define({
  name: 'KELVINTHROUGH',
  family: 'colour',
  summary: 'Colour temperature of a light behind a filter of a mired shift.',
  job: 'A gel of so many mired goes on a lamp and you want to know what comes out.',
  search: ['gel', 'behind the filter', 'CTO', 'CTB', 'what comes out'],
  parameters: [
    {
      name: 'kelvin',
      quantity: 'colourTemperature',
      domain: colourTemperature,
      help: 'The light before the filter.',
    },
    {
      name: 'shift',
      quantity: 'mired',
      domain: sampled(any, -45, 200),
      help: 'Shift of the filter: positive warms, negative cools.',
    },
  ],
  result: 'colourTemperature',
  alike: ['MIREDSHIFT', 'MIRED', 'KELVIN'],
  limits:
    'A gel’s shift holds near the colour temperature it was made for, and not for light with gaps in its spectrum.',
  sources: [{ from: 'mired tables', at: 'shifts add to the mired value' }],
  examples: [
    { args: [3200, -112.5], result: 5000, why: '312.5 less 112.5 is 200 mired' },
    { args: ['5000 K', 50], result: 4000, why: '200 and 50 are 250 mired' },
  ],
  laws: {
    'the opposite filter undoes it': (kelvin, shift) => {
      const through = run(kelvin, shift);
      if (isError(through)) return 1e6 / kelvin + shift <= 0;
      const back = run(through, -shift);
      return !isError(back) && near(back, kelvin, 1e-9);
    },
    'no shift, no change': (kelvin) => near(run(kelvin, 0) as number, kelvin),
  },
  formula: 'IF(1000000 / kelvin + shift > 0, 1000000 / (1000000 / kelvin + shift), NA())',
  run,
});
