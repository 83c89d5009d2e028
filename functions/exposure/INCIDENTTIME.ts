import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { fNumber, iso, lux, receptor } from './parameters.ts';

function run(lux: In<'illuminance'>, iso: In<'iso'>, fNumber: In<'fNumber'>, constant: number) {
  return (fNumber ** 2 * constant) / (lux * iso);
}

export default define({
  name: 'INCIDENTTIME',
  family: 'exposure',
  summary: 'The exposure time that an illuminance wants at a speed and a stop.',
  job: 'Light, speed and stop are given and you want the shutter.',
  search: ['what shutter', 'shutter speed', 'exposure time', 'how long'],
  parameters: [lux, iso, fNumber, receptor],
  result: 'time',
  alike: ['INCIDENTF', 'INCIDENTISO', 'SHUTTERANGLE', 'SPOTTIME'],
  limits: 'Dome and flat receptor differ by 0.44 stop for the same lux.',
  sources: [
    { from: 'ISO 2720', at: 'N²/t = E·S/C; C of 240 to 400 flat, 320 to 540 dome, from memory' },
  ],
  examples: [
    { args: [1000, 400, 'f/4', 'flat'], result: 0.01, why: '16 · 250 / (1000 · 400)' },
    { args: [680, 800, 'f/4', 'dome'], result: 0.01, why: '16 · 340 / (680 · 800)' },
  ],
  laws: {
    'twice the light halves the time': (lux, iso, fNumber, constant) =>
      near(run(2 * lux, iso, fNumber, constant), run(lux, iso, fNumber, constant) / 2),
    'the time gives the stop back': (lux, iso, fNumber, constant) =>
      near(Math.sqrt((lux * iso * run(lux, iso, fNumber, constant)) / constant), fNumber),
  },
  formula: 'f_number^2 * receptor / (lux * iso)',
  run,
});
