import { exampleFixtures } from '../../../functions/fixture/exampleFixtures.ts';
import type { Fixture } from '../../../functions/fixture/fixture.ts';
import type { TableRow } from '../../../functions/values.ts';
import { Exact } from '../decimal.ts';
import type { References } from '../measure.ts';

export type Vector = readonly [number, number, number];

export const radians = (degrees: number) => (degrees * Math.PI) / 180;
export const size = (v: Vector) => Math.sqrt(v[0] ** 2 + v[1] ** 2 + v[2] ** 2);
export const along = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const plus = (a: Vector, b: Vector, times: number): Vector => [
  a[0] + b[0] * times,
  a[1] + b[1] * times,
  a[2] + b[2] * times,
];
const across = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const unit = (v: Vector) => plus([0, 0, 0], v, 1 / size(v));

export function named(name: string): Fixture {
  const fixture = exampleFixtures.named(name);
  if (typeof fixture !== 'object') throw new Error(`There is no ${name}.`);
  return fixture;
}

/** All example fixtures are round: the neighbours are found by going through all angles. */
function candela(fixture: Fixture, gamma: number): InstanceType<typeof Exact> {
  if (fixture.kind === 'panel') {
    const cosine = Exact.cos(new Exact(gamma).times(Exact.acos(-1)).div(180));
    return Exact.max(0, cosine.times(fixture.luminance).times(fixture.width).times(fixture.height));
  }
  const { gammas, candela: values } = fixture.photometry;
  const next = gammas.findIndex((angle) => angle >= gamma);
  if (next < 0) return new Exact(0);
  if (next === 0) return new Exact(values[0]!);
  const [low, high] = [new Exact(gammas[next - 1]!), new Exact(gammas[next]!)];
  const share = new Exact(gamma).minus(low).div(high.minus(low));
  return share.times(values[next]!).plus(new Exact(1).minus(share).times(values[next - 1]!));
}

const patches = 100;

/** A rectangle as 10,000 small sources; `weigh` says what the receiver makes of a direction. */
export function fromPatches(
  fixture: Extract<Fixture, { kind: 'panel' }>,
  [right, up, forward]: readonly [Vector, Vector, Vector],
  to: Vector,
  weigh: (towards: Vector) => number,
): number {
  const area = (fixture.width * fixture.height) / patches ** 2;
  let sum = 0;
  for (let i = 0; i < patches; i += 1) {
    for (let j = 0; j < patches; j += 1) {
      const x = ((i + 0.5) / patches - 0.5) * fixture.width;
      const y = ((j + 0.5) / patches - 0.5) * fixture.height;
      const line = plus(plus(to, right, -x), up, -y);
      const leaving = along(line, forward) / size(line);
      if (leaving <= 0) continue;
      const weight = weigh(plus([0, 0, 0], line, -1 / size(line)));
      sum += (fixture.luminance * leaving * weight * area) / size(line) ** 2;
    }
  }
  return sum;
}

export function axesOf(forward: Vector, roll: number): readonly [Vector, Vector, Vector] {
  const upright = Math.abs(forward[2]) > 1 - 1e-15;
  const level: Vector = upright ? [1, 0, 0] : unit(across(forward, [0, 0, 1]));
  const high = across(level, forward);
  const turn = radians(roll);
  const right = plus(plus([0, 0, 0], level, Math.cos(turn)), high, Math.sin(turn));
  return [right, across(right, forward), forward];
}

/** One light of a rig at a point, written down once more: law of cosines, angle by its cosine. */
function oneLight(row: TableRow, at: Vector, weigh: (towards: Vector) => number): number {
  const fixture = named(String(row[0]?.value));
  const [x, y, z, aimX, aimY, aimZ, output = 1, loss = 0, roll = 0] = row
    .slice(1)
    .map(({ value }) => (value === undefined ? undefined : Number(value)));
  const stands: Vector = [x!, y!, z!];
  const forward = unit(plus([aimX!, aimY!, aimZ!], stands, -1));
  const to = plus(at, stands, -1);
  const share = output / 2 ** loss;
  if (fixture.kind === 'panel')
    return share * fromPatches(fixture, axesOf(forward, roll), to, weigh);
  const cosine = Math.max(-1, Math.min(1, along(unit(to), forward)));
  const gamma = (Math.acos(cosine) * 180) / Math.PI;
  const towards = plus([0, 0, 0], to, -1 / size(to));
  return (share * candela(fixture, gamma).toNumber() * weigh(towards)) / size(to) ** 2;
}

type Point = readonly [readonly TableRow[], number, number, number, number, number];

export function atPoint(
  [rig, x, y, z, azimuth, tilt]: Point,
  receiver: (cosine: number) => number,
): number | undefined {
  const [a, t] = [radians(azimuth), radians(tilt)];
  const look: Vector = [Math.sin(a) * Math.cos(t), Math.cos(a) * Math.cos(t), Math.sin(t)];
  const rows = rig.filter(([first]) => exampleFixtures.named(String(first?.value)) !== undefined);
  const close = rows.some((row) => {
    const to: Vector = [
      x - Number(row[1]?.value),
      y - Number(row[2]?.value),
      z - Number(row[3]?.value),
    ];
    return size(to) < 0.5;
  });
  // So close, the angle by its cosine is itself not good to the digits asked for.
  if (close) return undefined;
  const weigh = (towards: Vector) => receiver(along(towards, look));
  return rows.reduce((sum, row) => sum + oneLight(row, [x, y, z], weigh), 0);
}

