import {
  readAs,
  defaultWriting,
  units,
  writeForPeople,
} from '../../../functions/quantities/index.ts';
import type { PlannedCell } from '../../../templates/plan.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';

/** Nine figures are more than any meter, tape or dimmer has. */
const figures = 9;

/** A cell that is read to two decimals where what is typed in it has more: a computed place from the key. */
export const short = (cell: PlannedCell): PlannedCell =>
  /\.\d{3}/.test(cell.typed ?? '') ? { ...cell, decimals: 2 } : cell;

/** A number in base units as it is typed into a planned cell; empty where there is none. */
export function typed(value: number | undefined, quantity: QuantityName): string {
  if (value === undefined) return '';
  const plain = String(Number(value.toPrecision(figures)));
  const said = [
    writeForPeople(quantity, value, defaultWriting),
    `${plain} ${units[quantity].base}`.trim(),
  ];
  const readsBack = (text: string) => {
    const read = readAs(quantity, text, defaultWriting);
    return read.ok && Math.abs(read.value - value) <= 1e-8 * Math.max(1e-6, Math.abs(value));
  };
  return said.find(readsBack) ?? plain;
}
