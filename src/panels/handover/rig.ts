import { words } from '../../words/words.ts';
import type { Look } from '../views/look.ts';
import { cellsOf, tablesWith, type Cells, type Table } from './cells.ts';
import type { Listed } from './handover.ts';

type Row = Readonly<Record<keyof typeof captions, string>>;

/** What is said of a light, by the captions that say it, in small letters. */
const captions = {
  fixture: ['fixture', 'lamp', 'light source'],
  distance: ['stands at', 'distance', 'throw'],
  height: ['height'],
  diffusion: ['diffusion', 'scrim', 'softened by'],
  filter: ['gel', 'filter', 'correction'],
  output: ['output now', 'output', 'dimmer', 'level'],
  alone: ['its own', 'alone'],
  distanceNext: ['new distance'],
  outputNext: ['new output'],
} as const;

const names = Object.keys(captions) as (keyof typeof captions)[];

/**
 * The lights of the points, then those of the rig sheets where none says where they stand; columns that
 * say nothing are left out.
 */
export function rigOf(
  look: Look,
  cells: Cells,
  tables: readonly Table[],
  others: readonly string[],
): Listed {
  const here = tables.flatMap((table) => lights(cells, table, true));
  const there = others.flatMap((id) => {
    const other = cellsOf(look, id);
    return tablesWith(other, captions.distance, other.named).flatMap((table) =>
      lights(other, table, false),
    );
  });
  const all = [...here, ...there];
  const used = names.filter((name) => all.some(([, row]) => row[name] !== ''));
  const said = words.print.rigCaptions;
  return {
    captions: [words.print.lightOf, ...used.map((name) => said[name])],
    rows: all.map(([label, row]) => [label, ...used.map((name) => row[name])]),
  };
}

/** A row of points tells of a light only where it says where that stands or how far it is up. */
function lights(cells: Cells, { columns, rows }: Table, ofPoints: boolean): [string, Row][] {
  const has = (wanted: readonly string[]) => wanted.some((caption) => columns.has(caption));
  if (ofPoints && !has(captions.distance) && !has(captions.output)) return [];
  return rows.flatMap((row): [string, Row][] => {
    const said = Object.fromEntries(
      names.map((name) => {
        const column = captions[name]
          .map((caption) => columns.get(caption))
          .find((one) => one !== undefined);
        return [name, column === undefined ? '' : cells.said(row, column)];
      }),
    ) as Row;
    return said.distance || said.output || said.fixture ? [[cells.named(row, 0), said]] : [];
  });
}
