import { isError, refuse, type FunctionError, type TableCell, type TableRow } from '../values.ts';

/** A piece of coloured filter as a swatch book or a meter says it. */
export interface Piece {
  readonly name: string;
  /** Positive warms. */
  readonly mired: number;
  /** What it adds to Duv: positive is green. */
  readonly duv: number;
  /** Stops that it takes. */
  readonly loss: number;
}

export const kitParameter = {
  name: 'kit',
  quantity: 'table',
  range: true,
  help: 'A row for each piece: its name, its mired shift, what it adds to Duv, the stops it takes. A heading is passed over.',
} as const;

/** Put between the names of two pieces that go on together. */
const joint = ' + ';
/** What is said where nothing of the kit goes on. */
const bare = 'none';

export const namesOf = (pieces: readonly Piece[]): string =>
  pieces.map(({ name }) => name).join(joint) || bare;

const columns = ['piece', 'mired', 'duv', 'loss'] as const;
const at = (cell: TableCell): string => (cell.at ? ` (${cell.at})` : '');

/** The pieces of a kit, or the sentence that says which cell is wrong. */
export function piecesOf(
  caller: string,
  rows: readonly TableRow[],
): readonly Piece[] | FunctionError {
  const pieces: Piece[] = [];
  for (const [index, row] of rows.entries()) {
    if (row.length !== columns.length)
      return refuse(`${caller}: kit must be four columns: piece, mired, Duv and loss.`, '#VALUE!');
    if (row.every(({ value }) => value === undefined)) continue;
    if (index === 0 && row.every(({ value }) => typeof value === 'string')) continue;
    const fault = faultIn(caller, row);
    if (fault) return fault;
    const [name, mired, duv, loss] = row.map(({ value }) => value ?? 0);
    pieces.push({
      name: String(name).trim(),
      mired: Number(mired),
      duv: Number(duv),
      loss: Number(loss),
    });
  }
  return pieces;
}

/** A shift that is not given is none; a name and a loss are waited for. */
function faultIn(caller: string, row: TableRow): FunctionError | undefined {
  for (const [index, column] of columns.entries()) {
    const cell = row[index] as TableCell;
    if (cell.value === undefined && (column === 'piece' || column === 'loss'))
      return { code: '#N/A', message: `waiting for ${column}${at(cell)}`, waiting: true };
    if (column !== 'piece' && cell.value !== undefined && typeof cell.value !== 'number')
      return refuse(`${caller}: ${column}${at(cell)} must be a number.`, '#VALUE!');
  }
  const loss = row[3] as TableCell;
  return Number(loss.value) >= 0
    ? undefined
    : refuse(`${caller}: loss${at(loss)} must be zero or more, not ${Number(loss.value)}.`);
}

/** The pieces that a text names, as `namesOf` writes them; a name may be typed in any case. */
export function named(
  caller: string,
  text: string,
  kit: readonly Piece[],
): readonly Piece[] | FunctionError {
  const wanted = text.trim().toLowerCase();
  const find = (name: string) => kit.find((piece) => piece.name.toLowerCase() === name.trim());
  const whole = find(wanted);
  if (whole) return [whole];
  if (wanted === bare || wanted === '') return [];
  const pieces: Piece[] = [];
  for (const name of wanted.split(joint)) {
    const piece = find(name);
    if (!piece) return refuse(`${caller}: “${name.trim()}” is not in the kit.`, '#VALUE!');
    pieces.push(piece);
  }
  return pieces;
}

/** What the pieces that a text names come to together. */
export function sumOf(
  caller: string,
  what: 'mired' | 'duv' | 'loss',
  text: string,
  rows: readonly TableRow[],
): number | FunctionError {
  const kit = piecesOf(caller, rows);
  if (isError(kit)) return kit;
  const pieces = named(caller, text, kit);
  return isError(pieces) ? pieces : pieces.reduce((sum, piece) => sum + piece[what], 0);
}
