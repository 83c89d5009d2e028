import { lightsFrom } from '../../functions/fixture/rigTable.ts';
import type { Placed } from '../../functions/fixture/rig.ts';
import { fixturesFrom } from '../../functions/fixture/exampleFixtures.ts';
import { photometryOf } from '../../functions/fixture/photometry.ts';
import { point } from '../../functions/fixture/throw.ts';
import { defaultWriting } from '../../functions/quantities/settings.ts';
import { noSpectra } from '../../functions/spectrum/spectra.ts';
import { isError } from '../../functions/values.ts';
import type { Block } from '../../src/figures/figure.ts';
import { plan } from '../../src/figures/kinds/plan.ts';
import { fileTheme } from '../../src/figures/kit/theme.ts';
import { medianTime, type Row } from './bench.ts';

export const name = 'The plan of a set with 20 fixtures, redrawn while one of them is dragged';

const size = { width: 1200, letters: 13 };
const [gammaStep, planeStep] = [2.5, 15];
const gammas = Float64Array.from({ length: 73 }, (_, index) => index * gammaStep);
const planes = Float64Array.from({ length: 25 }, (_, index) => index * planeStep);

/** An oval beam: no two planes of a quarter are alike. */
const candela = Float64Array.from({ length: planes.length * gammas.length }, (_, index) => {
  const gamma = gammas[index % gammas.length]! * (Math.PI / 180);
  const plane = planes[Math.floor(index / gammas.length)]! * (Math.PI / 180);
  return 20_000 * Math.exp(-((gamma / (0.3 + 0.2 * Math.cos(plane) ** 2)) ** 2));
});
const photometry = photometryOf({ name: 'Oval', planes, gammas, candela, watts: 300, face: point });
const fixtures = fixturesFrom([{ kind: 'projector', name: 'Oval', photometry }]);

const cells = (rows: readonly (readonly (string | number)[])[]): Block =>
  rows.map((row) => row.map((value) => ({ value })));
const rows = Array.from({ length: 20 }, (_, index) => [
  ...['Oval', (index % 5) * 2, Math.floor(index / 5) * 2.5, 4],
  ...[5 - (index % 3), 5 - (index % 4), 0, 1, 0, index * 10],
]);
const points = cells([
  ['Key', 4, 4, 1.6, 180, 0],
  ['Fill', 4.2, 4, 1.6, 90, 0],
  ['Back wall', 6, 8, 1.5, 180, 0],
]);

/** The grid that is read while something is dragged: a place every 15 pixels of the picture. */
const [columns, lines] = [78, 52];

/** The light at as many places by bare loops over typed arrays: even tables, a dome, nothing drawn. */
function bare(lights: readonly Placed[]): Float64Array {
  const lux = new Float64Array(columns * lines);
  const toGamma = 180 / Math.PI / gammaStep;
  const toPlane = 180 / Math.PI / planeStep;
  for (const { at, forward, right, up } of lights) {
    for (let row = 0; row < lines; row += 1) {
      for (let column = 0; column < columns; column += 1) {
        const x = column * 0.17 - 1 - at[0];
        const y = row * 0.17 - 1 - at[1];
        const z = 1.6 - at[2];
        const squared = x * x + y * y + z * z;
        const weight = (1 + y / Math.sqrt(squared)) / 2;
        const ahead = x * forward[0] + y * forward[1] + z * forward[2];
        const aside = x * right[0] + y * right[1] + z * right[2];
        const above = x * up[0] + y * up[1] + z * up[2];
        const g = Math.atan2(Math.sqrt(aside * aside + above * above), ahead) * toGamma;
        let c = Math.atan2(above, aside) * toPlane;
        if (c < 0) c += 24;
        const [down, plane] = [Math.min(71, g | 0), Math.min(23, c | 0)];
        const [share, across] = [g - down, c - plane];
        const here = plane * 73 + down;
        const near = candela[here]! * (1 - share) + candela[here + 1]! * share;
        const far = candela[here + 73]! * (1 - share) + candela[here + 74]! * share;
        lux[row * columns + column]! += ((near * (1 - across) + far * across) * weight) / squared;
      }
    }
  }
  return lux;
}

export async function run(): Promise<Row[]> {
  const rig = cells(rows);
  const lights = lightsFrom(
    'bench',
    fixtures,
    rows.map((row) => row.map((value) => ({ value }))),
  );
  if (isError(lights)) throw new Error(lights.message);
  const inputs = { rig, points };
  const given = {
    ...{ inputs, fixtures, spectra: noSpectra, options: {} },
    ...{ writing: defaultWriting, tolerance: 1 / 4 },
  };
  const made = plan.make(given);
  if ('reason' in made) throw new Error(made.reason);
  let turn = 0;
  /** Reads the cells anew, says them in words and draws, as each frame of a drag does. */
  const redraw = () => {
    turn += 1;
    const moved = made.moved('rig 7', [4 + (turn % 20) * 0.05, 2.5]);
    if ('reason' in moved) throw new Error(moved.reason);
    return moved.draw(fileTheme, size);
  };
  const took = await medianTime(redraw, { runs: 21 });
  /** The key point is elsewhere each time, so nothing of the picture before can be used again. */
  const anew = () => {
    turn += 1;
    const moved = cells([['Key', 4, 4, 1.6 + turn / 1000, 180, 0]]);
    const other = plan.make({
      ...given,
      inputs: { rig, points: [...moved, ...points.slice(1)] },
    });
    if ('reason' in other) throw new Error(other.reason);
    return other.draw(fileTheme, size);
  };
  const rest = await medianTime(anew, { runs: 7 });
  const tookAgainst = await medianTime(() => bare(lights), { runs: 21 });
  return [
    {
      what: 'one frame of a drag: cells read, words, lines of equal light, picture',
      took,
      against: `the light alone at ${(columns * lines).toLocaleString('en')} places, by bare loops`,
      tookAgainst,
      // One light of twenty is worked out anew.
      atMost: 6,
    },
    {
      what: 'the picture at rest, made anew, six pixels to a place',
      took: rest,
      against: 'one frame of a drag',
      tookAgainst: took,
    },
  ];
}
