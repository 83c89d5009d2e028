import { settled } from '../../formula/adjust.ts';
import type { Corner, Reference } from '../../formula/types.ts';
import type { Draft } from '../inside/draft.ts';
import { rewriteCell } from '../inside/holders.ts';
import type { Replace } from '../inside/holders.ts';
import type { Block, CellAt, Id, SortStep } from '../types.ts';
import type { Doer } from './applied.ts';
import { onSheet, refuse } from './applied.ts';
import { setCells } from './setcells.ts';
import { words } from '../../words/words.ts';

/**
 * Cells go whole to their new row. A reference to the formula's own row inside the block, if its row
 * is not fixed, goes along; every other reference keeps its place.
 */
export const sort: Doer<SortStep> = (draft, { block, order }, inTurn) =>
  onSheet(draft, block.sheet, (sheet) => {
    if (!isPermutation(order, block.rows.length)) return refuse(words.book.orderIncomplete);
    const cells: CellAt[] = [];
    block.rows.forEach((row, i) => {
      const from = block.rows[order[i] ?? i] ?? row;
      if (from === row) return;
      const carry = carrying(draft, block, from, row);
      for (const column of block.columns) {
        const cell = sheet.cell(from, column);
        if (cell ?? sheet.cell(row, column))
          cells.push({ row, column, cell: cell ? rewriteCell(cell, carry) : null });
      }
    });
    return setCells(draft, { kind: 'setCells', sheet: block.sheet, cells }, inTurn);
  });

function isPermutation(order: readonly number[], length: number): boolean {
  const seen = new Set(order);
  return (
    order.length === length &&
    seen.size === length &&
    order.every((index) => Number.isInteger(index) && index >= 0 && index < length)
  );
}

function carrying(draft: Draft, block: Block, from: Id, to: Id): Replace {
  const columns = new Set(block.columns);
  const goes = ({ row, column }: Corner) => row.id === from && !row.fixed && columns.has(column.id);
  const carried = (corner: Corner): Corner => ({ ...corner, row: { ...corner.row, id: to } });
  return (reference): Reference => {
    if (!('sheet' in reference) || reference.sheet !== block.sheet) return reference;
    if (reference.kind === 'cell' && goes(reference.at))
      return { ...reference, at: carried(reference.at) };
    const living = reference.kind === 'range' ? settled(reference, draft) : reference;
    return living.kind === 'range' && goes(living.from) && goes(living.to)
      ? { ...living, from: carried(living.from), to: carried(living.to) }
      : reference;
  };
}
