/** A cell of a sheet by its lines, as a key. */
export const cellKey = ({ row, column }: { row: string; column: string }): string =>
  `${row} ${column}`;
