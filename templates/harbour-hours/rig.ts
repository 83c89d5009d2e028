import { backdropSheet } from '../backdrop/plan.ts';
import { distancesSheet, type PlannedThrow } from '../fixtures-and-distances/plan.ts';
import { marksSheet, type PlannedMark } from '../marks/plan.ts';
import type { PlannedLight, PlannedPoint } from '../rig.ts';
import { circuitAt } from '../recce/house.ts';
import { setPlan } from '../set-plan/plan.ts';

/** As the recce found them, in the order of its rows. */
const found = (index: number): string => `=Recce!${circuitAt(index, 'name')}`;
const circuits = { blue: found(0), red: found(1), bench: found(2) };

/**
 * The rig of the sail loft as it was planned for the interview: distances and outputs are those
 * that the readings were taken with. The chair stands at x 0, y 0 and faces down the plan, the canvas
 * hangs at y 3.
 */
const lights: readonly PlannedLight[] = [
  {
    light: 'Key',
    fixture: 'Fresnel 650 at flood',
    at: [-2.85, -1.04, 2.22],
    aim: [0, 0, 1.2],
    circuit: circuits.red,
    channel: '1',
    sheet: { size: [1.2, 1.2], distance: 1, through: '1/4' },
  },
  {
    light: 'Fill',
    fixture: 'Frame 120 × 120',
    at: [2.04, -0.36, 1.57],
    aim: [0, 0, 1.2],
    output: '7 %',
    circuit: circuits.blue,
    channel: '2',
  },
  {
    light: 'Back',
    fixture: 'Small profile 19°',
    at: [0.6, 3.16, 2.8],
    // Its lower edge is cut off the face.
    aim: [0.26, 0.36, 0.63],
    output: '80 %',
    diffusion: '2',
    gel: '2/3',
    circuit: circuits.red,
    channel: '3',
  },
  {
    light: 'Canvas left',
    fixture: 'Tube 120',
    at: [-2.85, 1.35, 2.95],
    aim: [-1.2, 3, 1.4],
    output: '65 %',
    diffusion: '2',
    gel: '2/3',
    circuit: circuits.red,
    channel: '4',
  },
  {
    light: 'Canvas right',
    fixture: 'Tube 120',
    at: [2.85, 1.35, 2.95],
    aim: [1.2, 3, 1.4],
    output: '65 %',
    diffusion: '1 1/3',
    gel: '2/3',
    circuit: circuits.red,
    channel: '5',
  },
  {
    light: 'Bench',
    fixture: 'Tube 120',
    at: [2.4, 1.1, 1.8],
    aim: [1.9, 0.6, 0.8],
    output: '6 %',
    circuit: circuits.bench,
    channel: '6',
  },
];

/** Where the readings of the sheet _Sail loft_ are taken, and what is wanted there. */
const points: readonly PlannedPoint[] = [
  {
    ...{ point: 'Key side of face', at: [-0.08, -0.05, 1.2], azimuth: -110 },
    ...{ ambient: '0.5 fc', wanted: '0' },
  },
  {
    ...{ point: 'Fill side of face', at: [0.08, -0.05, 1.2], azimuth: 100 },
    ...{ ambient: '0.5 fc', wanted: '-2' },
  },
  {
    ...{ point: 'Back light on shoulder', at: [0.15, 0.15, 1.05], azimuth: 10, tilt: 30 },
    ...{ ambient: '2 lx', wanted: '+1' },
  },
  { point: 'Canvas left', at: [-1.2, 3, 1.4], azimuth: 180, ambient: '2 lx', wanted: '-2' },
  { point: 'Canvas right', at: [1.2, 3, 1.4], azimuth: 180, ambient: '2 lx', wanted: '-2' },
  {
    ...{ point: 'Rope bench', at: [1.9, 0.6, 0.8], azimuth: 180, tilt: 90 },
    ...{ ambient: '4 lx', wanted: '-1' },
  },
];

/** The same lights one by one, as far off as they stand, against what each alone should give. */
const throws: readonly PlannedThrow[] = [
  {
    ...{ light: 'Key, bare', fixture: 'Fresnel 650 at flood', distance: '3.2 m' },
    wanted: '450 lx',
  },
  {
    ...{ light: 'Fill', fixture: 'Frame 120 × 120', distance: '2.1 m', output: '7 %' },
    wanted: '40 lx',
  },
  {
    ...{ light: 'Back', fixture: 'Small profile 19°', distance: `11'6"`, output: '80 %' },
    ...{ diffusion: '2', gel: '2/3', wanted: '250 lx' },
  },
  {
    ...{ light: 'Canvas left', fixture: 'Tube 120', distance: '2.8 m', output: '65 %' },
    ...{ diffusion: '2', gel: '2/3', wanted: '8 lx' },
  },
  {
    ...{ light: 'Canvas right', fixture: 'Tube 120', distance: '2.8 m', output: '65 %' },
    ...{ diffusion: '1 1/3', gel: '2/3', wanted: '12 lx' },
  },
  {
    ...{ light: 'Bench', fixture: 'Tube 120', distance: '1.2 m', output: '6 %' },
    wanted: '26 lx',
  },
];

/** From the chair to the bench. */
const move: readonly PlannedMark[] = [
  { point: 'Chair', at: [0, 0, 1.2], azimuth: -110, ambient: '0.5 fc', goes: 90 },
  { point: 'Rises', at: [0, -0.1, 1.6], azimuth: -110, ambient: '0.5 fc', goes: 90 },
  { point: 'Step to the bench', at: [0.8, 0.1, 1.6], azimuth: -110, ambient: '3 lx', goes: 75 },
  { point: 'At the bench', at: [1.5, 0.4, 1.6], azimuth: -110, ambient: '4 lx', goes: 75 },
];

/** Those that follow the move; the back light is cut to the chair. */
const onMove = lights.filter(({ light }) => ['Key', 'Fill', 'Bench'].includes(light));

/** The canvas is for a mood and not for a key: a stop of spread is allowed. */
const canvas = {
  left: [-2, 3],
  right: [2, 3],
  bottom: 0.3,
  top: 2.6,
  ambient: '2 lx',
  allowed: '1',
} as const;

/** All of the loft, and of no other place of the film. */
export const rigSheets = [
  distancesSheet(throws),
  setPlan(lights, points),
  backdropSheet(lights, canvas),
  marksSheet(onMove, move),
].map((sheet) => ({ ...sheet, purpose: `${sheet.purpose} The interview in the sail loft.` }));
