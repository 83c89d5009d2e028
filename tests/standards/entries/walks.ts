import { inCellsOf, inPlainCells } from './row.ts';

const footcandle = 10.763910416709722;
const stopsFromOne = (stops: number): number => Math.SQRT2 ** stops;

/** Readings of the sail loft and the boat shed ("Harbour Hours", invented), as a tired person wrote them. */
export const walks = [
  ...inPlainCells([
    ['f/2.8', stopsFromOne(3), 'fNumber'],
    ['0.5 fc', 0.5 * footcandle, 'illuminance'],
    ['f/1.4 1/3', stopsFromOne(1 + 1 / 3), 'fNumber'],
    ['11 fc', 11 * footcandle, 'illuminance'],
    ['4.2 fc', 4.2 * footcandle, 'illuminance'],
    ['f/4', 4, 'fNumber'],
    ['f/1.4', stopsFromOne(1), 'fNumber'],
    ['f/1.4+0.4', stopsFromOne(1.4), 'fNumber'],
    ['85 lx', 85, 'illuminance'],
    ['1.2 kcd/m2', 1200, 'luminance'],
    ['6.9 cd/m2', 6.9, 'luminance'],
    ['0.55 cd/m2', 0.55, 'luminance'],
    ['3230 K', 3230, 'colourTemperature'],
    ['3390 K', 3390, 'colourTemperature'],
    ['6900 K', 6900, 'colourTemperature'],
    ['Duv +0.0011', 0.0011, 'duv'],
    ['Duv +0.0068', 0.0068, 'duv'],
    ['Duv +0.0030', 0.003, 'duv'],
    ['50 Hz mains', '50 Hz mains'],
    [
      'ISO 800, 25 fps, 180°, ND none, white balance 3200 K',
      'ISO 800, 25 fps, 180°, ND none, white balance 3200 K',
    ],
  ]),
  ...inPlainCells(
    [
      ['4 lx', 4, 'illuminance'],
      ['f/3.2', stopsFromOne(3 + 1 / 3), 'fNumber'],
      ['f/2', 2, 'fNumber'],
      ['104 lx', 104, 'illuminance'],
      ['41,5 lx', 41.5, 'illuminance'],
      ['f/3.6', 3.6, 'fNumber'],
      ['f/1.8', stopsFromOne(1 + 2 / 3), 'fNumber'],
      ['f/1.4', stopsFromOne(1), 'fNumber'],
      ['5,6 cd/m2', 5.6, 'luminance'],
      ['0,9 cd/m2', 0.9, 'luminance'],
      ['5480 K', 5480, 'colourTemperature'],
      ['5230 K', 5230, 'colourTemperature'],
      ['Duv -0,0012', -0.0012, 'duv'],
      ['Duv +0,0095', 0.0095, 'duv'],
    ],
    { writing: { decimal: ',' } },
  ),
  ...inCellsOf('iso', [['ISO 1250', 1250]]),
  ...inCellsOf('density', [['ND none', 0]]),
  ...inCellsOf('frameRate', [['25 fps', 25]]),
  ...inCellsOf('time', [['180°', 0.02]], { fps: 25 }),
  ...inCellsOf('time', [['1/50 s', 0.02]]),
  // What stood in the loft.
  ...inCellsOf('length', [
    ['3.2 m', 3.2],
    ['11\'6"', 11.5 * 0.3048],
    ['0.3 m', 0.3],
  ]),
  ...inCellsOf('stops', [
    ['1 1/3 stops', 4 / 3],
    ['2/3 stop', 2 / 3],
    ['0', 0],
  ]),
  ...inCellsOf('share', [
    ['100 %', 1],
    ['7 %', 0.07],
  ]),
  ...inCellsOf('power', [['650 W', 650]]),
  ...inCellsOf('money', [['18.00', 18]]),
  ...inPlainCells([['double (1 stop)', 'double (1 stop)']]),
];
