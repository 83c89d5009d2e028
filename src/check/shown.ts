import { verdictShape, type VerdictShape } from '../../functions/stops/verdictWords.ts';
import { writeQuantity } from '../../functions/quantities/index.ts';
import { isError } from '../../functions/values.ts';
import { cellAtSpot, type Spot } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document } from '../book/types.ts';
import type { CellValue, Engine } from '../engine/types.ts';

/** A cell as people read it. */
export interface ShownCell {
  readonly text: string;
  /** Small and behind the number. */
  readonly unit?: string;
  readonly number: boolean;
  /** `quiet`: waits, or has no light to look at. `wrong`: an error. */
  readonly tone?: 'quiet' | 'wrong';
  readonly verdict?: VerdictShape | 'waits';
  /** Number and unit in one piece, as it can be read back. */
  readonly whole?: string;
  /** The whole sentence where the text is only a dash or is cut short. */
  readonly sentence?: string;
}

const dash = '–';

/** What a cell shows: its value in the book's units, or in words why it has none. */
export function shownCell(document: Document, engine: Engine, spot: Spot): ShownCell {
  const value = engine.valueOf(spot);
  const quantity = engine.quantityOf(spot);
  if (isError(value)) {
    const shown = shownError(value);
    return quantity === 'verdict' && value.waiting ? { ...shown, verdict: 'waits' } : shown;
  }
  if (quantity === 'verdict' && typeof value === 'string') {
    const verdict = verdictShape(value);
    return { text: value, number: false, ...(verdict && { verdict }) };
  }
  if (typeof value !== 'number') return { text: plain(value), number: false };
  const { decimals, unit } = cellAtSpot(document, spot)?.format ?? {};
  const format = {
    ...(decimals !== undefined && { decimals }),
    ...(unit !== undefined && { unit }),
  };
  const written = writeQuantity(
    quantity ?? 'number',
    value,
    writingSettings(document.settings),
    format,
  );
  return {
    text: written.number,
    number: true,
    whole: written.text,
    ...(written.unit !== '' && { unit: written.unit }),
  };
}

function shownError(error: Extract<CellValue, { code: unknown }>): ShownCell {
  const { message, waiting, quiet } = error;
  if (waiting) return { text: dash, number: false, tone: 'quiet', sentence: message };
  return { text: message, number: false, tone: quiet ? 'quiet' : 'wrong', sentence: message };
}

function plain(value: string | boolean | null | undefined): string {
  if (value === null || value === undefined) return '';
  return typeof value === 'boolean' ? (value ? 'TRUE' : 'FALSE') : value;
}

/** The cell in one piece of text, for the clipboard and for searching; a waiting cell is empty. */
export function shownText(document: Document, engine: Engine, spot: Spot): string {
  const { text, whole } = shownCell(document, engine, spot);
  return text === dash ? '' : (whole ?? text);
}
