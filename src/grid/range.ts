import type { Place, Range } from './contract.ts';

/** Blocks of cells as plain values. */

export function samePlace(a: Place, b: Place): boolean {
  return a.row === b.row && a.column === b.column;
}

/** The block that two opposite corners span. */
export function span(a: Place, b: Place): Range {
  return {
    from: { row: Math.min(a.row, b.row), column: Math.min(a.column, b.column) },
    to: { row: Math.max(a.row, b.row), column: Math.max(a.column, b.column) },
  };
}

export function holds(range: Range, row: number, column: number): boolean {
  return (
    row >= range.from.row &&
    row <= range.to.row &&
    column >= range.from.column &&
    column <= range.to.column
  );
}

export function isOneCell(range: Range): boolean {
  return samePlace(range.from, range.to);
}

export interface Extent {
  readonly rowCount: number;
  readonly columnCount: number;
}

/** The nearest place inside the sheet. */
export function within(place: Place, { rowCount, columnCount }: Extent): Place {
  return {
    row: Math.max(0, Math.min(rowCount - 1, place.row)),
    column: Math.max(0, Math.min(columnCount - 1, place.column)),
  };
}

/**
 * Where a filled block ends when its corner is dragged to `to`: along the longer way out of it, never
 * diagonally. Inside the block nothing is filled.
 */
export function fillTarget(from: Range, to: Place): Range | null {
  if (holds(from, to.row, to.column)) return null;
  const down = Math.max(to.row - from.to.row, from.from.row - to.row);
  const across = Math.max(to.column - from.to.column, from.from.column - to.column);
  return down >= across
    ? {
        from: { row: Math.min(from.from.row, to.row), column: from.from.column },
        to: { row: Math.max(from.to.row, to.row), column: from.to.column },
      }
    : {
        from: { row: from.from.row, column: Math.min(from.from.column, to.column) },
        to: { row: from.to.row, column: Math.max(from.to.column, to.column) },
      };
}
