import { addressAt, cellAtSpot, placeAt, typedText } from '../book/look.ts';
import type { Desk } from './desk.ts';

/** The cell with the cursor, as the fields begin with it. */
export function selected({ book, session }: Desk) {
  const { sheet } = session.state;
  const { row, column } = session.state.selection.focus;
  const spot = { sheet, row, column };
  const place = placeAt(book.document, spot);
  return {
    address: addressAt(spot),
    kind: cellAtSpot(book.document, spot)?.content.kind,
    typed: place ? typedText(book.document, place) : '',
  };
}
