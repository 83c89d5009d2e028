import { writeXlsx } from 'hucre/xlsx';
import type { CellStyle, WriteOptions, WriteSheet } from 'hucre';
import { addressAt } from '../../book/look.ts';
import { tokensOf } from '../../formula/tokens.ts';
import { isPlainError, type PlainBook, type PlainCell, type PlainSheet } from '../plain/types.ts';
import { codeOf } from './code.ts';
import { storedName } from './functions.ts';

/** Pixels of a digit and of the margins of a column, in the usual font. */
const digitWidth = 7;
const columnMargins = 5;

/** The book as a file of ISO/IEC 29500. */
export async function xlsxOf(book: PlainBook): Promise<Uint8Array> {
  const options: WriteOptions = {
    sheets: book.sheets.map(sheetOf),
    namedRanges: book.names.map(({ name, formula }) => ({ name, range: stored(formula) })),
    properties: { title: book.title, creator: 'Halfstop' },
  };
  return writeXlsx(options);
}

function sheetOf(sheet: PlainSheet): WriteSheet {
  const { name, frozenRows, frozenColumns, widths, cells } = sheet;
  const waiting = cells.filter(({ waits }) => waits);
  return {
    name,
    rows: [],
    cells: new Map(cells.map((cell) => [`${cell.row},${cell.column}`, cellOf(cell)])),
    columns: columnsOf(widths),
    ...((frozenRows > 0 || frozenColumns > 0) && {
      freezePane: { rows: frozenRows, columns: frozenColumns },
    }),
    ...(sheet.protected && {
      protection: { sheet: true, formatCells: false, formatColumns: false, formatRows: false },
    }),
    ...(sheet.hidden && { hidden: true }),
    conditionalRules: waiting.map(({ row, column }, index) => ({
      type: 'expression' as const,
      priority: index + 1,
      range: addressAt({ row, column }),
      formula: `ISNA(${addressAt({ row, column })})`,
      style: { font: { color: { rgb: 'FFFFFF' } } },
    })),
  };
}

function columnsOf(widths: ReadonlyMap<number, number>) {
  const count = Math.max(-1, ...widths.keys()) + 1;
  return Array.from({ length: count }, (_, index) => {
    const width = widths.get(index);
    return width === undefined
      ? {}
      : { width: Math.max(1, Math.round((width - columnMargins) / digitWidth)) };
  });
}

function cellOf({ value, formula, note, ...rest }: PlainCell): object {
  const style = styleOf(rest);
  const plain = isPlainError(value) ? value.error : value;
  return {
    ...(formula === undefined
      ? { value: plain }
      : { value: null, formula: stored(formula), formulaResult: plain ?? 0 }),
    ...(note !== undefined && { comment: { author: 'Halfstop', text: note } }),
    ...(style && { style }),
  };
}

function styleOf(cell: Omit<PlainCell, 'value' | 'formula' | 'note'>): CellStyle | undefined {
  const { look, unlocked, bold, italic, align, wrap } = cell;
  const style: CellStyle = {
    ...(look && { numFmt: codeOf(look) }),
    ...(unlocked && { protection: { locked: false } }),
    ...((bold || italic) && { font: { ...(bold && { bold }), ...(italic && { italic }) } }),
    ...((align || wrap) && {
      alignment: {
        ...(align && { horizontal: align === 'centre' ? ('center' as const) : align }),
        ...(wrap && { wrapText: true }),
      },
    }),
  };
  return Object.keys(style).length > 0 ? style : undefined;
}

/** Without its `=`, functions under the names they are stored by. */
function stored(formula: string): string {
  return tokensOf(formula)
    .map(({ kind, text }) => (kind === 'function' ? storedName(text) : text))
    .join('')
    .slice(1);
}
