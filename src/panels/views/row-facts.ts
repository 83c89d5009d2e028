import { cellAtSpot } from '../../book/look.ts';
import { shownCell } from '../../check/shown.ts';
import type { CellPlace } from '../../engine/types.ts';
import type { RowFact } from '../shown.ts';
import { columnCaption } from '../../check/captions.ts';
import type { Look } from './look.ts';
import { shapeOf } from './points.ts';

/** More would bury what matters. */
const most = 10;

/** The rest of a row, each value under its column's caption, as a card of the point. */
export function rowFacts({ document, engine }: Look, at: CellPlace): readonly RowFact[] {
  const sheet = document.sheet(at.sheet);
  const facts: RowFact[] = [];
  const columns = sheet?.columns.length ?? 0;
  for (let column = 1; column < columns && facts.length < most; column += 1) {
    const spot = { ...at, column };
    const { text, unit, whole, tone } = shownCell(document, engine, spot);
    if (text === '' || tone === 'wrong' || column === at.column) continue;
    const label = columnCaption(document, at.sheet, at.row, column);
    if (label === '') continue;
    const value = engine.valueOf(spot);
    const shape = engine.quantityOf(spot) === 'verdict' ? shapeOf(value) : undefined;
    facts.push({
      label,
      text: whole ?? (unit ? `${text} ${unit}` : text),
      target: { sheet: at.sheet, from: { row: at.row, column } },
      ...(shape && { shape }),
    });
  }
  return cellAtSpot(document, at)?.format?.bold ? [] : facts;
}
