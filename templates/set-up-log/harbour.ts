import type { PlannedLog } from './planned.ts';
import type { PlannedLogRow } from './rows.ts';

const setUp = (
  [scene, name, day, time, camera]: readonly [string, string, string, string, string],
  readings: string,
  ratio: string,
  lights: readonly PlannedLogRow[],
): readonly PlannedLogRow[] =>
  lights.map((light, index) => ({
    scene,
    setUp: name,
    day,
    time,
    camera,
    ...(index === 0 && { readings, ratio }),
    ...light,
  }));

const key = { light: 'Key', fixture: 'Fresnel 650 at flood', channel: '1', circuit: 'red' };
const fill = { light: 'Fill', fixture: 'Frame 120 × 120', channel: '2', circuit: 'blue' };
const back = { light: 'Back', fixture: 'Small profile 19°', channel: '3', circuit: 'red' };
const open = { light: 'Key', fixture: 'Open face 800', circuit: 'slip' };

/** Four days of the film at the harbour. Invented. */
export const harbourLog: PlannedLog = {
  scene: '12',
  search: '',
  cameras: [
    { name: 'A', ei: '800', time: '1/50 s', stop: 'f/2.8' },
    { name: 'B', ei: '1250', time: '1/50 s', stop: '' },
  ],
  rows: [
    ...setUp(
      ['12', '12A', '2026-09-21', '10:40', 'A, ISO 800, 1/50 s, f/2.8'],
      'Key side f/2.8, Fill side f/1.4 1/3',
      'Key to fill 3.2:1',
      [
        { ...key, level: '100 %', note: 'frame 1.2 m at 1 m' },
        { ...fill, level: '7 %' },
        { ...back, level: '80 %', gel: 'warm, 2/3 stop' },
      ],
    ),
    ...setUp(
      ['12', '12B', '2026-09-21', '15:10', 'A, ISO 800, 1/50 s, f/2.8'],
      'Key side f/2.8, Fill side f/1.4 2/3',
      'Key to fill 2.5:1',
      [
        { ...key, level: '100 %' },
        { ...fill, level: '9 %', note: 'half a metre nearer' },
      ],
    ),
    ...setUp(['14', '14A', '2026-09-22', '11:05', 'A and B, 1/50 s, f/2.8'], 'Bench f/2 1/3', '', [
      { light: 'Bench', fixture: 'Tube 120', channel: '6', circuit: 'bench', level: '6 %' },
    ]),
    ...setUp(
      ['21', '21A', '2026-09-23', '09:45', 'B, ISO 1250, 1/50 s, f/4'],
      'Bow f/4, Hull f/1.4',
      'Key to hull 8:1',
      [
        { ...open, level: '100 %', gel: 'half blue', note: 'tide falling, mark on the slip' },
        { light: 'Fill', fixture: 'Frame 120 × 120', note: 'as a reflector' },
      ],
    ),
    ...setUp(
      ['12', '12C', '2026-09-25', '13:20', 'A, ISO 800, 1/50 s, f/2.8'],
      'Key side f/2.8, Fill side f/1.4 1/3',
      'Key to fill 3.2:1',
      [
        {
          light: 'Key',
          fixture: 'Tube 120',
          level: '80 %',
          note: 'pick-up in the ice house, matched to 12A',
        },
      ],
    ),
  ],
};
