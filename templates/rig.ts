import { choice } from './cells.ts';
import { columnsOf } from './columns.ts';
import type { PlannedCell } from './plan.ts';

type Three = readonly [x: number, y: number, z: number];

/** A light of the set as its author plans it; metres and stops. */
export interface PlannedLight {
  readonly light: string;
  readonly fixture: string;
  readonly at: Three;
  readonly aim: Three;
  readonly output?: string;
  readonly diffusion?: string;
  readonly gel?: string;
  readonly circuit?: string;
  /** Channel or address of the dimmer. */
  readonly channel?: string;
  /** A frame so many metres before the lamp, or a board where it is aimed. */
  readonly sheet?: {
    readonly size: readonly [width: number, height: number];
    readonly distance?: number;
    readonly through?: string;
    readonly bounce?: string;
    readonly towards?: Three;
  };
}

const place = (caption: string) => ({ caption, width: 82, numbers: true }) as const;

/** From fixture to towards z as the rig tables of POINTLUX and its like want them. */
export const rig = columnsOf({
  light: { caption: 'Light', width: 104 },
  fixture: { caption: 'Fixture', width: 168 },
  x: place('x'),
  y: place('y'),
  z: place('z'),
  aimX: place('aim x'),
  aimY: place('aim y'),
  aimZ: place('aim z'),
  output: { caption: 'output', width: 88, numbers: true },
  loss: { caption: 'loss', width: 96, numbers: true },
  roll: { caption: 'roll', width: 84, numbers: true },
  width: { caption: 'width', width: 96, numbers: true },
  height: { caption: 'height', width: 96, numbers: true },
  distance: { caption: 'distance', width: 96, numbers: true },
  through: { caption: 'through', width: 96, numbers: true },
  bounce: { caption: 'bounce', width: 96, numbers: true },
  towardsX: { caption: 'towards x', width: 96, numbers: true },
  towardsY: { caption: 'towards y', width: 88, numbers: true },
  towardsZ: { caption: 'towards z', width: 88, numbers: true },
  diffusion: { caption: 'Diffusion', width: 92, numbers: true },
  gel: { caption: 'Gel', width: 132, numbers: true },
  circuit: { caption: 'Circuit', width: 88 },
  channel: { caption: 'Channel', width: 92 },
});

/** Rows of lights that a sheet has room for, and where they begin. */
export const lights = 6;
export const rigHead = 2;
export const firstLight = rigHead + 1;
const lastLight = rigHead + lights;

const { letterOf } = rig;
/** The rig as functions take it, fixed for filling. */
export const rigRange = `$${letterOf('fixture')}$${firstLight}:$${letterOf('towardsZ')}$${lastLight}`;
/** For figures. */
export const figureRig = {
  rig: `${letterOf('fixture')}${firstLight}:${letterOf('towardsZ')}${lastLight}`,
  labels: `${letterOf('light')}${firstLight}:${letterOf('light')}${lastLight}`,
};

const metres = (value: number | undefined): PlannedCell =>
  choice(value === undefined ? '' : `${value} m`, 'length');
export const text = (typed: string): PlannedCell => choice(typed, 'text');

function lightRow(row: number, light: PlannedLight | undefined): Record<string, PlannedCell> {
  const [x, y, z] = light?.at ?? [];
  const [aimX, aimY, aimZ] = light?.aim ?? [];
  const { size, distance, through = '', bounce = '', towards = [] } = light?.sheet ?? {};
  const [towardsX, towardsY, towardsZ] = towards;
  return rig.row(row, {
    light: text(light?.light ?? ''),
    fixture: text(light?.fixture ?? ''),
    x: metres(x),
    y: metres(y),
    z: metres(z),
    aimX: metres(aimX),
    aimY: metres(aimY),
    aimZ: metres(aimZ),
    output: choice(light ? (light.output ?? '100 %') : '', 'share'),
    loss: {
      typed: `=IF(ISBLANK(${letterOf('fixture')}${row}),"",SUM(${letterOf('diffusion')}${row}:${letterOf('gel')}${row}))`,
      quantity: 'stops',
    },
    roll: choice('', 'angle'),
    width: metres(size?.[0]),
    height: metres(size?.[1]),
    distance: metres(distance),
    through: choice(through, 'stops'),
    bounce: choice(bounce, 'share'),
    towardsX: metres(towardsX),
    towardsY: metres(towardsY),
    towardsZ: metres(towardsZ),
    diffusion: choice(light?.diffusion ?? '', 'stops'),
    gel: choice(light?.gel ?? '', 'stops'),
    circuit: text(light?.circuit ?? ''),
    channel: text(light?.channel ?? ''),
  });
}

