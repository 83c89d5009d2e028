import { faceOf } from '../../../../functions/fixture/fixture.ts';
import { lightsFrom, luxFrom } from '../../../../functions/fixture/rigTable.ts';
import type { Placed, Receptor } from '../../../../functions/fixture/rig.ts';
import type { Vector } from '../../../../functions/fixture/rectangle.ts';
import { isError } from '../../../../functions/values.ts';
import type { Given, Undrawn } from '../../figure.ts';
import { numberIn } from '../cells.ts';
import { cornersOf } from './faces.ts';
import {
  lightRows,
  outlinesIn,
  pointRows,
  tableRows,
  troubleIn,
  type LightRow,
  type PointRow,
} from './rows.ts';
import { words } from '../../../words/words.ts';

/** Which of x, y and z run across the picture and up it. */
export type Axes = readonly [across: 0 | 1, up: 1 | 2];

export interface SetPoint extends PointRow {
  readonly lux: number;
  /** From the key; −Infinity where no light falls. */
  readonly stops: number;
}

export interface SetLight extends LightRow {
  readonly placed: Placed;
  /** Of the light at the key point, 0 to 1. */
  readonly share: number;
}

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The set with its light, looked at along one axis. Lengths in metres. */
export interface SetPicture {
  readonly axes: Axes;
  readonly lights: readonly SetLight[];
  readonly points: readonly SetPoint[];
  readonly key: SetPoint;
  readonly receptor: Receptor;
  readonly outlines: readonly (readonly Vector[])[];
  /** Where lines of equal light are read, and how; missing where none are drawn. */
  readonly lines?: {
    /** The coordinate of the third axis. */
    readonly depth: number;
    readonly look: Vector;
    readonly receptor: Receptor;
    readonly lying: boolean;
  };
  readonly frame: Frame;
  /** Something is being moved: quickly rather than finely. */
  readonly rough: boolean;
}

const farthest = 2000;
const room = 0.6;

export function readSet(given: Given, axes: Axes, held?: SetPicture): SetPicture | Undrawn {
  const { inputs, options, fixtures } = given;
  const [rig = [], table = []] = [inputs['rig'], inputs['points']];
  const trouble = troubleIn(rig) ?? troubleIn(table);
  if (trouble !== undefined) return { reason: trouble };
  const placed = lightsFrom(words.set.plan, fixtures, tableRows(rig));
  if (isError(placed)) return { reason: placed.message };
  const rows = lightRows(given);
  if (rows.length === 0) return { reason: words.set.noLight };
  const named = pointRows(table);
  if (named.length === 0) return { reason: words.set.noPoint };
  const receptor = options['receptor'] === 'flat' ? 'flat' : 'dome';
  const read = ({ at, look }: PointRow, lights = placed) =>
    luxFrom(words.set.plan, lights, at, look, receptor);
  const keyRow = keyAmong(named, inputs['key']?.[0]?.[0]?.value);
  if ('reason' in keyRow) return keyRow;
  const keyLux = read(keyRow);
  if (isError(keyLux)) return { reason: keyLux.message };
  if (!(keyLux > 0)) return { reason: words.set.keyDark(keyRow.name) };
  const points: SetPoint[] = [];
  for (const row of named) {
    const lux = read(row);
    if (isError(lux)) return { reason: lux.message };
    points.push({ ...row, lux, stops: Math.log2(lux / keyLux) });
  }
  const key = points[named.indexOf(keyRow)];
  if (!key) return { reason: words.set.noPoint };
  const lights = rows.flatMap((row, index): SetLight[] => {
    const light = placed[index];
    if (!light) return [];
    const own = read(keyRow, [light]);
    return [{ ...row, placed: light, share: isError(own) ? 0 : own / keyLux }];
  });
  const outlines = outlinesIn(inputs['outline']);
  const frame = held?.frame ?? frameOf(axes, lights, points, outlines);
  if (frame.right - frame.left > farthest || frame.top - frame.bottom > farthest)
    return { reason: words.set.tooWide };
  const lines = linesOf(given, axes, key, receptor);
  return {
    ...{ axes, lights, points, key, receptor, outlines, frame },
    ...(lines && { lines }),
    rough: held !== undefined,
  };
}

function keyAmong(points: readonly PointRow[], wanted: unknown): PointRow | Undrawn {
  const [first] = points;
  if (!first) return { reason: words.set.noPoint };
  if (typeof wanted !== 'string' || wanted.trim() === '')
    return points.find(({ name }) => /\bkey\b/i.test(name)) ?? first;
  const key = wanted.trim().toLowerCase();
  const found = points.find(({ name }) => name.toLowerCase() === key);
  return found ?? { reason: words.set.noKey(wanted.trim()) };
}

/** The plan lies at a height, a section stands where the key point is. */
function linesOf(given: Given, axes: Axes, key: SetPoint, receptor: Receptor): SetPicture['lines'] {
  const kind = given.options['lines'] ?? 'key';
  if (kind === 'none') return undefined;
  const lying = kind === 'floor';
  const across = thirdOf(axes);
  const height = numberIn(given, 'height') ?? (lying ? 0 : key.at[2]);
  return {
    depth: across === 2 ? height : key.at[across],
    look: lying ? [0, 0, 1] : key.look,
    receptor: lying ? 'flat' : receptor,
    lying,
  };
}

/** The axis that the picture is looked at along. */
export const thirdOf = ([across, up]: Axes): 0 | 1 | 2 => (3 - across - up) as 0 | 1 | 2;

/** Everything there is with some room around it, on half metres; a section stands on the floor. */
function frameOf(
  [across, up]: Axes,
  lights: readonly SetLight[],
  points: readonly SetPoint[],
  outlines: readonly (readonly Vector[])[],
): Frame {
  const places = [
    ...lights.flatMap(({ at, aim, towards, placed }) => [
      at,
      aim,
      ...(towards ? [towards] : []),
      ...cornersOf(placed, faceOf(placed.fixture)),
    ]),
    ...points.map(({ at }) => at),
    ...outlines.flat(),
    ...(up === 2 ? [[points[0]?.at[0] ?? 0, points[0]?.at[1] ?? 0, 0] as const] : []),
  ];
  const [us, vs] = [places.map((at) => at[across]), places.map((at) => at[up])];
  const down = (value: number) => Math.floor((value - room) * 2) / 2;
  const upwards = (value: number) => Math.ceil((value + room) * 2) / 2;
  const lowest = Math.min(...vs);
  return {
    left: down(Math.min(...us)),
    right: upwards(Math.max(...us)),
    bottom: up === 2 && lowest >= 0 ? 0 : down(lowest),
    top: upwards(Math.max(...vs)),
  };
}
