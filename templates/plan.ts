import type { PlannedFigure } from '../src/book/make/figures.ts';
import type { Phase, Role } from '../src/book/types.ts';
import type { QuantityName } from '../functions/quantities/names.ts';

/** A cell of a template as an author writes it: what is typed there and what it is for. */
export interface PlannedCell {
  readonly typed?: string;
  readonly quantity?: QuantityName;
  readonly role?: Role;
  readonly decimals?: number;
  readonly bold?: boolean;
  readonly align?: 'left' | 'centre' | 'right';
  readonly note?: string;
  /** A formula: what the reading should come to. */
  readonly target?: string;
}

export type { PlannedFigure };

export interface PlannedSheet {
  readonly name: string;
  readonly title: string;
  readonly purpose: string;
  readonly phase: Phase;
  readonly template: string;
  /** In stops. */
  readonly tolerance?: number;
  readonly frozenColumns?: number;
  readonly frozenRows?: number;
  /** Pixels, from column A on. */
  readonly widths: readonly number[];
  readonly cells: Readonly<Record<string, PlannedCell>>;
  /** Under the grid, in their order. */
  readonly figures?: readonly PlannedFigure[];
}

export interface PlannedBook {
  readonly title: string;
  readonly sheets: readonly PlannedSheet[];
}
