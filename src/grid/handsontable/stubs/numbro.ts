/** Stands in for number formats of the grid's date, time and number cells, which are never used. */
export default function numbro(): never {
  throw new Error(
    'Only text cells are used, so the grid should not have asked for number formats.',
  );
}
