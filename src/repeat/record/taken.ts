import { isError } from '../../../functions/values.ts';
import { cellAtSpot } from '../../book/look.ts';
import type { Table } from '../../panels/handover/cells.ts';
import { present, type Reader } from './reader.ts';

/** The reading of a row with when, with what, notes and photos. */
export function takenAt({ look, cells, number }: Reader, columns: Table['columns'], row: number) {
  const text = (caption: string): string => {
    const column = columns.get(caption);
    return column === undefined ? '' : cells.said(row, column);
  };
  const column = columns.get('reading') ?? -1;
  const spot = { sheet: cells.sheet, row, column };
  const value = isError(look.engine.valueOf(spot)) ? undefined : number(row, column);
  const quantity = look.engine.quantityOf(spot);
  const cell = cellAtSpot(look.document, spot);
  const note = [text('note'), cell?.note ?? ''].filter(Boolean).join('; ');
  return {
    text,
    ...present({
      reading:
        value === undefined || quantity === undefined
          ? undefined
          : { value, quantity, said: cells.said(row, column) },
      time: text('time') || cell?.taken?.time,
      meter: text('with meter') || cell?.taken?.meter,
      note: note || undefined,
      photos: cell?.photos && [...cell.photos],
    }),
  };
}
