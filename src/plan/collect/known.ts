import { keyOf } from '../../book/fixtures.ts';
import { addressAt } from '../../book/look.ts';
import { writeSheetPrefix } from '../../formula/sheetprefix.ts';
import { cellsOf, tablesWith } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';

/** What an order wants to know of an item, by the captions of its columns. */
type Wanted = 'who supplies it' | 'each weighs' | 'each, m³' | 'a day';

/** Where it may stand in the book already: in the address book, and for the rate on the hire. */
const sources = [
  {
    template: 'address-book',
    captions: {
      'who supplies it': 'whose',
      'each weighs': 'weighs',
      'each, m³': 'room, m³',
      'a day': 'a day',
    },
  },
  { template: 'hire', captions: { 'a day': 'a day' } },
] as const satisfies readonly {
  readonly template: string;
  readonly captions: Partial<Record<Wanted, string>>;
}[];

/** Formulas that look up in the book what it says of an item, so that nothing is typed twice. */
export function knownOf(look: Look, key: string): ReadonlyMap<Wanted, string> {
  const known = new Map<Wanted, string>();
  for (const { template, captions } of sources)
    for (const { id, properties } of look.document.sheets) {
      if (properties.template !== template) continue;
      const cells = cellsOf(look, id);
      for (const { columns, rows } of tablesWith(cells, ['a day'], cells.named))
        for (const row of rows) {
          if (keyOf(cells.said(row, 0)) !== key) continue;
          for (const [wanted, caption] of Object.entries(captions) as [Wanted, string][]) {
            const column = columns.get(caption);
            if (column === undefined || known.has(wanted) || cells.said(row, column) === '')
              continue;
            const at = addressAt({ row, column });
            known.set(wanted, `=${writeSheetPrefix(properties.name)}${at}`);
          }
        }
    }
  return known;
}