/** A meter that faces the fixture’s middle, in a direction off its aim. */
function facing(fixture: Fixture, distance: number, vertical: number, horizontal: number) {
  if (fixture.kind === 'projector')
    return candela(fixture, vertical).div(new Exact(distance).pow(2));
  const [v, h] = [radians(vertical), radians(horizontal)];
  const to: Vector = [
    distance * Math.sin(v) * Math.cos(h),
    distance * Math.sin(v) * Math.sin(h),
    -distance * Math.cos(v),
  ];
  const look = plus([0, 0, 0], to, -1 / distance);
  const axes = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, -1],
  ] as const;
  const lux = fromPatches(fixture, axes, to, (towards) => Math.max(0, along(towards, look)));
  return new Exact(lux);
}

/** Where the intensity falls below a share of the highest, by halving from outside. */
function edge(fixture: Fixture, fraction: number): number {
  const highest = candela(fixture, 0).times(fraction);
  if (candela(fixture, 180).gte(highest)) return 180;
  let [lit, dark] = [0, 180];
  for (let halvings = 0; halvings < 60; halvings += 1) {
    const middle = (lit + dark) / 2;
    if (candela(fixture, middle).gte(highest)) lit = middle;
    else dark = middle;
  }
  return lit;
}

const share = {
  off: (ours: number, theirs: number) => Math.abs(ours - theirs) / Math.max(1, theirs),
};
const patched = {
  against: 'the rectangle as 10,000 patches',
  limit: 5e-3,
  unit: 'share',
  ...share,
};
const isPanel = (name: string) => named(name).kind === 'panel';

type Seen = readonly [string, number, number, number];

export const fixtures: References = {
  FIXTURECANDELA: {
    against: 'going through all angles with fifty digits',
    limit: 1e-10,
    work: ([name, vertical]: Seen) => candela(named(name), vertical),
  },
  FIXTURELUX: {
    ...patched,
    oneIn: 2,
    // Nearer, the patches themselves are too coarse.
    work: ([name, distance, vertical, horizontal]: Seen) =>
      isPanel(name) && distance < 1
        ? undefined
        : facing(named(name), distance, vertical, horizontal),
  },
  FIXTUREDISTANCE: {
    against: 'the lux of patches at that distance, as a distance',
    limit: 5e-3,
    unit: 'share',
    oneIn: 2,
    work: ([name, lux, vertical, horizontal]: Seen) => {
      const fixture = named(name);
      let [near, far] = [0, 1000];
      for (let halvings = 0; halvings < 40; halvings += 1) {
        const middle = (near + far) / 2;
        if (facing(fixture, middle, vertical, horizontal).gt(lux)) near = middle;
        else far = middle;
      }
      return isPanel(name) && near < 1 ? undefined : new Exact(near);
    },
    ...share,
  },
  FIXTUREBEAM: {
    against: 'halving from outside with fifty digits',
    limit: 1e-9,
    work: ([name, fraction]: readonly [string, number]) =>
      new Exact(2 * edge(named(name), fraction)),
  },
  FIXTUREDIAMETER: {
    against: 'halving from outside with fifty digits',
    limit: 1e-9,
    work: ([name, distance, fraction]: readonly [string, number, number]) =>
      new Exact(2 * distance * Math.tan(radians(edge(named(name), fraction)))),
  },
  FIXTURELUMENS: {
    against: 'Simpson’s rule over 20,000 zones',
    limit: 1e-5,
    unit: 'share',
    oneIn: 10,
    work: ([name, from, to]: readonly [string, number, number]) => {
      const fixture = named(name);
      const zones = 20_000;
      const step = (to - from) / zones;
      let sum = 0;
      for (let index = 0; index <= zones; index += 1) {
        const gamma = from + index * step;
        const weight = index === 0 || index === zones ? 1 : index % 2 === 1 ? 4 : 2;
        sum += weight * plainCandela(fixture, gamma) * Math.sin(radians(gamma));
      }
      return new Exact((2 * Math.PI * sum * radians(step)) / 3);
    },
    ...share,
  },
  FIXTUREWATTS: {
    against: 'what the example fixtures were given',
    limit: 0,
    work: ([name]: readonly [string]) => ({ bulb: 60, spot: 650, panel: 100 })[name.toLowerCase()]!,
  },
  FIXTUREFARFIELD: {
    against: 'the sizes that the example fixtures were given',
    limit: 1e-12,
    work: ([name, times]: readonly [string, number]) => {
      const widest = { bulb: 0, spot: 0.15, panel: new Exact(2).sqrt() }[name.toLowerCase()];
      return new Exact(widest ?? NaN).times(times);
    },
  },
  POINTLUX: {
    ...patched,
    work: (point: Point) => atPoint(point, (cosine) => Math.max(0, cosine)),
  },
  POINTDOME: {
    ...patched,
    work: (point: Point) => atPoint(point, (cosine) => (1 + cosine) / 2),
  },
};

/** The same as above in plain numbers, for the many zones. */
function plainCandela(fixture: Fixture, gamma: number): number {
  if (fixture.kind === 'panel')
    return (
      fixture.luminance * fixture.width * fixture.height * Math.max(0, Math.cos(radians(gamma)))
    );
  const { gammas, candela: values } = fixture.photometry;
  let next = 0;
  while (next < gammas.length && gammas[next]! < gamma) next += 1;
  if (next === gammas.length) return 0;
  if (next === 0) return values[0]!;
  const part = (gamma - gammas[next - 1]!) / (gammas[next]! - gammas[next - 1]!);
  return values[next - 1]! + part * (values[next]! - values[next - 1]!);
}
