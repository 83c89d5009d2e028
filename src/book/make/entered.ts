import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Cell, Content, EntrySettings } from '../types.ts';

/** What an entry puts into a cell, apart from what the cell says about itself. */
export interface Entered {
  readonly content: Content;
  readonly typed?: string;
  readonly under?: EntrySettings;
  readonly quantity?: QuantityName;
}

/** The cell after an entry: what it said about itself stays. `null` for a blank that says nothing. */
export function withEntry(cell: Cell | undefined, entered: Entered): Cell | null {
  const { content: _content, typed: _typed, under: _under, ...said } = cell ?? blank;
  return orNull({ ...said, ...entered });
}

/** A blank cell that says nothing about itself is no cell. */
export function orNull(cell: Cell): Cell | null {
  return cell.content.kind === 'blank' && Object.keys(cell).length === 1 ? null : cell;
}

export const blank: Cell = { content: { kind: 'blank' } };
