/** A class cannot be handed out to: a sentence that says why. */
export class Undeliverable extends Error {}

/** A cell of a sheet by its lines, as a key. */
export const keyOf = ({ row, column }: { row: string; column: string }): string =>
  `${row} ${column}`;
