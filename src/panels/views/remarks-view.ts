import { caption } from '../../check/captions.ts';
import type { Remark } from '../../check/remark.ts';
import type { Document } from '../../book/types.ts';
import type { RemarksView, SheetRemarks } from '../shown.ts';
import { blockAddress } from './address.ts';
import { words } from '../../words/words.ts';

/** More of one sheet are not listed: the first few say what went wrong. */
const most = 100;

/**
 * What the check has to say on the whole book, in the order of the contents: what does not go
 * together, and apart from it what is only worth a look.
 */
export function remarksView(document: Document, remarks: readonly Remark[]): RemarksView {
  const marks = remarks.filter(({ about }) => about === 'unit');
  const notes = remarks.filter(({ about }) => about !== 'unit');
  return { count: marks.length, marks: bySheet(document, marks), notes: bySheet(document, notes) };
}

function bySheet(document: Document, remarks: readonly Remark[]): readonly SheetRemarks[] {
  const found = grouped(remarks, ({ place }) => place.sheet);
  return document.sheets.flatMap(({ id, properties }) => {
    const here = found.get(id);
    if (!here) return [];
    return [
      {
        sheet: id,
        title: properties.title || properties.name,
        count: here.length,
        said: saidOf(document, here.slice(0, most)),
      },
    ];
  });
}

/** Each sentence once, with the cells that it is about. */
function saidOf(document: Document, remarks: readonly Remark[]): SheetRemarks['said'] {
  return [...grouped(remarks, ({ sentence }) => sentence)].map(([sentence, same]) => ({
    sentence,
    cells: same.map(({ place }) => {
      const { sheet, row, column } = place;
      return {
        label: [blockAddress(place, place, 'cells'), caption(document, sheet, row, column)]
          .filter(Boolean)
          .join(' '),
        target: { sheet, from: { row, column } },
      };
    }),
  }));
}

function grouped<Item>(items: readonly Item[], key: (item: Item) => string): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}

/** "1 remark", "12 remarks". */
export const remarksInWords = (count: number) => words.contents.remarks(count);
