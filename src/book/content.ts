import { mapReferences } from '../formula/adjust.ts';
import { lineProperties } from './inside/sheet.ts';
import { draftOf } from './inside/opened.ts';
import type { Area, Cell, Document, Formula, Id, SheetContent } from './types.ts';

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

/** The same sheet under another id: what referred to itself refers to the copy. */
export function contentAs(content: SheetContent, id: Id): SheetContent {
  const own = (formula: Formula) =>
    mapReferences(formula, (reference) =>
      'sheet' in reference && reference.sheet === content.id && !reference.explicit
        ? { ...reference, sheet: id }
        : reference,
    );
  return {
    ...content,
    id,
    areas: content.areas.map((area): Area => ({ ...area, range: { ...area.range, sheet: id } })),
    cells: content.cells.map(({ row, column, cell }) => ({ row, column, cell: turned(cell, own) })),
  };
}

function turned(cell: Cell, own: (formula: Formula) => Formula): Cell {
  const { content, target } = cell;
  return {
    ...cell,
    ...(content.kind === 'formula' && {
      content: { kind: 'formula', formula: own(content.formula) },
    }),
    ...(typeof target === 'object' && { target: own(target) }),
  };
}
