import { settled } from '../../formula/adjust.ts';
import type { Corner, Reference } from '../../formula/types.ts';
import type { Draft } from '../inside/draft.ts';
import type { Replace } from '../inside/holders.ts';
import { rewriteCell, rewriting } from '../inside/holders.ts';
import type { HolderKey } from '../inside/uses.ts';
import { cellKey } from '../inside/uses.ts';
import type { Block, CellAt, Id, MoveCellsStep, Step } from '../types.ts';
import type { Doer } from './applied.ts';
import { refuse } from './applied.ts';
import { words } from '../../words/words.ts';

/**
 * Cut and paste. References follow the cells that move; a range follows only if it lies wholly
 * inside the cut; references to overwritten cells keep their place.
 */
export const moveCells: Doer<MoveCellsStep> = (draft, step, inTurn) => {
  const reason = fault(draft, step);
  return reason === undefined ? inTurn(draft, stepsOf(draft, step)) : refuse(reason);
};

function fault(draft: Draft, { from, to }: MoveCellsStep): string | undefined {
  if (from.rows.length !== to.rows.length || from.columns.length !== to.columns.length)
    return words.book.notOneSize;
  return [from, to].every((block) => together(draft, block)) ? undefined : words.book.cellsApart;
}

/** Living neighbours in both directions. */
function together(draft: Draft, { sheet, rows, columns }: Block): boolean {
  return (['rows', 'columns'] as const).every((axis) => {
    const ids = axis === 'rows' ? rows : columns;
    const first = draft.indexOf(sheet, axis, ids[0] ?? '');
    return first >= 0 && ids.every((id, i) => draft.indexOf(sheet, axis, id) === first + i);
  });
}

function stepsOf(draft: Draft, { from, to }: MoveCellsStep): Step[] {
  const source = inside(from);
  const target = inside(to);
  const follow = following(draft, from, to);
  const elsewhere = rewriting(draft, holdersOf(draft, from), follow, (...place) =>
    [source, target].some((within) => within(...place)),
  );
  return [...elsewhere, ...movedCells(draft, from, to, follow)];
}

function inside(block: Block): (sheet: Id, row: Id, column: Id) => boolean {
  const rows = new Set(block.rows);
  const columns = new Set(block.columns);
  return (sheet, row, column) => sheet === block.sheet && rows.has(row) && columns.has(column);
}

function holdersOf(draft: Draft, { sheet, rows, columns }: Block): Set<HolderKey> {
  const holders = new Set(draft.uses.rangingOver(sheet));
  for (const row of rows)
    for (const column of columns)
      for (const holder of draft.uses.ofCell(sheet, row, column)) holders.add(holder);
  return holders;
}

function following(draft: Draft, from: Block, to: Block): Replace {
  const rows = new Map(from.rows.map((id, i) => [id, to.rows[i] ?? id]));
  const columns = new Map(from.columns.map((id, i) => [id, to.columns[i] ?? id]));
  const moved = ({ row, column }: Corner): Corner | undefined => {
    const ids = { row: rows.get(row.id), column: columns.get(column.id) };
    return ids.row === undefined || ids.column === undefined
      ? undefined
      : { row: { ...row, id: ids.row }, column: { ...column, id: ids.column } };
  };
  return (reference): Reference => {
    if (!('sheet' in reference) || reference.sheet !== from.sheet) return reference;
    if (reference.kind === 'cell') {
      const at = moved(reference.at);
      return at ? { ...reference, sheet: to.sheet, at } : reference;
    }
    const living = reference.kind === 'range' ? settled(reference, draft) : reference;
    if (living.kind !== 'range') return reference;
    const start = moved(living.from);
    const end = moved(living.to);
    return start && end ? { ...living, sheet: to.sheet, from: start, to: end } : reference;
  };
}

function movedCells(draft: Draft, from: Block, to: Block, follow: Replace): Step[] {
  const sets = new Map<string, { sheet: Id; at: CellAt }>();
  const put = (sheet: Id, at: CellAt) => sets.set(cellKey(sheet, at.row, at.column), { sheet, at });
  const [source, target] = [draft.sheet(from.sheet), draft.sheet(to.sheet)];
  each(from, (row, column) => {
    if (source?.cell(row, column)) put(from.sheet, { row, column, cell: null });
  });
  each(to, (row, column, i, j) => {
    const cell = source?.cell(from.rows[i] ?? '', from.columns[j] ?? '');
    if (cell) put(to.sheet, { row, column, cell: rewriteCell(cell, spelling(follow, to.sheet)) });
    else if (target?.cell(row, column)) put(to.sheet, { row, column, cell: null });
  });
  return [...new Set([from.sheet, to.sheet])].map((sheet): Step => {
    const cells = [...sets.values()].filter((set) => set.sheet === sheet).map(({ at }) => at);
    return { kind: 'setCells', sheet, cells };
  });
}

/** On another sheet, what was meant without its sheet's name has to be written with it. */
function spelling(follow: Replace, own: Id): Replace {
  return (reference) => {
    const followed = follow(reference);
    return 'sheet' in followed && followed.sheet !== own && !followed.explicit
      ? { ...followed, explicit: true }
      : followed;
  };
}

function each(
  { rows, columns }: Block,
  visit: (row: Id, column: Id, i: number, j: number) => void,
): void {
  rows.forEach((row, i) => {
    columns.forEach((column, j) => {
      visit(row, column, i, j);
    });
  });
}
