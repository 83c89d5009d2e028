import { shiftFormula } from '../../formula/adjust.ts';
import { cellAtSpot } from '../look.ts';
import type { Cell, CellAt, Document, Id, Means, Step } from '../types.ts';
import type { Entered } from './entered.ts';
import { unitOf, withEntry } from './entered.ts';
import type { Region } from './growing.ts';
import { Growing, beyondSheet } from './growing.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

export type CopyWhat =
  /** Everything a cell holds and says about itself. */
  | 'all'
  /** What it holds; the target keeps its format, note and the like. */
  | 'contents';

/**
 * Copies cells, references adjusted. The source is repeated where the target is a whole multiple of
 * its size; a smaller or uneven target is taken as the place of its top left corner.
 */
export function copyCells(
  document: Document,
  means: Means,
  from: Region,
  to: Region,
  { what = 'all', label = words.book.paste }: { what?: CopyWhat; label?: string } = {},
): Made {
  const target = { ...to, ...tiled(from, to) };
  return pourCells(document, means, target, label, (row, column) => ({
    row: from.top + (row % from.height),
    column: from.left + (column % from.width),
    sheet: from.sheet,
    what,
  }));
}

function tiled(from: Region, to: Region): { height: number; width: number } {
  const repeats = to.height % from.height === 0 && to.width % from.width === 0;
  return repeats
    ? { height: to.height, width: to.width }
    : { height: from.height, width: from.width };
}

/** Where the cell for a place in the target comes from (counted from its corner). */
export interface Source {
  readonly sheet: Id;
  readonly row: number;
  readonly column: number;
  readonly what: CopyWhat;
  /** Stands in place of what the source holds: the next number of a series. */
  readonly instead?: Entered;
}

/** Fills every place of a region from somewhere, references adjusted. Empty sources empty places. */
export function pourCells(
  document: Document,
  means: Means,
  target: Region,
  label: string,
  sourceOf: (row: number, column: number) => Source | undefined,
): Made {
  const growing = new Growing(document, means);
  const { sheet, top, left, height, width } = target;
  const fits =
    growing.has(sheet, 'rows', top) &&
    growing.has(sheet, 'rows', top + height - 1) &&
    growing.has(sheet, 'columns', left) &&
    growing.has(sheet, 'columns', left + width - 1);
  if (!fits) return refused(beyondSheet);
  const cells: CellAt[] = [];
  for (let i = 0; i < height; i++) {
    for (let j = 0; j < width; j++) {
      const source = sourceOf(i, j);
      if (!source) continue;
      const spot = { sheet, row: top + i, column: left + j };
      const before = cellAtSpot(document, spot);
      const cell = copied(cellAtSpot(document, source), before, source, spot, growing);
      if (!cell && !before) continue;
      const row = growing.lineAt(sheet, 'rows', spot.row);
      const column = growing.lineAt(sheet, 'columns', spot.column);
      if (row !== undefined && column !== undefined) cells.push({ row, column, cell });
    }
  }
  const step: Step = { kind: 'setCells', sheet, cells };
  return made(label, cells.length > 0 ? [...growing.steps, step] : [], growing.block(target));
}

function copied(
  cell: Cell | undefined,
  before: Cell | undefined,
  source: Source,
  spot: { sheet: Id; row: number; column: number },
  growing: Growing,
): Cell | null {
  const shift = {
    from: source.sheet,
    to: spot.sheet,
    rows: spot.row - source.row,
    columns: spot.column - source.column,
  };
  const keeping = source.what === 'contents' ? before : cell;
  const { content, typed, under } = cell ?? nothing;
  const entry: Entered = source.instead ?? {
    content:
      content.kind === 'formula'
        ? { kind: 'formula', formula: shiftFormula(content.formula, shift, growing) }
        : content,
    ...(typed !== undefined && { typed }),
    ...(under && { under }),
  };
  const made = withEntry(keeping, { ...unitOf(cell), ...entry });
  const target = source.what === 'all' ? cell?.target : undefined;
  return made && typeof target === 'object'
    ? { ...made, target: shiftFormula(target, shift, growing) }
    : made;
}

const nothing: Cell = { content: { kind: 'blank' } };
