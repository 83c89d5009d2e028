/** Stands in for a date picker of the grid's date, time and number cells, which are never used. */
export default function pikaday(): never {
  throw new Error('Only text cells are used, so the grid should not have asked for a date picker.');
}
