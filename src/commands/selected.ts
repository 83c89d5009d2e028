import type { Region } from '../book/make/growing.ts';
import type { AxisName, CellAt, Cell, Sheet } from '../book/types.ts';
import type { SelectedBlock } from '../session/session.ts';
import type { Context } from './command.ts';
import { words } from '../words/words.ts';

/** The sheet in view. */
export function sheetInView({ book, session }: Context): Sheet {
  const { document } = book;
  const sheet = document.sheet(session.state.sheet) ?? document.sheets[0];
  // A book has at least one sheet: the step that would delete the last one is refused.
  if (!sheet) throw new Error(words.commands.noSheet);
  return sheet;
}

/** The block last selected, as positions on its sheet; whole rows and columns end where the sheet is used. */
export function selectedRegion(context: Context): Region {
  const sheet = sheetInView(context);
  const block = context.session.state.selection.ranges.at(-1) as SelectedBlock;
  return regionOf(sheet, block);
}

/** Every selected block, in the order of selecting. */
export function selectedRegions(context: Context): readonly Region[] {
  const sheet = sheetInView(context);
  return context.session.state.selection.ranges.map((block) => regionOf(sheet, block));
}

function regionOf(sheet: Sheet, { from, to, kind }: SelectedBlock): Region {
  const rowsEnd = kind === 'columns' || kind === 'all' ? sheet.rows.length - 1 : to.row;
  const columnsEnd = kind === 'rows' || kind === 'all' ? sheet.columns.length - 1 : to.column;
  return {
    sheet: sheet.id,
    top: from.row,
    left: from.column,
    height: Math.max(1, rowsEnd - from.row + 1),
    width: Math.max(1, columnsEnd - from.column + 1),
  };
}

/** Positions of the selected rows or columns, each once. */
export function selectedLines(context: Context, axis: AxisName): readonly number[] {
  const lines = new Set<number>();
  for (const { from, to } of context.session.state.selection.ranges) {
    const [first, last] = axis === 'rows' ? [from.row, to.row] : [from.column, to.column];
    for (let line = first; line <= last; line++) lines.add(line);
  }
  return [...lines].sort((a, b) => a - b);
}

/** The cells in use within the selection, each once. */
export function selectedCells(context: Context): readonly (CellAt & { readonly cell: Cell })[] {
  const sheet = sheetInView(context);
  const found = new Map<string, CellAt & { cell: Cell }>();
  for (const { top, left, height, width } of selectedRegions(context)) {
    const rows = sheet.rows.ids.slice(top, top + height);
    const columns = sheet.columns.ids.slice(left, left + width);
    for (const row of rows) {
      for (const column of columns) {
        const cell = sheet.cell(row, column);
        if (cell) found.set(`${row} ${column}`, { row, column, cell });
      }
    }
  }
  return [...found.values()];
}
