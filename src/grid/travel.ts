import type { Move, Place, Selection } from './contract.ts';
import { holds, within, type Extent } from './range.ts';

/** Where a key goes from a cell, without moving anything. */

export interface Terrain extends Extent {
  editText(row: number, column: number): string;
  used(): { readonly rows: number; readonly columns: number };
}

export interface Step {
  readonly rows: -1 | 0 | 1;
  readonly columns: -1 | 0 | 1;
}

export const steps: Readonly<Record<Exclude<Move, 'stay'>, Step>> = {
  down: { rows: 1, columns: 0 },
  up: { rows: -1, columns: 0 },
  right: { rows: 0, columns: 1 },
  left: { rows: 0, columns: -1 },
};

export function stepFrom(place: Place, step: Step, extent: Extent, times = 1): Place {
  return within(
    { row: place.row + step.rows * times, column: place.column + step.columns * times },
    extent,
  );
}

/**
 * The edge of a block in one direction: from inside a block its last written cell, from its edge or a
 * blank the next written cell, and with none left the sheet's edge.
 */
export function blockEdge(from: Place, step: Step, terrain: Terrain): Place {
  const inside = (place: Place) =>
    place.row >= 0 &&
    place.row < terrain.rowCount &&
    place.column >= 0 &&
    place.column < terrain.columnCount;
  const written = (place: Place) => terrain.editText(place.row, place.column) !== '';
  const after = (place: Place) => ({
    row: place.row + step.rows,
    column: place.column + step.columns,
  });

  let here = from;
  let next = after(here);
  if (!inside(next)) return from;
  const inBlock = written(here) && written(next);
  while (inside(next)) {
    if (inBlock && !written(next)) return here;
    here = next;
    if (!inBlock && written(here)) return here;
    next = after(here);
  }
  return here;
}

/** The last cell of the smallest block that holds everything written. */
export function lastUsed(terrain: Terrain): Place {
  const { rows, columns } = terrain.used();
  return within({ row: rows - 1, column: columns - 1 }, terrain);
}

/** Tab and Enter inside a selection of several cells: around its ranges, cell by cell. */
export function cycle(selection: Selection, move: Move): Place {
  const { focus, ranges } = selection;
  const found = ranges.findIndex((range) => holds(range, focus.row, focus.column));
  const index = Math.max(0, found);
  const range = ranges[index] ?? ranges[0];
  const height = range.to.row - range.from.row + 1;
  const width = range.to.column - range.from.column + 1;
  const acrossFirst = move === 'right' || move === 'left';
  const row = focus.row - range.from.row;
  const column = focus.column - range.from.column;
  const position = acrossFirst ? row * width + column : column * height + row;
  const next = position + (move === 'right' || move === 'down' ? 1 : -1);

  const inRange = next >= 0 && next < width * height;
  const entered = inRange
    ? range
    : (ranges[(index + Math.sign(next - position) + ranges.length) % ranges.length] ?? range);
  const enteredHeight = entered.to.row - entered.from.row + 1;
  const enteredWidth = entered.to.column - entered.from.column + 1;
  const at = inRange ? next : next < 0 ? enteredWidth * enteredHeight - 1 : 0;
  return acrossFirst
    ? {
        row: entered.from.row + Math.floor(at / enteredWidth),
        column: entered.from.column + (at % enteredWidth),
      }
    : {
        row: entered.from.row + (at % enteredHeight),
        column: entered.from.column + Math.floor(at / enteredHeight),
      };
}
