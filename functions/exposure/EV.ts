import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { fNumber, iso, time } from './parameters.ts';

function run(fNumber: In<'fNumber'>, time: In<'time'>, iso: In<'iso'>) {
  return Math.log2(fNumber ** 2 / time) - Math.log2(iso / 100);
}

export default define({
  name: 'EV',
  family: 'exposure',
  summary: 'The light level that a camera setting is right for, as an exposure value at ISO 100.',
  job: 'You want one number for how bright a place is, whatever the camera is set to.',
  search: ['exposure value', 'how bright', 'light value', 'stop and shutter', 'camera setting'],
  parameters: [fNumber, time, { ...iso, default: 100 }],
  result: 'ev',
  alike: ['EVLUX', 'EVLUMINANCE', 'INCIDENTF'],
  limits: 'Brought to ISO 100: a meter set to ISO 800 shows three more for the same setting.',
  sources: [{ from: 'ISO 2720', at: 'exposure equations' }, { from: 'exposure value table' }],
  examples: [
    {
      args: ['f/16', '1/125'],
      result: 15,
      why: 'f/16 at 1/125 s is printed as EV 15',
      source: 'exposure value table',
      within: 0.05,
    },
    { args: ['f/1', '1 s'], result: 0, why: 'where the scale begins' },
    { args: ['f/4', '1/64', 400], result: 8, why: 'two stops more speed, two less in EV' },
  ],
  laws: {
    'one mark more is one EV more': (fNumber, time, iso) =>
      near(run(fNumber * Math.SQRT2, time, iso), run(fNumber, time, iso) + 1),
    'half the time is one EV more': (fNumber, time, iso) =>
      near(run(fNumber, time / 2, iso), run(fNumber, time, iso) + 1),
  },
  formula: 'LN(f_number^2 / time) / LN(2) - LN(iso / 100) / LN(2)',
  run,
});
