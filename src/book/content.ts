import { settled } from '../formula/adjust.ts';
import type { Reference } from '../formula/types.ts';
import { rewriteCell } from './inside/holders.ts';
import { lineProperties } from './inside/sheet.ts';
import { draftOf } from './inside/opened.ts';
import type { Area, Document, Id, SheetContent } from './types.ts';

/** A sheet as a value, row by row; `undefined` for one that is not in the book. */
export function contentOf(document: Document, id: Id): SheetContent | undefined {
  const sheet = draftOf(document).sheet(id);
  if (!sheet) return undefined;
  const { rows, columns, properties, areas } = sheet;
  const cells = rows.ids.flatMap((row) =>
    columns.ids.flatMap((column) => {
      const cell = sheet.cell(row, column);
      return cell ? [{ row, column, cell }] : [];
    }),
  );
  return {
    id,
    properties,
    rows: [...rows.ids],
    columns: [...columns.ids],
    rowProperties: lineProperties(rows),
    columnProperties: lineProperties(columns),
    areas,
    cells,
  };
}

/** A copy of a sheet under another id: what referred to itself refers to the copy. */
export function copyOf(document: Document, sheet: Id, id: Id): SheetContent | undefined {
  const content = contentOf(document, sheet);
  const draft = draftOf(document);
  // Deleted lines are not copied, so no reference may rest on one.
  const own = (reference: Reference): Reference => {
    if (!('sheet' in reference) || reference.sheet !== sheet || reference.explicit)
      return reference;
    const living = settled(reference, draft);
    return 'sheet' in living ? { ...living, sheet: id } : living;
  };
  return (
    content && {
      ...content,
      id,
      areas: content.areas.flatMap((area): Area[] => {
        const range = own(area.range);
        return range.kind === 'range' ? [{ ...area, range }] : [];
      }),
      cells: content.cells.map((at) => ({ ...at, cell: rewriteCell(at.cell, own) })),
    }
  );
}
