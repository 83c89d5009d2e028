import { addressAt } from '../../book/look.ts';
import { columnLetters } from '../../formula/address.ts';
import type { Document } from '../../book/types.ts';
import type { Target } from '../shown.ts';

interface Spot {
  readonly row: number;
  readonly column: number;
}

/** "C7", "C7:C12", "C:D", "4:6". */
export function blockAddress(
  from: Spot,
  to: Spot,
  kind: 'cells' | 'rows' | 'columns' | 'all',
): string {
  if (kind === 'all') return 'all';
  if (kind === 'rows') return `${from.row + 1}:${to.row + 1}`;
  if (kind === 'columns') return `${columnLetters(from.column)}:${columnLetters(to.column)}`;
  return from.row === to.row && from.column === to.column
    ? addressAt(from)
    : `${addressAt(from)}:${addressAt(to)}`;
}

/** As said from another sheet: the sheet's title goes before it. */
export function addressFrom(document: Document, sheet: string, target: Target): string {
  const address = blockAddress(target.from, target.to ?? target.from, 'cells');
  if (target.sheet === sheet) return address;
  const { title, name } = document.sheet(target.sheet)?.properties ?? {};
  return `${title || name || ''} ${address}`.trim();
}
