import { luxOver, type Field } from '../../functions/fixture/field.ts';
import { photometryOf } from '../../functions/fixture/photometry.ts';
import { point } from '../../functions/fixture/throw.ts';
import { place, type Placed } from '../../functions/fixture/rig.ts';
import { medianTime, type Row } from './bench.ts';

export const name = 'The light over a set, 200 × 200 points from 20 fixtures with tabulated throws';

const [side, count] = [200, 20];
const step = 0.05;
const gammaStep = 2.5;
const planeStep = 15;
const gammas = Float64Array.from({ length: 73 }, (_, index) => index * gammaStep);
const planes = Float64Array.from({ length: 25 }, (_, index) => index * planeStep);

/** An oval beam: no two planes of a quarter are alike. */
const candela = Float64Array.from({ length: planes.length * gammas.length }, (_, index) => {
  const gamma = gammas[index % gammas.length]! * (Math.PI / 180);
  const plane = planes[Math.floor(index / gammas.length)]! * (Math.PI / 180);
  return 20_000 * Math.exp(-((gamma / (0.3 + 0.2 * Math.cos(plane) ** 2)) ** 2));
});

const photometry = photometryOf({ name: 'Oval', planes, gammas, candela, watts: 300, face: point });
const fixture = { kind: 'projector', name: 'Oval', photometry } as const;

const lights: readonly Placed[] = Array.from({ length: count }, (_, index) => {
  const at = [(index % 5) * 2, Math.floor(index / 5) * 2.5, 4] as const;
  const light = { fixture, at, aim: [5, 5, 0] as const, output: 1, loss: 0, roll: index * 10 };
  const placed = place(light);
  if (!placed) throw new Error('A light is aimed at itself.');
  return placed;
});

const field: Field = {
  from: [0, 0, 1.5],
  along: [step, 0, 0],
  down: [0, step, 0],
  columns: side,
  rows: side,
  facing: [0, 0, 1],
};

/** The same field by bare loops over typed arrays: even tables, no shelf, no words, no choices. */
function bare(): Float64Array {
  const lux = new Float64Array(side * side);
  const numbers = new Float64Array(count * 12);
  lights.forEach(({ at, forward, right, up }, index) =>
    numbers.set([...at, ...forward, ...right, ...up], index * 12),
  );
  const toGamma = 180 / Math.PI / gammaStep;
  const toPlane = 180 / Math.PI / planeStep;
  for (let light = 0; light < count; light += 1) {
    const o = light * 12;
    for (let row = 0; row < side; row += 1) {
      for (let column = 0; column < side; column += 1) {
        const x = column * step - numbers[o]!;
        const y = row * step - numbers[o + 1]!;
        const z = 1.5 - numbers[o + 2]!;
        const squared = x * x + y * y + z * z;
        const cosine = -z / Math.sqrt(squared);
        if (cosine <= 0) continue;
        const ahead = x * numbers[o + 3]! + y * numbers[o + 4]! + z * numbers[o + 5]!;
        const aside = x * numbers[o + 6]! + y * numbers[o + 7]! + z * numbers[o + 8]!;
        const above = x * numbers[o + 9]! + y * numbers[o + 10]! + z * numbers[o + 11]!;
        const g = Math.atan2(Math.sqrt(aside * aside + above * above), ahead) * toGamma;
        let c = Math.atan2(above, aside) * toPlane;
        if (c < 0) c += 24;
        const down = Math.min(71, g | 0);
        const plane = Math.min(23, c | 0);
        const [share, across] = [g - down, c - plane];
        const here = plane * 73 + down;
        const near = candela[here]! * (1 - share) + candela[here + 1]! * share;
        const far = candela[here + 73]! * (1 - share) + candela[here + 74]! * share;
        lux[row * side + column]! += ((near * (1 - across) + far * across) * cosine) / squared;
      }
    }
  }
  return lux;
}

export async function run(): Promise<Row[]> {
  const [ours, theirs] = [luxOver(lights, field), bare()];
  const off = ours.reduce((most, lux, index) => Math.max(most, Math.abs(lux - theirs[index]!)), 0);
  if (!(off < 1e-6)) throw new Error(`The two fields differ by ${String(off)} lx.`);
  const took = await medianTime(() => luxOver(lights, field), { runs: 11 });
  const tookAgainst = await medianTime(bare, { runs: 11 });
  return [
    {
      what: `${(side * side * count).toLocaleString('en')} intensities, distances and cosines`,
      took,
      against: 'bare loops over typed arrays with even tables',
      tookAgainst,
      atMost: 2,
    },
  ];
}
