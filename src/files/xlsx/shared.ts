import { readFormula } from '../../formula/read.ts';
import { writeColumn, writeCorner, writeRow } from '../../formula/address.ts';
import type { WrittenCorner, WrittenEnd } from '../../formula/address.ts';
import { writeSheetPrefix } from '../../formula/sheetprefix.ts';
import type { WrittenReference } from '../../formula/written.ts';

/**
 * A formula that several cells share, as it reads some rows and columns farther on. What cannot be
 * read stays as it is: it is named later.
 */
export function moved(formula: string, rows: number, columns: number): string {
  const read = readFormula(formula, Infinity);
  if ('reason' in read) return formula;
  const { pieces } = read.shape;
  return read.references.reduce(
    (text, reference, slot) => text + written(reference, rows, columns) + (pieces[slot + 1] ?? ''),
    pieces[0] ?? '',
  );
}

function written(reference: WrittenReference, rows: number, columns: number): string {
  if (reference.kind === 'name') return reference.name;
  const prefix = reference.sheet === undefined ? '' : writeSheetPrefix(reference.sheet);
  const far = (end: WrittenEnd, by: number): WrittenEnd =>
    end.fixed ? end : { ...end, index: end.index + by };
  const corner = ({ row, column }: WrittenCorner) => {
    const at = { row: far(row, rows), column: far(column, columns) };
    return at.row.index < 0 || at.column.index < 0 ? '#REF!' : writeCorner(at);
  };
  if (reference.kind === 'cell') return prefix + corner(reference.at);
  if (reference.kind === 'range')
    return prefix + corner(reference.from) + reference.joint + corner(reference.to);
  const end =
    reference.kind === 'rows'
      ? (line: WrittenEnd) => writeRow(far(line, rows))
      : (line: WrittenEnd) => writeColumn(far(line, columns));
  return prefix + end(reference.from) + reference.joint + end(reference.to);
}
