import type { Spot } from '../book/look.ts';
import { spotOf } from '../book/look.ts';
import type { Cell, Document, Id, Place, Sheet } from '../book/types.ts';
import { columnCaption, rowCaption } from '../check/captions.ts';
import { words } from '../words/words.ts';

/** One cell that is filled on the day: a point, and what is metered there. */
export interface WalkReading {
  readonly place: Place;
  readonly spot: Spot;
  /** The point: "Fill side of face". */
  readonly label: string;
  /** The column: "Reading", "Lamps off". */
  readonly caption: string;
  /** The verdict of its row is on this reading, and not on another one there. */
  readonly isJudged: boolean;
}

/** Readings that are taken in one round: all lights on, then each lamp alone, then lamps off. */
export interface Pass {
  /** Empty for the first round; else the caption that its readings share. */
  readonly name: string;
  readonly readings: readonly WalkReading[];
}

interface Found extends Omit<WalkReading, 'isJudged'> {
  readonly cell: Cell;
}

/**
 * The readings of a sheet in the order of walking. Where a row says which of its readings is the
 * point's own (it has a target, or stands under "Reading"), the others are rounds of their own,
 * unless they measure something for good: a colour meter says kelvin and tint in one go.
 */
export function passesOf(document: Document, id: Id): readonly Pass[] {
  const sheet = document.sheet(id);
  if (!sheet) return [];
  const first: WalkReading[] = [];
  const later = new Map<string, WalkReading[]>();
  for (const row of rowsOf(document, sheet)) {
    const own = row.find(isOwn);
    for (const found of own ? [own, ...row.filter((one) => one !== own)] : row) {
      const { cell, ...rest } = found;
      const reading = { ...rest, isJudged: !own || found === own };
      if (reading.isJudged || isSettled(cell)) first.push(reading);
      else later.set(rest.caption, [...(later.get(rest.caption) ?? []), reading]);
    }
  }
  const rounds = [...later].map(([name, readings]) => ({ name, readings }));
  return first.length > 0 ? [{ name: '', readings: first }, ...rounds] : rounds;
}

const isOwn = ({ cell, caption }: Found) =>
  cell.target !== undefined || caption.toLowerCase() === 'reading';

/** What it measures was said on purpose and does not come from a typed unit. */
const isSettled = ({ quantity, yields }: Cell) => quantity !== undefined && !yields;

/** A formula is a result whatever its role says, and a text is a caption. */
const isTaken = ({ content }: Cell) => content.kind === 'number' || content.kind === 'blank';

function rowsOf(document: Document, sheet: Sheet): readonly (readonly Found[])[] {
  const rows = new Map<number, Found[]>();
  for (const { row, column, cell } of sheet.cells()) {
    const role = cell.role ?? sheet.columns.properties(column)?.role;
    if (role !== 'reading' || !isTaken(cell)) continue;
    const place = { sheet: sheet.id, row, column };
    const spot = spotOf(document, place);
    if (!spot) continue;
    const label =
      rowCaption(document, sheet.id, spot.row, spot.column) || words.walk.rowName(spot.row + 1);
    const caption = columnCaption(document, sheet.id, spot.row, spot.column);
    rows.set(spot.row, [...(rows.get(spot.row) ?? []), { place, spot, label, caption, cell }]);
  }
  return [...rows]
    .sort(([a], [b]) => a - b)
    .map(([, found]) => found.sort((a, b) => a.spot.column - b.spot.column));
}
