import { daylightXY } from '../colour/daylight.ts';
import { daylightComponents } from '../data/daylightComponents.ts';
import { televisionCamera } from '../data/televisionCamera.ts';
import { televisionPatches } from '../data/televisionPatches.ts';
import { ciede2000, type Lab } from './difference.ts';
import type { Grid, Sampled } from './grid.ts';
import { planckCurve, straight } from './reference.ts';

type Three = readonly [number, number, number];
type Matrix = readonly [Three, Three, Three];

/** The linear matrix of the standard camera (EBU Tech 3355, 1.3.2). */
const cameraMatrix: Matrix = [
  [1.182, -0.209, 0.027],
  [0.107, 0.89, 0.003],
  [0.04, -0.134, 1.094],
];

/** A little less colour, on linear light: each channel has a thirtieth of the others in it (1.3.2). */
const lessColour: Matrix = [
  [28 / 30, 1 / 30, 1 / 30],
  [1 / 30, 28 / 30, 1 / 30],
  [1 / 30, 1 / 30, 28 / 30],
];

/** Linear light of the display’s primaries to X, Y, Z (ITU-R BT.709, white D65). */
const display: Matrix = [
  [0.412_391, 0.357_584, 0.180_481],
  [0.212_639, 0.715_169, 0.072_192],
  [0.019_331, 0.119_195, 0.950_532],
];
const [whiteX, whiteZ] = [0.3127 / 0.329, 0.3583 / 0.329];

/** What the camera is balanced on sends back so much of every wavelength (1.3.1). */
const balancedOn = 0.9;
/** The chart’s greys are not counted (1.5.1). */
const counted = 18;

/** Between these the reference is a mix of Planckian light and daylight (1.1.2). */
const [planckTo, daylightFrom] = [3400, 5000];
/** The standard reckons with the c2 of old, 1.435e-2 m·K: its kelvin are lower by this. */
const ofOld = 1.435 / 1.4388;

/** Daylight as the standard writes it, with more digits than CIE 15 (1.1.2.2). */
function daylightOf(kelvin: number): (nm: number) => number {
  const { x, y } = daylightXY(kelvin);
  const parts = 0.023_87 + 0.255_39 * x - 0.732_17 * y;
  const m1 = (-1.346_74 - 1.778_61 * x + 5.907_57 * y) / parts;
  const m2 = (0.036_38 - 31.444_64 * x + 30.064 * y) / parts;
  return straight(daylightComponents.map(([nm, s0, s1, s2]) => [nm, s0 + m1 * s1 + m2 * s2]));
}

/** The reference by wavelength; the parts of a mix are alike at 560 nm (1.1.2.3). */
function referenceOf(kelvin: number): (nm: number) => number {
  const old = kelvin * ofOld;
  if (old <= planckTo) return planckCurve(kelvin);
  if (kelvin >= daylightFrom) return daylightOf(kelvin);
  const [warm, cool] = [planckCurve(planckTo / ofOld), daylightOf(daylightFrom)];
  const share = (old - planckTo) / (daylightFrom - planckTo);
  return (nm) => ((1 - share) * warm(nm)) / warm(560) + (share * cool(nm)) / cool(560);
}

interface Chart {
  readonly camera: readonly Float64Array[];
  readonly patches: readonly Float64Array[];
}

const charts = new Map<Grid, Chart>();

function chartOn(grid: Grid): Chart {
  const known = charts.get(grid);
  if (known) return known;
  const column = (rows: readonly (readonly number[])[], index: number) =>
    grid.nanometres.map(straight(rows.map((row) => [row[0]!, row[index]!])));
  const chart = {
    camera: [1, 2, 3].map((index) => column(televisionCamera, index)),
    patches: Array.from({ length: counted }, (_, index) => column(televisionPatches, index + 1)),
  };
  charts.set(grid, chart);
  return chart;
}

function times(matrix: Matrix, [r, g, b]: Three): Three {
  const [first, second, third] = matrix.map((row) => row[0] * r + row[1] * g + row[2] * b);
  return [first!, second!, third!];
}

/** The chart under a light as a viewer sees it on the screen; undefined where the camera clips. */
function onScreen(values: Float64Array, grid: Grid): readonly (Lab | undefined)[] {
  const { camera, patches } = chartOn(grid);
  const caught = (sent: Float64Array) =>
    camera.map((response) => {
      let sum = 0;
      for (let index = 0; index < sent.length; index += 1) sum += response[index]! * sent[index]!;
      return sum;
    });
  const white = caught(values);
  return patches.map((patch) => {
    const raw = caught(values.map((value, index) => value * patch[index]!));
    const [r, g, b] = raw.map((channel, index) => channel / (balancedOn * white[index]!));
    const matrixed = times(cameraMatrix, [r!, g!, b!]);
    const linear = times(lessColour, matrixed);
    if ([...matrixed, ...linear].some((channel) => !(channel >= 0))) return undefined;
    const [red, green, blue] = linear.map(shown);
    return labOf(times(display, [red!, green!, blue!]));
  });
}

/** The highest code of eight bits over that of white: nothing is shown beyond it (2, equation 61). */
const highest = 239 / 219;

/** A channel through the camera’s gamma (ITU-R BT.709) and the display’s, a power of 2.4. */
function shown(light: number): number {
  const signal = light < 0.018 ? 4.5 * light : 1.099 * light ** 0.45 - 0.099;
  return Math.min(signal, highest) ** 2.4;
}

function labOf([X, Y, Z]: Three): Lab {
  const [x, y, z] = [X / whiteX, Y, Z / whiteZ].map((share) =>
    share > (6 / 29) ** 3 ? Math.cbrt(share) : share / (3 * (6 / 29) ** 2) + 4 / 29,
  );
  return { L: 116 * y! - 16, a: 500 * (x! - y!), b: 200 * (y! - z!) };
}

/**
 * Television lighting consistency index, 100 where the camera sees no difference: EBU Tech 3355, Qa.
 * Colours that the camera clips are left out (1.5.1); undefined where that is all of them.
 */
export function consistency({ grid, values }: Sampled, kelvin: number): number | undefined {
  const wanted = onScreen(grid.nanometres.map(referenceOf(kelvin)), grid);
  const differences = onScreen(values, grid).flatMap((lab, index) => {
    const other = wanted[index];
    return lab && other ? [ciede2000(lab, other)] : [];
  });
  if (differences.length === 0) return undefined;
  const fourths = differences.reduce((sum, one) => sum + one ** 4, 0);
  return 100 / (1 + ((fourths / differences.length) ** 0.25 / 3.16) ** 2.4);
}
