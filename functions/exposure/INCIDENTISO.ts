import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { fNumber, lux, receptor, time } from './parameters.ts';

function run(lux: In<'illuminance'>, fNumber: In<'fNumber'>, time: In<'time'>, constant: number) {
  return (fNumber ** 2 * constant) / (lux * time);
}

export default define({
  name: 'INCIDENTISO',
  family: 'exposure',
  summary: 'The speed that an illuminance wants at a stop and a time.',
  job: 'Light, stop and shutter are given and you want to know what speed to set.',
  search: ['what ISO', 'what speed', 'sensitivity', 'exposure index', 'too dark'],
  parameters: [lux, fNumber, time, receptor],
  result: 'iso',
  alike: ['INCIDENTF', 'INCIDENTTIME', 'EIAFTER', 'SPOTISO'],
  limits: 'Dome and flat receptor differ by 0.44 stop for the same lux.',
  sources: [
    { from: 'ISO 2720', at: 'N²/t = E·S/C; C of 240 to 400 flat, 320 to 540 dome, from memory' },
  ],
  examples: [
    { args: [1000, 'f/4', '1/100', 'flat'], result: 400, why: '16 · 250 / (1000 / 100)' },
    { args: [680, 'f/4', '1/50', 'dome'], result: 400, why: '16 · 340 / (680 / 50)' },
  ],
  laws: {
    'half the light wants twice the speed': (lux, fNumber, time, constant) =>
      near(run(lux / 2, fNumber, time, constant), 2 * run(lux, fNumber, time, constant)),
    'the speed gives the stop back': (lux, fNumber, time, constant) =>
      near(Math.sqrt((lux * run(lux, fNumber, time, constant) * time) / constant), fNumber),
  },
  formula: 'f_number^2 * receptor / (lux * time)',
  run,
});
