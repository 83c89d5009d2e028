import type { GridModel } from '../contract.ts';
import type { Geometry } from '../hand/geometry.ts';
import type { Dress } from '../painter.ts';

/** The layout engine inside the grid, as far as we use it. It has no types of its own. */
export interface Walkontable {
  draw(onlyWhatScrolled: boolean): void;
  readonly wtTable: { readonly holder: HTMLElement };
  readonly wtOverlays: {
    adjustElementsSize(force: boolean): void;
    syncScrollPositions(): void;
  };
  readonly wtViewport: { resetHasOversizedColumnHeadersMarked(): void };
}

export function isWalkontable(value: unknown): value is Walkontable {
  return (
    typeof value === 'object' &&
    value !== null &&
    'draw' in value &&
    'wtTable' in value &&
    'wtOverlays' in value &&
    'wtViewport' in value
  );
}

/** Rows and columns laid out beyond the edge, so that a small scroll draws nothing. */
const beyond = { rows: 6, columns: 2 };

interface Span {
  startRow: number;
  endRow: number;
  startColumn: number;
  endColumn: number;
}

/** Replaces what the grid would tell its layout engine, so that cells, headings and sizes are ours. */
export function settingsFor(model: GridModel, geometry: Geometry, dress: Dress): object {
  return {
    totalRows: () => model.rowCount,
    totalColumns: () => model.columnCount,
    fixedRowsTop: () => model.frozen.rows,
    fixedColumnsLeft: () => model.frozen.columns,
    columnWidth: (column: number) => model.columnWidth(column),
    rowHeight: () => geometry.rowHeight,
    rowHeaderWidth: () => geometry.rowHeadingWidth,
    // Its own correction of one pixel is for borders that we do not have.
    onModifyRowHeaderWidth: () => geometry.rowHeadingWidth,
    columnHeaderHeight: () => geometry.headingHeight,
    cellRenderer: (row: number, column: number, cell: HTMLElement) => dress.cell(cell, row, column),
    columnHeaders: () => [
      (column: number, heading: HTMLElement) =>
        column < 0 ? dress.corner(heading) : dress.columnHeading(heading, column),
    ],
    rowHeaders: () => [(row: number, heading: HTMLElement) => dress.rowHeading(heading, row)],
    viewportRowCalculatorOverride: (span: Span) => {
      span.startRow = Math.max(0, span.startRow - beyond.rows);
      span.endRow = Math.min(model.rowCount - 1, span.endRow + beyond.rows);
    },
    viewportColumnCalculatorOverride: (span: Span) => {
      span.startColumn = Math.max(0, span.startColumn - beyond.columns);
      span.endColumn = Math.min(model.columnCount - 1, span.endColumn + beyond.columns);
    },
    // Gestures are not its business: it never selects, so it never listens either.
    onCellMouseDown: null,
    onCellMouseUp: null,
    onCellMouseOver: null,
    onCellMouseOut: null,
    onCellContextMenu: null,
    onCellDblClick: null,
    onCellCornerMouseDown: null,
    onCellCornerDblClick: null,
  };
}
