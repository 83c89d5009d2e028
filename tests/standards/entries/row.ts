import type { QuantityName, WritingSettings } from '../../../functions/quantities/index.ts';

/** An entry as a person writes it, and what it must mean. */
export interface Accepted {
  /** Quantity of the cell; a plain cell has none. */
  readonly cell?: QuantityName;
  readonly typed: string;
  /** In base units, or the text or truth that a plain cell keeps. */
  readonly means: number | string | boolean;
  /** Quantity that the written unit gives a plain cell. */
  readonly becomes?: QuantityName;
  readonly writing?: Partial<WritingSettings>;
  readonly fps?: number;
}

export type Row = readonly [typed: string, means: number | string | boolean];

/** Rows for cells of one quantity. */
export function inCellsOf(
  cell: QuantityName,
  rows: readonly Row[],
  rest: Pick<Accepted, 'writing' | 'fps'> = {},
): readonly Accepted[] {
  return rows.map(([typed, means]) => ({ cell, typed, means, ...rest }));
}

/** Rows for plain cells: with a unit they become that quantity. */
export function inPlainCells(
  rows: readonly (readonly [...Row, becomes?: QuantityName])[],
  rest: Pick<Accepted, 'writing'> = {},
): readonly Accepted[] {
  return rows.map(([typed, means, becomes]) => ({
    typed,
    means,
    ...(becomes === undefined ? {} : { becomes }),
    ...rest,
  }));
}
