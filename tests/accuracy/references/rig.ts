import type { TableRow } from '../../../functions/values.ts';
import { Exact } from '../decimal.ts';
import type { Chance, References } from '../measure.ts';
import {
  along,
  atPoint,
  axesOf,
  fromPatches,
  named,
  plus,
  radians,
  size,
  unit,
  type Vector,
} from './fixtures.ts';

// What a rig does to a point, a move or an area, written down once more from single lights.

const row = (...values: (string | number)[]): TableRow => values.map((value) => ({ value }));
const from = (chance: Chance, low: number, high: number) => low + chance() * (high - low);

/** A fixture two to four metres off the middle of the set, aimed near it. */
function light(chance: Chance, fixture: string): TableRow {
  const turn = from(chance, 0, 2 * Math.PI);
  const away = from(chance, 2, 4);
  const aim = [from(chance, -0.5, 0.5), from(chance, -0.5, 0.5), from(chance, 0.8, 1.5)];
  const stands = [away * Math.cos(turn), away * Math.sin(turn), from(chance, 0.5, 3)];
  return row(fixture, ...stands, ...aim, from(chance, 0.2, 1), from(chance, 0, 2), 0);
}

const lights = (chance: Chance) => ['Bulb', 'Spot', 'Bulb'].map((name) => light(chance, name));
const point = (chance: Chance) => [
  from(chance, -0.5, 0.5),
  from(chance, -0.5, 0.5),
  from(chance, 0.8, 1.5),
];
const faced = (chance: Chance) => [from(chance, -180, 180), from(chance, -60, 60)];
const place = (light: TableRow): Vector => [1, 2, 3].map((at) => Number(light[at]?.value)) as never;
const aimOf = (light: TableRow): Vector => [4, 5, 6].map((at) => Number(light[at]?.value)) as never;

const receivers = {
  flat: (cosine: number) => Math.max(0, cosine),
  dome: (cosine: number) => (1 + cosine) / 2,
};
type Receptor = keyof typeof receivers;

/** Lux of some lights at a point; they stand too far off for it to be undefined. */
const lux = (
  rig: readonly TableRow[],
  [x, y, z]: Vector,
  [azimuth, tilt]: readonly [number, number],
  receptor: Receptor,
) => atPoint([rig, x, y, z, azimuth, tilt], receivers[receptor]) ?? NaN;

type OnMark = readonly [TableRow[], number, number, number, number, number];
const onMark = (chance: Chance) => [
  [light(chance, chance() < 0.5 ? 'Bulb' : 'Spot')],
  1,
  ...point(chance),
  from(chance, 0.1, 2),
];
const ofMark = {
  against: 'the inverse square law, for what throws from a point',
  limit: 1e-9,
  sample: onMark,
};
const distanceOf = ([rig, , x, y, z]: OnMark) => size(plus([x, y, z], place(rig[0]!), -1));

/** A slanting rectangle some way off the lights. */
function area(chance: Chance): TableRow[] {
  const corner: Vector = [from(chance, -1, 0), from(chance, 5, 6), from(chance, 0, 1)];
  const across: Vector = [from(chance, 1, 3), from(chance, -0.3, 0.3), 0];
  const up: Vector = [0, from(chance, -0.3, 0.3), from(chance, 1, 3)];
  return [corner, plus(corner, across, 1), plus(corner, up, 1)].map((one) => row(...one));
}

type Area = readonly [TableRow[], TableRow[], number, number, number];

/** Every point of an area by itself, on a receptor that lies in it. */
function points([rig, corners, columns, rows, ambient]: Area): number[] {
  const [first, right, up] = corners.map((corner) => corner.map(({ value }) => Number(value)));
  const [a, b, c] = [first, right, up] as unknown as readonly [Vector, Vector, Vector];
  const [e, f] = [plus(b, a, -1), plus(c, a, -1)];
  const normal = unit([
    e[1] * f[2] - e[2] * f[1],
    e[2] * f[0] - e[0] * f[2],
    e[0] * f[1] - e[1] * f[0],
  ]);
  const degrees = 180 / Math.PI;
  const look = [
    Math.atan2(normal[0], normal[1]) * degrees,
    Math.asin(normal[2]) * degrees,
  ] as const;
  return Array.from({ length: columns * rows }, (_, index) => {
    const [i, j] = [index % columns, Math.floor(index / columns)];
    const at = plus(plus(a, e, i / (columns - 1)), f, j / (rows - 1));
    return ambient + lux(rig, at, look, 'flat');
  });
}

const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;
const areaSample = (chance: Chance) => [
  lights(chance),
  area(chance),
  2 + Math.floor(chance() * 5),
  2 + Math.floor(chance() * 5),
  from(chance, 0, 20),
];
const ofPoints = { against: 'each point by itself', limit: 1e-8 };

/** Across the ends of a line through the middle of a face, by the law of cosines. */
function angleAcross(seen: Vector, middle: Vector, half: Vector): number {
  const [one, other] = [plus(middle, half, 1), plus(middle, half, -1)];
  const [a, b, c] = [
    size(plus(seen, one, -1)),
    size(plus(seen, other, -1)),
    size(plus(one, other, -1)),
  ];
  return (Math.acos((a * a + b * b - c * c) / (2 * a * b)) * 180) / Math.PI;
}

