import { formulaText } from '../../book/look.ts';
import { isError } from '../../../functions/values.ts';
import { spelled } from '../kit/spelled.ts';
import type { Look } from '../views/look.ts';
import { say } from '../views/show.ts';
import type { Cells } from './cells.ts';

/** What a reading is to come to, in its own unit; empty where that is not known yet. */
export function targetIn(look: Look, cells: Cells, row: number, column: number): string {
  const { document, engine, writing } = look;
  const target = cells.at(row, column)?.target;
  if (target === undefined) return '';
  const { sheet } = cells;
  const quantity = engine.quantityOf({ sheet, row, column });
  const wanted =
    typeof target === 'number'
      ? { value: target, quantity }
      : engine.evaluate(formulaText(document, target, sheet), sheet);
  if (isError(wanted.value) || wanted.value === null) return '';
  return spelled(say(wanted.value, wanted.quantity ?? quantity, writing)).replaceAll(' ', '\u00a0');
}
