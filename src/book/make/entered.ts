import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Cell, Content, EntrySettings, Taken } from '../types.ts';

/** What an entry puts into a cell, apart from what the cell says about itself. */
export interface Entered {
  readonly content: Content;
  readonly typed?: string;
  readonly under?: EntrySettings;
  readonly quantity?: QuantityName;
  readonly yields?: true;
  readonly taken?: Taken;
}

/**
 * The cell after an entry: what it said about itself stays, but for a quantity that only a typed
 * unit gave it, and for when and with what the one before was metered. `null` for a blank that says nothing.
 */
export function withEntry(cell: Cell | undefined, entered: Entered): Cell | null {
  const { content: _content, typed: _typed, under: _under, taken: _taken, ...said } = cell ?? blank;
  if (!said.yields) return orNull({ ...said, ...entered });
  const { quantity: _quantity, yields: _yields, ...rest } = said;
  return orNull({ ...rest, ...entered });
}

/** A quantity that came with a typed unit goes along with what was typed. */
export function unitOf(cell: Cell | undefined): Pick<Entered, 'quantity' | 'yields'> {
  return cell?.yields && cell.quantity !== undefined
    ? { quantity: cell.quantity, yields: true }
    : {};
}

/** A blank cell that says nothing about itself is no cell. */
export function orNull(cell: Cell): Cell | null {
  return cell.content.kind === 'blank' && Object.keys(cell).length === 1 ? null : cell;
}

export const blank: Cell = { content: { kind: 'blank' } };
