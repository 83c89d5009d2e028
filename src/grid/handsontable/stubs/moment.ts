/** Stands in for dates of the grid's date, time and number cells, which are never used. */
export default function moment(): never {
  throw new Error('Only text cells are used, so the grid should not have asked for dates.');
}
