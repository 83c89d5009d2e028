import { cellAtSpot, type Spot } from '../book/look.ts';
import { Growing } from '../book/make/growing.ts';
import { made, refused, type Made } from '../book/make/made.ts';
import type { AxisName, CellAt, Content, Document, Id, Means, Step } from '../book/types.ts';
import { figuresAgain } from './sweep-figures.ts';
import { firstExtent } from '../panels/views/extents.ts';
import { words } from '../words/words.ts';
import type { Axis, Sweep, Swept } from './sweep.ts';
import {
  firstCase,
  followingAt,
  standingOf,
  sweepTemplate,
  type SweptCells,
} from './sweep-sheet.ts';

/** What a sheet of a sweep says of itself: which cells it varies and reads, over which values. */
export function sweepOn(document: Document, sheet: Id): Sweep | undefined {
  if (document.sheet(sheet)?.properties.template !== sweepTemplate) return undefined;
  const at = (row: number, column: number) => cellAtSpot(document, { sheet, row, column });
  const spots: Spot[] = [];
  for (let column = 1; ; column += 1) {
    const content = at(1, column)?.content;
    if (content?.kind !== 'formula') break;
    const extent = firstExtent(document, content.formula);
    if (!extent) return undefined;
    spots.push({ sheet: extent.sheet, row: extent.top, column: extent.left });
  }
  const byTwo = at(firstCase, 0) !== undefined;
  const until = (next: (step: number) => Content | undefined): Content[] => {
    const found: Content[] = [];
    for (let step = 0; ; step += 1) {
      const content = next(step);
      if (!content || content.kind === 'blank' || content.kind === 'formula') return found;
      found.push(content);
    }
  };
  const top = byTwo ? firstCase + 2 : firstCase;
  const down = until((step) => at(top + step, 1)?.content);
  const across = byTwo ? until((step) => at(firstCase + 1, 2 + step)?.content) : [];
  const [first, second, ...others] = spots;
  const read = byTwo ? others : spots.slice(1);
  if (!first || down.length === 0 || read.length === 0) return undefined;
  const axis = (spot: Spot, values: readonly Content[]): Axis => ({ spot, values });
  if (!byTwo) return { down: axis(first, down), read };
  if (!second || across.length === 0) return undefined;
  return { down: axis(first, down), across: axis(second, across), read };
}

/** Whether a sheet is a sweep that follows the book by itself. */
export function isLive(document: Document, sheet: Id): boolean {
  if (document.sheet(sheet)?.properties.template !== sweepTemplate) return false;
  const content = cellAtSpot(document, { sheet, ...followingAt })?.content;
  return content?.kind === 'text' && content.text.trim().toLowerCase() === words.choose.live;
}

/** Writes what the cases come to now over what they came to before, where that is something else. */
export function renewed(
  document: Document,
  means: Pick<Means, 'newId' | 'readEntry'>,
  sheet: Id,
  {
    plan,
    cells,
    swept,
  }: { readonly plan: Sweep; readonly cells: SweptCells; readonly swept: Swept },
): Made {
  const found = document.sheet(sheet);
  if (!found) return refused(words.book.sheetGone);
  const growing = new Growing(document, means);
  const standing = standingOf(document, means, plan, cells, swept).filter(
    ({ row }) => row >= firstCase,
  );
  const written = new Set<string>();
  const set: CellAt[] = [];
  for (const { row, column, cell } of standing) {
    const [rowId, columnId] = [
      growing.lineAt(sheet, 'rows', row),
      growing.lineAt(sheet, 'columns', column),
    ];
    if (rowId === undefined || columnId === undefined) return refused(words.book.sheetGone);
    written.add(`${rowId} ${columnId}`);
    if (JSON.stringify(found.cell(rowId, columnId)) !== JSON.stringify(cell))
      set.push({ row: rowId, column: columnId, cell });
  }
  for (const row of found.rows.ids.slice(firstCase))
    for (const column of found.columns.ids)
      if (!written.has(`${row} ${column}`) && found.cell(row, column))
        set.push({ row, column, cell: null });
  const lines = {
    rows: lineIds(growing, sheet, 'rows', 1 + Math.max(...standing.map(({ row }) => row))),
    columns: lineIds(
      growing,
      sheet,
      'columns',
      1 + Math.max(...standing.map(({ column }) => column)),
    ),
  };
  const drawn = figuresAgain(document, sheet, lines, plan, cells);
  const cellSteps: Step[] = set.length > 0 ? [{ kind: 'setCells', sheet, cells: set }] : [];
  return made(words.choose.again, [...growing.steps, ...cellSteps, ...drawn]);
}

const lineIds = (growing: Growing, sheet: Id, axis: AxisName, count: number): readonly Id[] =>
  Array.from({ length: count }, (_, index) => growing.lineAt(sheet, axis, index) ?? '');
