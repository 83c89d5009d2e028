import { readEntry } from '../../../functions/quantities/entry.ts';
import { writingSettings, usualSettings } from '../../book/settings.ts';
import { maxColumns, maxRows } from '../../book/types.ts';
import { tableText } from '../in/bytes.ts';
import { Counter, foreign, SheetIn, type Foreign } from '../in/collected.ts';
import { most, Refused } from '../in/refused.ts';
import { lookOf } from '../plain/look.ts';
import type { PlainCell } from '../plain/types.ts';
import { readTable, split } from '../table.ts';
import { unescapedText } from './escape.ts';
import { words } from '../../words/words.ts';

export interface TableIn extends Foreign {
  /** The sign that was taken for the decimal one. */
  readonly decimal: '.' | ',';
}

/** Reads a table of text as one sheet. A semicolon between columns means a decimal comma. */
export function readCsv(bytes: Uint8Array, title: string, decimal?: '.' | ','): TableIn {
  if (bytes.length > most.packed) throw new Refused(words.files.largerThan50);
  const text = tableText(bytes);
  if (text.includes('\0')) throw new Refused(words.files.neither);
  const body = text.replace(/^\uFEFF/, '');
  const table = readTable(text);
  const rows = table?.rows ?? split(body, body.includes('\t') ? '\t' : ',');
  const sign = decimal ?? table?.decimal ?? '.';
  if (rows.length > maxRows || rows.some(({ length }) => length > maxColumns))
    throw new Refused(words.files.sheetLimits(maxRows, maxColumns));
  const sheet = new SheetIn(title === '' ? words.files.table : title, new Counter());
  const writing = writingSettings({ ...usualSettings, decimal: sign });
  rows.forEach((cells, row) => {
    cells.forEach((entry, column) => {
      if (entry !== '') sheet.put({ row, column, ...cellOf(entry, writing) });
    });
  });
  return { ...foreign(title, [sheet], [], []), decimal: sign };
}

function cellOf(
  text: string,
  writing: ReturnType<typeof writingSettings>,
): Pick<PlainCell, 'value' | 'formula' | 'look'> {
  if (text.startsWith('=')) return { value: text, formula: text };
  const meant = unescapedText(text);
  if (meant !== text) return { value: meant };
  const read = readEntry(text, undefined, writing);
  if (!('content' in read)) return { value: text };
  const { content, quantity } = read;
  if (content.kind === 'truth') return { value: content.value };
  if (content.kind !== 'number') return { value: text };
  const { value } = content;
  const look = lookOf({ quantity, format: undefined, value, typed: true, writing });
  return { value, ...(look && { look }) };
}
