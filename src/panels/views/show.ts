import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import { isError } from '../../../functions/values.ts';
import { shownCell } from '../../check/shown.ts';
import type { CellPlace, CellValue } from '../../engine/types.ts';
import type { Shown } from '../shown.ts';
import type { Look } from './look.ts';

/** A cell as panels show it; an error with its whole sentence. */
export function showCell({ document, engine }: Look, at: CellPlace): Shown {
  const { text, unit, whole, tone, sentence } = shownCell(document, engine, at);
  const words = tone === undefined ? apart(text, unit, whole) : { text: sentence ?? text, tone };
  return words;
}

/** A value that is in no cell, as panels show it. */
export function show(
  value: CellValue,
  quantity: QuantityName | undefined,
  writing: WritingSettings,
): Shown {
  if (value === null) return { text: '' };
  if (isError(value))
    return { text: value.message, tone: value.waiting || value.quiet ? 'quiet' : 'wrong' };
  if (typeof value === 'string') return { text: value };
  if (typeof value === 'boolean') return { text: value ? 'TRUE' : 'FALSE' };
  const { number, unit, text } = writeQuantity(quantity ?? 'number', value, writing);
  return apart(number, unit, text);
}

/** In one line, unit and all. */
export function say(
  value: CellValue,
  quantity: QuantityName | undefined,
  writing: WritingSettings,
): string {
  if (typeof value === 'number') return writeQuantity(quantity ?? 'number', value, writing).text;
  return show(value, quantity, writing).text;
}

/** The unit goes behind the number in small type, unless it is written before it (`ISO 800`). */
export function apart(number: string, unit = '', whole = number): Shown {
  return unit !== '' && unit !== '°' && unit !== ':1' && whole.startsWith(number)
    ? { text: number, unit }
    : { text: whole };
}
