import { cellAtSpot, placeAt, quantityAt } from '../book/look.ts';
import type { Document } from '../book/types.ts';
import type { CellPlace, CellValue, Engine, Explanation } from '../engine/types.ts';

/**
 * What stands in for the engine while it loads: what was typed is there at once, formulas are blank
 * until they have been worked out.
 */
export function literalEngine(document: Document): Engine {
  const valueOf = (place: CellPlace): CellValue => {
    const content = cellAtSpot(document, place)?.content;
    if (!content || content.kind === 'blank' || content.kind === 'formula') return null;
    return content.kind === 'text' ? content.text : content.value;
  };
  const quantityOf: Engine['quantityOf'] = (spot) => {
    const place = placeAt(document, spot);
    return place && quantityAt(document, place);
  };
  return {
    valueOf,
    quantityOf,
    explain: (place): Explanation => ({
      value: valueOf(place),
      quantity: quantityOf(place),
      precedents: [],
      dependents: [],
      remarks: [],
    }),
    evaluate: () => ({ value: null, quantity: undefined, remarks: [] }),
    listen: () => () => undefined,
    dispose: () => undefined,
  };
}