/** The table of lights at the head of a sheet. */
export function rigTable(planned: readonly PlannedLight[]): Record<string, PlannedCell> {
  return {
    A1: { typed: 'Lights', bold: true },
    [`${letterOf('width')}1`]: { typed: 'Frame or board before the lamp', bold: true },
    [`${letterOf('diffusion')}1`]: { typed: 'Stops lost at the lamp', bold: true },
    ...rig.captionRow(rigHead, rig.captions),
    ...Object.assign(
      {},
      ...Array.from({ length: lights }, (_, index) => lightRow(firstLight + index, planned[index])),
    ),
  };
}

/** The number of a light among those that name a fixture, as POINTSHARE and its like count them. */
export const numberOf = (index: number): string =>
  `COUNTA($${letterOf('fixture')}$${firstLight}:$${letterOf('fixture')}$${firstLight + index})`;
export const fixtureOf = (index: number): string => `$${letterOf('fixture')}$${firstLight + index}`;
export const nameOf = (index: number): PlannedCell => ({
  typed: `=IF(ISBLANK(${fixtureOf(index)}),"",$${letterOf('light')}$${firstLight + index})`,
  quantity: 'text',
  bold: true,
  align: 'right',
});

/** Columns under the frame’s, one for each light. */
export const lightColumns = [
  'width',
  'height',
  'distance',
  'through',
  'bounce',
  'towardsX',
] as const;

/** A point of the set: where it is and where its receiver faces. */
export interface PlannedPoint {
  readonly point: string;
  readonly at: Three;
  readonly azimuth: number;
  readonly tilt?: number;
  readonly ambient?: string;
  readonly wanted?: string;
}

/** Point, place and facing, in the columns of fixture, place and aim: as figures and functions take them. */
export const pointCells = (point: PlannedPoint | undefined) => {
  const [x, y, z] = point?.at ?? [];
  const angle = (value: number | undefined) =>
    choice(value === undefined ? '' : `${value}°`, 'angle');
  return {
    fixture: text(point?.point ?? ''),
    x: metres(x),
    y: metres(y),
    z: metres(z),
    aimX: angle(point?.azimuth),
    aimY: angle(point && (point.tilt ?? 0)),
  } as const;
};
export const pointCaptions = {
  fixture: 'Point',
  x: 'x',
  y: 'y',
  z: 'z',
  aimX: 'azimuth',
  aimY: 'tilt',
} as const;

/** x, y, z, azimuth and tilt of a point, for POINTLUX and its like. */
export const pointAt = (row: number): string =>
  (['x', 'y', 'z', 'aimX', 'aimY'] as const).map((name) => `$${letterOf(name)}${row}`).join(',');
export const placeAt = (row: number): string =>
  (['x', 'y', 'z'] as const).map((name) => `$${letterOf(name)}${row}`).join(',');

export const reckoning = [
  'x runs to the right on the plan, y up the plan, z up from the floor. Azimuth runs clockwise from up the plan, tilt up from level.',
  'A frame hangs so far before the lamp on its aim line and loses its stops; a board stands where the lamp is aimed and sends its share back. Both are matt and evenly lit.',
  'Light that misses a frame is lost, and a hot middle is spread over it. Direct light alone: walls, floor and people send nothing back, and nothing stands in the way.',
];

export const cautions = [
  'A photometric file describes a clean new fixture at its rated voltage. Meter what matters: lamps age, lenses gather dust, diffusion differs by the roll.',
  'Lamps are hot: keep cloth, gel and frames clear of them, more so near an open face. What hangs over people needs a second fixing, and a rigger who answers for it.',
  'Nobody looks into a lamp from near. Where a frame comes down or a beam is narrowed, ask again what reaches eyes: ultraviolet and blue light hurt before they are felt.',
];
