import { cellAtSpot, placeAt, typedText } from '../book/look.ts';
import type { Cell, Format, Id, LineProperties, Sheet } from '../book/types.ts';
import { shownCell, type ShownCell } from '../check/shown.ts';
import { columnLetters } from '../formula/address.ts';
import type { CellPicture, GridModel } from '../grid/contract.ts';
import { spelled } from '../panels/kit/spelled.ts';
import { apart } from '../panels/views/show.ts';
import type { Desk } from './desk.ts';
import { widthInView } from './widths.ts';
import { words } from '../words/words.ts';

/** Lines to scroll into beyond what is written, so that a sheet never looks full. */
const spare = { rows: 60, columns: 6 };
const least = { rows: 100, columns: 16 };
/** The sheet in view, or another, as the grid asks for it; `room` is how wide the grid may be, in pixels. */
export function gridModel(
  desk: Desk,
  room: () => number,
  sheetId: () => Id = () => desk.session.state.sheet,
): GridModel {
  const { book } = desk;
  const { document } = book;
  const sheet = (): Sheet | undefined => document.sheet(sheetId());
  const columnProperties = (column: number): LineProperties | undefined => {
    const id = sheet()?.columns.idAt(column);
    return id === undefined ? undefined : sheet()?.columns.properties(id);
  };
  return {
    get name() {
      const { title, name } = sheet()?.properties ?? { title: '', name: '' };
      return title || name;
    },
    get rowCount() {
      return Math.max(least.rows, (sheet()?.rows.length ?? 0) + spare.rows);
    },
    get columnCount() {
      return Math.max(least.columns, (sheet()?.columns.length ?? 0) + spare.columns);
    },
    get frozen() {
      const { frozenRows = 0, frozenColumns = 0 } = sheet()?.properties ?? {};
      return { rows: frozenRows, columns: frozenColumns };
    },
    columnWidth(column) {
      const frozen = sheet()?.properties.frozenColumns ?? 0;
      return widthInView((at) => columnProperties(at)?.size, column, frozen, room());
    },
    rowLabel: (row) => String(row + 1),
    columnLabel: columnLetters,
    cell(row, column) {
      const spot = { sheet: sheetId(), row, column };
      const cell = cellAtSpot(document, spot);
      const line = columnProperties(column);
      if (!cell && !line?.role) return blank;
      const format = { ...line?.format, ...cell?.format };
      const shown = shownCell(document, desk.engine, spot);
      const role = cell?.role ?? line?.role;
      const set = captionOverNumbers(desk, spot, format);
      return picture(cell, shown, set, role, desk.remarksAt(spot));
    },
    editText(row, column) {
      const place = placeAt(document, { sheet: sheetId(), row, column });
      return place ? typedText(document, place) : '';
    },
    used: () => ({ rows: sheet()?.rows.length ?? 0, columns: sheet()?.columns.length ?? 0 }),
  };
}

const blank: CellPicture = { text: '' };

/** A caption stands over its numbers, and they stand to the right. */
function captionOverNumbers(
  { book, engine }: Desk,
  spot: { sheet: string; row: number; column: number },
  format: Format,
): Format {
  if (!format.bold || format.align) return format;
  const { number, tone, verdict } = shownCell(book.document, engine, {
    ...spot,
    row: spot.row + 1,
  });
  return number || (tone === 'quiet' && !verdict) ? { ...format, align: 'right' } : format;
}

const shapes = { 'in range': 'agrees', lost: 'under' } as const;

function picture(
  cell: Cell | undefined,
  shown: ShownCell,
  format: Format,
  role: Cell['role'],
  remarks: readonly string[],
): CellPicture {
  const { verdict, tone, number, sentence } = shown;
  const { text, unit } = apart(shown.text, shown.unit, shown.whole);
  const note = cell?.note ? words.grid.noteOf(cell.note) : '';
  const described = [sentence ?? '', ...remarks, note].filter(Boolean).join(' ');
  const isText = cell?.content.kind === 'text';
  const shape = verdict === 'in range' || verdict === 'lost' ? shapes[verdict] : verdict;
  return {
    text: verdict === 'waits' && sentence !== undefined ? sentence : spelled(text),
    align: format.align ?? (number || (tone && !verdict) ? 'right' : 'left'),
    ...(unit !== undefined && { unit }),
    ...(format.bold && (isText ? { heading: true } : { bold: true })),
    ...(format.italic && { italic: true }),
    ...(tone && { state: tone === 'quiet' ? 'waiting' : 'error' }),
    ...(role && { role }),
    ...(shape && { verdict: shape }),
    ...(cell?.note && { note: true }),
    ...(remarks.length > 0 && { remark: true }),
    ...(described !== '' && { described }),
  };
}
