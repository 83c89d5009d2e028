import type { QuantityName } from '../../../functions/quantities/names.ts';
import { entrySettings } from '../settings.ts';
import type { Cell, Means, Settings } from '../types.ts';
import type { Entered } from './entered.ts';
import { words } from '../../words/words.ts';

/** What a text comes to in a cell, or why it cannot be read there. */
export type Read =
  | { readonly entered: Entered; readonly hint?: string | undefined }
  | { readonly reason: string; readonly at?: number };

/** What a light meter or a colour meter says. */
const metered: readonly (QuantityName | undefined)[] = [
  'fNumber',
  'illuminance',
  'luminance',
  'ev',
  'colourTemperature',
  'duv',
];

const wanted = words.book.readings;

/** A bare number counts: it is read as the formulas take it. */
function isReading(content: Cell['content'], quantity: QuantityName | undefined): boolean {
  if (content.kind === 'number') return quantity === undefined || metered.includes(quantity);
  return content.kind === 'blank';
}

/**
 * Reads a text by the quantity of the cell, else by what the area or column around it measures. A
 * quantity that only a typed unit gave the cell yields to what cannot be read by it.
 */
export function readInto(
  means: Pick<Means, 'readEntry'>,
  cell: Cell | undefined,
  around: QuantityName | undefined,
  text: string,
  settings: Settings,
): Read {
  const own = cell?.quantity;
  const byOwn = means.readEntry(text, own ?? around, settings);
  const yielding = own === undefined || cell?.yields === true;
  const result =
    'reason' in byOwn && own !== undefined && yielding
      ? means.readEntry(text, around, settings)
      : byOwn;
  if ('reason' in result) return result;
  const { content, quantity, hint } = result;
  if (cell?.role === 'reading' && yielding && !isReading(content, quantity)) {
    return { reason: words.book.noReading(wanted, text.trim()) };
  }
  if (content.kind === 'blank') return { entered: { content } };
  const said =
    quantity !== undefined && quantity !== around
      ? { quantity, ...(yielding && { yields: true as const }) }
      : {};
  return { entered: { content, typed: text, under: entrySettings(settings), ...said }, hint };
}
