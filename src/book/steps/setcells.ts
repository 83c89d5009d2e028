import type { Cell, CellAt, CellTouched, Content, SetCellsStep } from '../types.ts';
import type { Doer } from './applied.ts';
import { applied, onSheet, refuse } from './applied.ts';
import { words } from '../../words/words.ts';

export const setCells: Doer<SetCellsStep> = (draft, step) =>
  onSheet(draft, step.sheet, (sheet) => {
    for (const { row, column } of step.cells)
      if (sheet.rows.indexOf(row) < 0 || sheet.columns.indexOf(column) < 0)
        return refuse(words.book.cellGone);
    const before: CellAt[] = [];
    const touched: CellTouched[] = [];
    for (const { row, column, cell } of step.cells) {
      const old = sheet.cell(row, column) ?? null;
      before.push({ row, column, cell: old });
      touched.push({ row, column, content: differs(old, cell) });
      draft.putCell(sheet, row, column, cell);
    }
    // Backwards, in case one cell is named twice.
    return applied([{ kind: 'setCells', sheet: sheet.id, cells: before.toReversed() }], {
      kind: 'cells',
      sheet: sheet.id,
      cells: touched,
    });
  });

function differs(a: Cell | null, b: Cell | null): boolean {
  return (
    !sameContent(a?.content, b?.content) || a?.quantity !== b?.quantity || a?.target !== b?.target
  );
}

function sameContent(a: Content | undefined, b: Content | undefined): boolean {
  return a === b || Object.is(heldIn(a), heldIn(b));
}

/** The number, text, truth or formula itself; `null` for a blank. */
function heldIn(content: Content | undefined) {
  if (!content || content.kind === 'blank') return null;
  if (content.kind === 'formula') return content.formula;
  return content.kind === 'text' ? content.text : content.value;
}
