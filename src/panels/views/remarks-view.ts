import { caption } from '../../check/captions.ts';
import type { Remark } from '../../check/remark.ts';
import type { Document } from '../../book/types.ts';
import type { RemarksView } from '../workbook.ts';
import { blockAddress } from './address.ts';

/** More of one sheet are not listed: the first few say what went wrong. */
const most = 100;

/** What the check has to say on the whole book, sheet by sheet, in the order of the contents. */
export function remarksView(document: Document, remarks: readonly Remark[]): RemarksView {
  const bySheet = new Map<string, Remark[]>();
  for (const remark of remarks) {
    const here = bySheet.get(remark.place.sheet);
    if (here) here.push(remark);
    else bySheet.set(remark.place.sheet, [remark]);
  }
  return {
    count: remarks.length,
    sheets: document.sheets.flatMap(({ id, properties }) => {
      const here = bySheet.get(id);
      if (!here) return [];
      return [
        {
          sheet: id,
          title: properties.title || properties.name,
          count: here.length,
          remarks: here.slice(0, most).map(({ place, sentence }) => {
            const { sheet, row, column } = place;
            return {
              address: blockAddress(place, place, 'cells'),
              label: caption(document, sheet, row, column),
              sentence,
              target: { sheet, from: { row, column } },
            };
          }),
        },
      ];
    }),
  };
}

/** "1 remark", "12 remarks". */
export const remarksInWords = (count: number) => `${count} ${count === 1 ? 'remark' : 'remarks'}`;
