import { keyOf } from '../../book/fixtures.ts';
import { precedentsOf } from '../../book/look.ts';
import { cellsOf, type Cells } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';
import { rowOf, rowsUnder, type Rows } from './rows.ts';

export const packageTemplate = 'package';

/** By these words the parts of the order are found; the template sets them. */
const labels = {
  days: 'Days',
  daysEnd: 'Charged at',
  needs: 'Needed',
  order: 'The order',
  rigs: 'Of the rigs',
} as const;

export interface Need {
  readonly row: number;
  readonly key: string;
  readonly place: string;
  /** The sheets that its count is read from, and the words that say on what it is counted. */
  readonly reads: ReadonlySet<string>;
  readonly from: string;
}

export interface Package {
  readonly sheet: string;
  readonly places: readonly { readonly row: number; readonly name: string }[];
  readonly needs: Rows & { readonly list: readonly Need[] };
  readonly order: Rows & {
    /** Row of each item by its key. */
    readonly list: ReadonlyMap<string, number>;
  };
  /** Where it is said what the rigs have that the order has not. */
  readonly sentence: { readonly row: number; readonly column: number } | undefined;
}

/** The order on a sheet that was made from the template; undefined where it lost its captions. */
export function packageOn(look: Look, sheet: string): Package | undefined {
  const cells = cellsOf(look, sheet);
  const [daysHead, daysEnd] = [rowOf(cells, labels.days), rowOf(cells, labels.daysEnd)];
  const needs = rowsUnder(cells, rowOf(cells, labels.needs), 'remark');
  const order = rowsUnder(cells, rowOf(cells, labels.order), 'to order');
  if (daysHead === undefined || daysEnd === undefined || !needs || !order) return undefined;
  return {
    sheet,
    places: Array.from({ length: daysEnd - daysHead - 1 }, (_, index) => daysHead + 1 + index)
      .map((row) => ({ row, name: cells.said(row, 0) }))
      .filter(({ name }) => name !== ''),
    needs: {
      ...needs,
      list: needs.taken.map((row) => needAt(look, cells, needs, row)),
    },
    order: {
      ...order,
      list: new Map(order.taken.map((row) => [keyOf(cells.said(row, 0)), row])),
    },
    sentence: besides(cells, labels.rigs, daysHead),
  };
}

function needAt(look: Look, cells: Cells, { columns }: Rows, row: number): Need {
  const at = (caption: string) => columns.get(caption) ?? -1;
  const content = cells.at(row, at('count'))?.content;
  const read = content?.kind === 'formula' ? precedentsOf(look.document, content.formula) : [];
  return {
    row,
    key: keyOf(cells.said(row, 0)),
    place: cells.said(row, at('place')),
    reads: new Set(read.flatMap((one) => (one.kind === 'cells' ? [one.extent.sheet] : []))),
    from: cells.said(row, at('counted on')),
  };
}

/** The cell right of a label above a row. */
function besides(cells: Cells, label: string, end: number) {
  for (let row = 0; row < end; row += 1)
    for (let column = 0; column < cells.columns; column += 1)
      if (cells.label(row, column) === label) return { row, column: column + 1 };
  return undefined;
}
