import type { QuantityName } from '../../../../functions/quantities/names.ts';
import type { WritingSettings } from '../../../../functions/quantities/settings.ts';
import { writeNumber } from '../../../../functions/quantities/writing/number.ts';
import { said } from '../../kit/words.ts';

/** Says a number of some quantity, or a plain one, with no more figures than are read. */
export function sayer(
  quantity: QuantityName | undefined,
  writing: WritingSettings,
): (value: number) => string {
  return (value) =>
    quantity === undefined || quantity === 'number'
      ? writeNumber(Number(value.toPrecision(4)), writing)
      : said(quantity, Number(value.toPrecision(6)), writing);
}
