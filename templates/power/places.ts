// Where everything stands on the sheet. Columns are shared by the tables below one another.

export const settings = {
  volts: '$B$1',
  share: '$D$1',
  /** A breaker opens at once from so many times its rating. */
  opensAt: '$F$1',
  /** In milliamperes: what a protection device lets through, and how much of it is counted on. */
  device: '$H$1',
  leakShare: '$J$1',
  drop: '$B$2',
  headroom: '$D$2',
  /** How much of an electronic load’s current comes back in the neutral of three phases. */
  neutralShare: '$F$2',
} as const;

export interface Rows {
  readonly head: number;
  readonly first: number;
  readonly last: number;
}

const table = (head: number, rows: number): Rows => ({
  head,
  first: head + 1,
  last: head + rows,
});

export const circuits = table(4, 6);
export const loads = table(circuits.last + 2, 12);
export const phases = table(loads.last + 2, 4);
export const supply = table(phases.last + 2, 3);
export const leads = table(supply.last + 2, 4);
export const batteries = table(leads.last + 2, 2);

/** A column of a table, as formulas name it. */
export const down = (column: string, { first, last }: Rows): string =>
  `$${column}$${first}:$${column}$${last}`;

/** What a row says only once its first cell is filled in. */
export const once = (cell: string, formula: string): string =>
  `=IF(ISBLANK(${cell}),"",${formula})`;
