import { lightQuantities, type QuantityName } from '../../../functions/quantities/names.ts';
import { stopsInWords, verdictWords } from '../../../functions/stops/verdictWords.ts';
import { formulaText } from '../../book/look.ts';
import type { Cell } from '../../book/types.ts';
import type { CellPlace, CellValue } from '../../engine/types.ts';
import type { Fact } from '../workbook.ts';
import type { Look } from './look.ts';
import { shapeOf } from './points.ts';
import { say } from './show.ts';

/** How far off, in stops; undefined for what is not measured in stops. */
function stopsOff(value: number, target: number, quantity: QuantityName | undefined) {
  if (quantity === 'stops' || quantity === 'ev') return value - target;
  if (!(value > 0 && target > 0)) return undefined;
  if (quantity === 'fNumber') return 2 * Math.log2(value / target);
  return lightQuantities.some((light) => light === quantity)
    ? Math.log2(value / target)
    : undefined;
}

/** What the cell should come to, and how far it is from that. */
export function targetFacts(
  look: Look,
  at: CellPlace,
  cell: Cell | undefined,
  value: CellValue,
  quantity: QuantityName | undefined,
): readonly Fact[] {
  const { document, engine, writing } = look;
  if (cell?.target === undefined) return [];
  const target =
    typeof cell.target === 'number'
      ? cell.target
      : engine.evaluate(formulaText(document, cell.target, at.sheet), at.sheet).value;
  const tolerance =
    cell.tolerance ?? document.sheet(at.sheet)?.properties.tolerance ?? document.settings.tolerance;
  const wanted: Fact = {
    label: 'wanted',
    text: `${say(target, quantity, writing)} ± ${stopsInWords(tolerance)}`,
  };
  if (typeof target !== 'number' || typeof value !== 'number') return [wanted];
  const off = stopsOff(value, target, quantity);
  if (off === undefined) return [wanted];
  const words = verdictWords(off, tolerance);
  const shape = shapeOf(words);
  return [wanted, { label: 'off by', text: words, ...(shape && { shape }) }];
}
