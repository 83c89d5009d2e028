import { addressAt, precedentsOf } from '../../book/look.ts';
import type { Entry } from '../../book/make/enter.ts';
import { writeSheetPrefix } from '../../formula/sheetprefix.ts';
import { cellsOf } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';
import { grown } from './grow.ts';
import type { Package } from './package.ts';
import { rowOf, rowsUnder, typedInto, type Rows } from './rows.ts';

const template = 'strike';

type Out = Rows & { readonly sheet: string };

/** The list of what goes out and comes back, where it reads this order already. */
export function goesOut(look: Look, order: string): Out | undefined {
  for (const { id, properties } of look.document.sheets) {
    if (properties.template !== template) continue;
    const cells = cellsOf(look, id);
    const rows = rowsUnder(cells, rowOf(cells, 'Item'), 'in words');
    const reads = rows?.taken.some((row) => {
      const content = cells.at(row, 0)?.content;
      const read = content?.kind === 'formula' ? precedentsOf(look.document, content.formula) : [];
      return read.some((one) => one.kind === 'cells' && one.extent.sheet === order);
    });
    if (rows && reads) return { ...rows, sheet: id };
  }
  return undefined;
}

/** The first so many of these rows of the order, in the next rows of the list. */
export function goingOut(
  look: Look,
  out: Out,
  further: number,
  { sheet, order, rows }: Pick<Package, 'sheet' | 'order'> & { readonly rows: readonly number[] },
  count: number,
): readonly Entry[] {
  const prefix = writeSheetPrefix(look.document.sheet(sheet)?.properties.name ?? '');
  const free = grown(out, further);
  return rows.slice(0, count).flatMap((row, index) => {
    const read = (caption: string) =>
      `=${prefix}${addressAt({ row, column: order.columns.get(caption) ?? 0 })}`;
    const texts = { item: read('the order'), out: read('to order') };
    return typedInto(out.sheet, out, free[index] ?? 0, texts);
  });
}
