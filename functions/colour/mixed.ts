import { refuse, type FunctionError, type TableCell, type TableRow } from '../values.ts';
import type { XY } from './chromaticity.ts';

export const lights = {
  name: 'lights',
  quantity: 'table',
  range: true,
  help: 'A row for each light: its level at the point, its x and its y. A heading is passed over.',
} as const;

/** Chromaticity of several lights together: CIE 15, additive mixture by tristimulus values. */
export function mixed(caller: string, rows: readonly TableRow[]): XY | FunctionError {
  let [X, Y, sum] = [0, 0, 0];
  for (const [index, row] of rows.entries()) {
    if (row.length !== 3)
      return refuse(`${caller}: lights must be three columns: level, x and y.`, '#VALUE!');
    if (row.every(({ value }) => value === undefined)) continue;
    if (index === 0 && row.every(({ value }) => typeof value === 'string')) continue;
    const [level, x, y] = row as readonly [TableCell, TableCell, TableCell];
    const fault = missing(caller, level, x, y) ?? outside(caller, level, x, y);
    if (fault) return fault;
    const light = Number(level.value);
    X += (light * Number(x.value)) / Number(y.value);
    Y += light;
    sum += light / Number(y.value);
  }
  if (sum > 0) return { x: X / sum, y: Y / sum };
  return { code: '#NUM!', message: 'no light at lights', quiet: true };
}

type Cells = readonly [level: TableCell, x: TableCell, y: TableCell];
const columns = ['level', 'x', 'y'] as const;

const at = (cell: TableCell): string => (cell.at ? ` (${cell.at})` : '');

function missing(caller: string, ...cells: Cells): FunctionError | undefined {
  const text = cells.findIndex(({ value }) => value !== undefined && typeof value !== 'number');
  if (text >= 0)
    return refuse(
      `${caller}: ${columns[text] ?? ''}${at(cells[text]!)} must be a number.`,
      '#VALUE!',
    );
  const blank = cells.findIndex(({ value }) => value === undefined);
  if (blank < 0) return undefined;
  const message = `waiting for ${columns[blank] ?? ''}${at(cells[blank]!)}`;
  return { code: '#N/A', message, waiting: true };
}

function outside(caller: string, ...cells: Cells): FunctionError | undefined {
  const [light, x, y] = cells.map(({ value }) => Number(value)) as [number, number, number];
  const said = (column: number, says: string) =>
    refuse(
      `${caller}: ${columns[column] ?? ''}${at(cells[column]!)} must be ${says}, not ${Number(cells[column]!.value)}.`,
    );
  if (!(light >= 0 && light < 1e15)) return said(0, 'zero or more');
  if (!(x >= 0 && x <= 1)) return said(1, 'from 0 to 1');
  if (!(y >= 0.001 && y <= 1)) return said(2, 'from 0.001 to 1');
  return undefined;
}
