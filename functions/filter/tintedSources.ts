import { refuse, type FunctionError, type TableCell, type TableRow } from '../values.ts';
import type { Tinted } from './nearestPieces.ts';

const columns = ['kelvin', 'duv', 'may be changed'] as const;
const at = (cell: TableCell): string => (cell.at ? ` (${cell.at})` : '');

const isNo = ({ value }: TableCell): boolean =>
  value === false || (typeof value === 'string' && value.trim().toLowerCase() === 'no');

/** The sources of a table that may be changed, or the sentence that says which cell is wrong. */
export function tintedSources(
  caller: string,
  rows: readonly TableRow[],
): readonly Tinted[] | FunctionError {
  const lights: Tinted[] = [];
  for (const [index, row] of rows.entries()) {
    if (row.length !== columns.length) {
      const shape = `sources must be three columns: ${columns.join(', ')}`;
      return refuse(`${caller}: ${shape}.`, '#VALUE!');
    }
    const [kelvin, duv, may] = row as readonly [TableCell, TableCell, TableCell];
    if (kelvin.value === undefined && duv.value === undefined) continue;
    if (index === 0 && row.every(({ value }) => typeof value === 'string')) continue;
    if (isNo(may)) continue;
    const fault = faultOf(caller, kelvin, 'kelvin') ?? faultOf(caller, duv, 'duv');
    if (fault) return fault;
    lights.push({ kelvin: Number(kelvin.value), duv: Number(duv.value) });
  }
  return lights;
}

/** What the columns may hold, as the other functions of a match take it. */
const domains = {
  kelvin: { low: 1000, high: 100_000 },
  duv: { low: -0.05, high: 0.05 },
} as const;

function faultOf(
  caller: string,
  cell: TableCell,
  column: keyof typeof domains,
): FunctionError | undefined {
  const { value } = cell;
  if (value === undefined)
    return { code: '#N/A', message: `waiting for ${column}${at(cell)}`, waiting: true };
  if (typeof value !== 'number')
    return refuse(`${caller}: ${column}${at(cell)} must be a number.`, '#VALUE!');
  const { low, high } = domains[column];
  return value >= low && value <= high
    ? undefined
    : refuse(`${caller}: ${column}${at(cell)} must be from ${low} to ${high}, not ${value}.`);
}
