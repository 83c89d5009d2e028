import type { QuantityName } from '../../../functions/quantities/names.ts';
import { formulaFrom } from '../../formula/bind.ts';
import type { Formula } from '../../formula/types.ts';
import type { Spot } from '../look.ts';
import { addressAt, cellAtSpot, placeAt, quantityAt } from '../look.ts';
import type { Cell, CellAt, Document, Format, Id, Means, Step } from '../types.ts';
import { blank, orNull } from './entered.ts';
import type { Region } from './growing.ts';
import { Growing, beyondSheet } from './growing.ts';
import { describeLines } from './lines.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

type Said = Pick<Cell, 'role' | 'note' | 'tolerance' | 'receptor' | 'pointed' | 'photos'>;

/** What to change about cells: a value sets it, `null` forgets it, what is left out stays. */
export type CellPatch = { readonly [K in keyof Said]?: Said[K] | null } & {
  readonly format?: { readonly [K in keyof Format]?: Format[K] | null };
};

/** Changes what cells say about themselves; contents stay. */
export function describeCells(
  document: Document,
  means: Pick<Means, 'newId'>,
  regions: readonly Region[],
  patch: CellPatch,
  label = words.book.formatCells,
): Made {
  return changeCells(document, means, regions, label, (cell) => patched(cell, patch));
}

function patched(cell: Cell, { format, ...said }: CellPatch): Cell {
  const merged = without({ ...cell, ...said });
  if (!format) return merged;
  const { format: _, ...rest } = merged;
  const after = without({ ...cell.format, ...format });
  return Object.keys(after).length > 0 ? { ...rest, format: after } : rest;
}

/** Leaves out what is `null`. */
function without<T extends object>(values: T): { [K in keyof T]: Exclude<T[K], null> } {
  const kept = Object.entries(values).filter(([, value]) => value !== null);
  return Object.fromEntries(kept) as { [K in keyof T]: Exclude<T[K], null> };
}

/**
 * Says what cells measure. What was typed is read again as that quantity; a cell that cannot be read
 * so refuses the whole. `null` forgets the quantity and keeps the numbers.
 */
export function setQuantity(
  document: Document,
  means: Means,
  regions: readonly Region[],
  quantity: QuantityName | null,
): Made {
  const label = words.book.changeQuantity;
  return changeCells(document, means, regions, label, (cell, spot) => {
    const { quantity: _quantity, yields: _yields, ...rest } = cell;
    if (quantity === null) return rest;
    return reread({ ...rest, quantity }, quantity, document, means, spot);
  });
}

/** Says what the cells of whole columns measure, unless they say so themselves. */
export function setColumnQuantity(
  document: Document,
  means: Means,
  sheet: Id,
  columns: readonly number[],
  quantity: QuantityName | null,
): Made {
  const label = words.book.changeQuantity;
  const change = describeLines(document, means, sheet, 'columns', columns, label, (before) => {
    const { quantity: _, ...rest } = before;
    return quantity === null ? rest : { ...rest, quantity };
  });
  if (!change.ok || quantity === null) return change;
  const height = document.sheet(sheet)?.rows.length ?? 0;
  const regions = columns.map((left) => ({ sheet, top: 0, left, height, width: 1 }));
  const cells = changeCells(document, means, regions, label, (cell, spot) => {
    const place = placeAt(document, spot);
    const before = document.sheet(sheet)?.columns.properties(place?.column ?? '')?.quantity;
    const effective = place && quantityAt(document, place);
    // Cells that say what they measure, and those an area speaks for, go on as they are.
    return cell.quantity !== undefined || effective !== before
      ? cell
      : reread(cell, quantity, document, means, spot);
  });
  if (!cells.ok) return cells;
  const steps = [...change.transaction.steps, ...cells.transaction.steps];
  return { ok: true, transaction: { ...change.transaction, steps } };
}

function reread(
  cell: Cell,
  quantity: QuantityName,
  document: Document,
  means: Means,
  spot: Spot,
): Cell | { readonly reason: string } {
  if (cell.typed === undefined) return cell;
  const read = means.readEntry(cell.typed, quantity, { ...document.settings, ...cell.under });
  if ('reason' in read) return { reason: `${addressAt(spot)}: ${read.reason}` };
  return { ...cell, content: read.content };
}

/** What a cell should come to: a text read by its quantity, a formula, or nothing. */
export function setTarget(document: Document, means: Means, spot: Spot, text: string): Made {
  const growing = new Growing(document, means);
  const target = targetFrom(document, means, spot, text, growing);
  if (target !== null && typeof target === 'object' && 'reason' in target)
    return refused(target.reason);
  const region = { ...spot, top: spot.row, left: spot.column, height: 1, width: 1 };
  return changeCells(
    document,
    means,
    [region],
    words.book.setTarget,
    (cell) => {
      const { target: _, ...rest } = cell;
      return target === null ? rest : { ...rest, target };
    },
    growing,
  );
}

function targetFrom(
  document: Document,
  means: Means,
  spot: Spot,
  text: string,
  growing: Growing,
): number | Formula | null | { readonly reason: string } {
  if (text.trim() === '') return null;
  if (text.startsWith('=')) return formulaFrom(text, spot.sheet, growing);
  const place = placeAt(document, spot);
  const read = means.readEntry(text, place && quantityAt(document, place), document.settings);
  if ('reason' in read) return read;
  return read.content.kind === 'number' ? read.content.value : { reason: words.book.targetForm };
}

/** Every cell of the regions, blank ones too, changed one by one. */
function changeCells(
  document: Document,
  means: Pick<Means, 'newId'>,
  regions: readonly Region[],
  label: string,
  change: (cell: Cell, spot: Spot) => Cell | { readonly reason: string },
  growing: Growing = new Growing(document, means),
): Made {
  const steps: Step[] = [];
  for (const region of regions) {
    const cells: CellAt[] = [];
    for (let i = 0; i < region.height; i++)
      for (let j = 0; j < region.width; j++) {
        const spot = { sheet: region.sheet, row: region.top + i, column: region.left + j };
        const before = cellAtSpot(document, spot);
        const after = change(before ?? blank, spot);
        if ('reason' in after) return refused(after.reason);
        const cell = orNull(after);
        if (!cell && !before) continue;
        const row = growing.lineAt(spot.sheet, 'rows', spot.row);
        const column = growing.lineAt(spot.sheet, 'columns', spot.column);
        if (row === undefined || column === undefined) return refused(beyondSheet);
        cells.push({ row, column, cell });
      }
    if (cells.length > 0) steps.push({ kind: 'setCells', sheet: region.sheet, cells });
  }
  const [first] = regions;
  const go = first && growing.block({ ...first, height: Math.min(first.height, 1) });
  return made(label, steps.length > 0 ? [...growing.steps, ...steps] : [], go);
}