function panelBefore(chance: Chance) {
  const panel = row('Panel', ...[0, 0, 1], ...[0, 1, 1], 1, 0, from(chance, 0, 90));
  return [[panel], 1, from(chance, -2, 2), from(chance, 1, 4), from(chance, 0, 2)];
}

type Before = readonly [TableRow[], number, number, number, number];
const roll = (light: TableRow) => Number(light[9]?.value);
const axes = (light: TableRow) => axesOf(unit(plus(aimOf(light), place(light), -1)), roll(light));

export const rigs: References = {
  POINTSHARE: {
    against: 'the lights one by one',
    limit: 1e-9,
    sample: (chance) => [
      lights(chance),
      Math.floor(chance() * 4),
      ...point(chance),
      ...faced(chance),
      from(chance, 1, 50),
      chance() < 0.5 ? 'dome' : 'flat',
    ],
    work: ([rig, wanted, x, y, z, azimuth, tilt, ambient, receptor]: readonly [
      TableRow[],
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      Receptor,
    ]) => {
      const each = rig.map((one) => lux([one], [x, y, z], [azimuth, tilt], receptor));
      return [ambient, ...each][wanted]! / (ambient + each.reduce((sum, one) => sum + one, 0));
    },
  },
  POINTSOFTNESS: {
    against: 'the law of cosines',
    limit: 1e-9,
    sample: panelBefore,
    work: ([rig, , x, y, z]: Before) => {
      const panel = named('Panel');
      if (panel.kind !== 'panel') throw new Error('Panel is none.');
      const [right, up] = axes(rig[0]!);
      return Math.max(
        ...(
          [
            [right, panel.width],
            [up, panel.height],
          ] as const
        ).map(([axis, side]) =>
          angleAcross([x, y, z], place(rig[0]!), plus([0, 0, 0], axis, side / 2)),
        ),
      );
    },
  },
  HOLDSFROM: {
    ...ofMark,
    work: (mark: OnMark) => new Exact(2).pow(-mark[5] / 2).times(distanceOf(mark)),
  },
  HOLDSTO: {
    ...ofMark,
    work: (mark: OnMark) => new Exact(2).pow(mark[5] / 2).times(distanceOf(mark)),
  },
  POINTHOLDS: {
    against: 'walking in steps of a millimetre',
    limit: 1.1e-3,
    oneIn: 4,
    sample: (chance) => [
      [light(chance, 'Bulb')],
      ...point(chance),
      ...faced(chance),
      from(chance, -180, 180),
      from(chance, 0.1, 0.6),
      from(chance, 0, 2),
      'dome',
    ],
    work: ([rig, x, y, z, azimuth, tilt, towards, stops, ambient]: readonly [
      TableRow[],
      ...number[],
    ]) => {
      const way: Vector = [Math.sin(radians(towards!)), Math.cos(radians(towards!)), 0];
      const off = (metres: number) => {
        const at = plus([x!, y!, z!], way, metres);
        return Math.log2((ambient! + lux(rig, at, [azimuth!, tilt!], 'dome')) / here);
      };
      const here = ambient! + lux(rig, [x!, y!, z!], [azimuth!, tilt!], 'dome');
      for (let metres = 0; metres < 20; metres += 1e-3) {
        const now = off(metres);
        // A bulb half a metre off is where the reference itself stops.
        if (Number.isNaN(now)) return undefined;
        if (Math.abs(now) > stops!) return metres;
      }
      return 20;
    },
  },
  FIELDLUX: {
    ...ofPoints,
    sample: (chance) => {
      const [rig, corners, ...rest] = areaSample(chance);
      const what = ['lowest', 'highest', 'mean'][Math.floor(chance() * 3)];
      return [rig, corners, what, ...rest];
    },
    work: ([rig, corners, what, ...rest]: readonly [
      TableRow[],
      TableRow[],
      string,
      number,
      number,
      number,
    ]) => {
      const all = points([rig, corners, ...rest]);
      return { lowest: Math.min(...all), highest: Math.max(...all), mean: mean(all) }[what];
    },
  },
  FIELDSPREAD: {
    ...ofPoints,
    sample: areaSample,
    work: (given: Area) => {
      const all = points(given);
      return new Exact(Math.max(...all)).div(Math.min(...all)).log(2);
    },
  },
  FIELDEVENNESS: {
    ...ofPoints,
    sample: areaSample,
    work: (given: Area) => {
      const all = points(given);
      return Math.min(...all) / mean(all);
    },
  },
  NEARFIELDERROR: {
    against: 'the rectangle as 10,000 patches',
    limit: 5e-3,
    unit: 'stop',
    oneIn: 2,
    sample: panelBefore,
    work: ([rig, , x, y, z]: Before) => {
      const panel = named('Panel');
      if (panel.kind !== 'panel') throw new Error('Panel is none.');
      const to = plus([x, y, z], place(rig[0]!), -1);
      const turned = axes(rig[0]!);
      const facing = plus([0, 0, 0], unit(to), -1);
      const real = fromPatches(panel, turned, to, (towards) => Math.max(0, along(towards, facing)));
      const cosine = along(unit(to), turned[2]);
      const candela = panel.luminance * panel.width * panel.height * cosine;
      return Math.log2(candela / size(to) ** 2 / real);
    },
  },
};
