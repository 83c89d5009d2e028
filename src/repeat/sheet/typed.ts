import {
  readAs,
  defaultWriting,
  units,
  writeForPeople,
} from '../../../functions/quantities/index.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';

/** Nine figures are more than any meter, tape or dimmer has. */
const figures = 9;

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
