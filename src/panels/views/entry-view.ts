import { readEntry } from '../../../functions/quantities/entry.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { isError } from '../../../functions/values.ts';
import { placeAt, quantityAt, typedText } from '../../book/look.ts';
import type { SessionState } from '../../session/session.ts';
import type { EntryView, Shown } from '../shown.ts';
import { addressFrom, blockAddress } from './address.ts';
import { caption } from '../../check/captions.ts';
import type { Look } from './look.ts';
import { show, showCell } from './show.ts';

export function entryView(look: Look, state: SessionState): EntryView {
  const { document, engine } = look;
  const { selection, entry } = state;
  const { focus, ranges } = selection;
  const sheet = entry?.sheet ?? state.sheet;
  const at = { sheet, ...(entry?.spot ?? focus) };
  const last = ranges[ranges.length - 1] ?? ranges[0];
  const place = placeAt(document, at);
  const quantity = engine.quantityOf(at);
  const held = place ? typedText(document, place) : '';
  return {
    address: entry
      ? addressFrom(document, state.sheet, { sheet, from: entry.spot })
      : blockAddress(last.from, last.to, last.kind),
    label: caption(document, sheet, at.row, at.column),
    text: entry ? entry.text : held,
    typing: entry !== null,
    quantity,
    result: entry
      ? tryOut(look, sheet, entry.text, place && quantityAt(document, place))
      : showCell(look, at),
  };
}

/** What an entry would come to; for a formula still being typed, nothing rather than a complaint. */
export function tryOut(
  { engine, writing }: Look,
  sheet: string,
  text: string,
  quantity: QuantityName | undefined,
): Shown {
  if (text.startsWith('=')) {
    if (text.trim() === '=') return { text: '' };
    const result = engine.evaluate(text, sheet);
    const shown = show(result.value, result.quantity, writing);
    if (!isError(result.value)) return shown;
    return result.value.code === '#ERROR!' || result.value.code === '#NAME?'
      ? { text: '' }
      : { text: result.value.message, tone: 'quiet' };
  }
  const entry = readEntry(text, quantity, writing);
  if ('reason' in entry) return { text: '', tone: 'quiet' };
  const { content } = entry;
  return content.kind === 'number' ? show(content.value, entry.quantity, writing) : { text: '' };
}
