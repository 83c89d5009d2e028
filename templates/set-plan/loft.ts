import type { PlannedLight, PlannedPoint } from '../rig.ts';

export const key: PlannedLight = {
  light: 'Key',
  fixture: 'Fresnel 650 at flood',
  at: [-2.1, -1.8, 2.2],
  aim: [0, 0, 1.3],
  circuit: 'Loft A',
  sheet: { size: [1.2, 1.2], distance: 1, through: '1' },
};

/** The sail loft: the chair stands at x 0, y 0 and faces down the plan, the canvas hangs at y 3. */
export const loftLights: readonly PlannedLight[] = [
  key,
  {
    light: 'Fill',
    fixture: 'Soft panel 60 × 30',
    at: [2.4, -1.8, 1.6],
    aim: [0, 0, 1.2],
    output: '4 %',
    circuit: 'Loft A',
    channel: '1',
  },
  {
    light: 'Back',
    fixture: 'Small profile 19°',
    at: [1.2, 2.6, 2.9],
    aim: [0, 0, 1.3],
    output: '7 %',
    diffusion: '1/2',
    circuit: 'Loft B',
    channel: '2',
  },
  {
    light: 'Canvas',
    fixture: 'Open face 800',
    at: [-1.8, 2.2, 2.4],
    aim: [-3, 0.8, 2],
    output: '60 %',
    circuit: 'Loft B',
    channel: '3',
    sheet: { size: [1, 1], bounce: '80 %', towards: [0.4, 3, 1.4] },
  },
];

/** What the window gives was metered with every lamp off. */
export const loftPoints: readonly PlannedPoint[] = [
  {
    point: 'Key side of face',
    at: [-0.08, -0.05, 1.2],
    azimuth: -130,
    ambient: '6 lx',
    wanted: '0',
  },
  {
    point: 'Fill side of face',
    at: [0.08, -0.05, 1.2],
    azimuth: 127,
    ambient: '14 lx',
    wanted: '-1',
  },
  {
    point: 'Back of shoulder',
    at: [0.15, 0.1, 1.1],
    azimuth: 25,
    tilt: 30,
    ambient: '4 lx',
    wanted: '+1/2',
  },
  { point: 'Canvas left', at: [-1.2, 3, 1.4], azimuth: 180, ambient: '2 lx', wanted: '-2' },
  { point: 'Canvas right', at: [1.2, 3, 1.4], azimuth: 180, ambient: '2 lx', wanted: '-2' },
  {
    point: 'Rope bench',
    at: [1.9, 0.6, 0.8],
    azimuth: 180,
    tilt: 90,
    ambient: '9 lx',
    wanted: '-2',
  },
];
