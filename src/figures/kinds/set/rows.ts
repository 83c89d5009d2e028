import { towardsColumn } from '../../../../functions/fixture/rigColumns.ts';
import { facing } from '../../../../functions/fixture/rigTable.ts';
import type { Vector } from '../../../../functions/fixture/rectangle.ts';
import type { TableRow } from '../../../../functions/values.ts';
import type { Block, Datum, Given } from '../../figure.ts';
import { numberOf } from '../cells.ts';

/** A row of the table of points that has a place. */
export interface PointRow {
  readonly row: number;
  readonly name: string;
  readonly at: Vector;
  /** Where its receptor looks, a unit vector. */
  readonly look: Vector;
}

/** A row of the rig that has a place and an aim. */
export interface LightRow {
  readonly row: number;
  readonly name: string;
  readonly at: Vector;
  readonly aim: Vector;
  /** What its frame or board faces, where that is said. */
  readonly towards?: Vector;
}

const vectorIn = (row: readonly Datum[], from: number): Vector | undefined => {
  const [x, y, z] = [0, 1, 2].map((axis) => numberOf(row[from + axis]));
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
};

const nameIn = (datum: Datum | undefined): string =>
  datum?.value === null || datum?.value === undefined ? '' : String(datum.value).trim();

/** Where a point faces that says nothing of it: up, as a meter lies on a table. */
const upward: Vector = [0, 0, 1];

export const pointRows = (block: Block): readonly PointRow[] =>
  block.flatMap((cells, row) => {
    const [name, at] = [nameIn(cells[0]), vectorIn(cells, 1)];
    if (name === '' || !at) return [];
    const [azimuth, tilt] = [numberOf(cells[4]), numberOf(cells[5])];
    const level = azimuth !== undefined || tilt !== undefined;
    return [{ row, name, at, look: level ? facing(azimuth ?? 0, tilt ?? 0) : upward }];
  });

/** The rows of lights; the same fixture in several rows is told apart by numbers. */
export function lightRows({ inputs }: Given): readonly LightRow[] {
  const rows = (inputs['rig'] ?? []).flatMap((cells, row) => {
    const [fixture, at, aim] = [nameIn(cells[0]), vectorIn(cells, 1), vectorIn(cells, 4)];
    const name = nameIn(inputs['labels']?.[row]?.[0]) || fixture;
    const towards = vectorIn(cells, towardsColumn);
    return fixture === '' || !at || !aim
      ? []
      : [{ row, name, at, aim, ...(towards && { towards }) }];
  });
  const alike = (name: string) => rows.filter((one) => one.name === name);
  return rows.map((one) => {
    const same = alike(one.name);
    return same.length < 2 ? one : { ...one, name: `${one.name} ${same.indexOf(one) + 1}` };
  });
}

/** Cells as the library's rig reader takes them. */
export const tableRows = (block: Block): readonly TableRow[] =>
  block.map((row) =>
    row.map(({ value, at }) => ({ value: value ?? undefined, ...(at !== undefined && { at }) })),
  );

/** The first cell of a table that should have a value and says why it has none. */
export const troubleIn = (block: Block): string | undefined =>
  block.flat().find(({ reason }) => reason !== undefined)?.reason;

/** Corners of the set, in lines that an empty row ends. */
export function outlinesIn(block: Block | undefined): readonly (readonly Vector[])[] {
  const lines: Vector[][] = [[]];
  for (const cells of block ?? []) {
    const [x, y] = [numberOf(cells[0]), numberOf(cells[1])];
    if (x === undefined || y === undefined) lines.push([]);
    else lines.at(-1)?.push([x, y, 0]);
  }
  return lines.filter(({ length }) => length > 1);
}
