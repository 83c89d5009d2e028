import { columnLetters } from '../../../src/formula/address.ts';

/**
 * A book as plainly as it can be told: lists of lines, cells beside them, formulas as pieces of text
 * and references to lines. Nothing is indexed, everything is looked for; undo is a copy of it all.
 * Lines never run out: there are always more than anyone refers to.
 */
export interface Model {
  sheets: MSheet[];
  names: MName[];
}

export interface MSheet {
  name: string;
  gone: boolean;
  rows: Line[];
  columns: Line[];
  cells: MCell[];
}

export interface Line {
  gone: boolean;
}

export interface MCell {
  row: Line;
  column: Line;
  parts: Part[];
}

export interface MName {
  name: string;
  parts: Part[];
}

/** Text between references, a name, or a reference. A plain entry is one text. */
export type Part = string | { name: string } | Ref;

export interface Ref {
  sheet: MSheet;
  explicit: boolean;
  /** `null` for whole columns. */
  rows: Ends | null;
  /** `null` for whole rows. */
  columns: Ends | null;
  single: boolean;
  lost: boolean;
}

export interface Ends {
  from: Line;
  to: Line;
  fixedFrom: boolean;
  fixedTo: boolean;
}

export const isRef = (part: Part): part is Ref => typeof part === 'object' && 'sheet' in part;

export function newModel(name: string): Model {
  return { sheets: [newSheet(name)], names: [] };
}

export function newSheet(name: string): MSheet {
  return { name, gone: false, rows: lines(40), columns: lines(20), cells: [] };
}

const lines = (count: number) => Array.from({ length: count }, (): Line => ({ gone: false }));

export const living = (all: readonly Line[]) => all.filter((line) => !line.gone);

/** The living line at an index; more lines are put at the end as needed. */
export function lineAt(all: Line[], index: number): Line {
  while (living(all).length <= index) all.push({ gone: false });
  const line = living(all)[index];
  if (!line) throw new Error(`no line ${String(index)}`);
  return line;
}

/** First and last living index between two lines; `undefined` when nothing is left. */
export function span(all: readonly Line[], { from, to }: Ends): [number, number] | undefined {
  const alive = living(all.slice(all.indexOf(from), all.indexOf(to) + 1));
  const [first, last] = [alive[0], alive.at(-1)];
  return first && last ? [living(all).indexOf(first), living(all).indexOf(last)] : undefined;
}

export function cellAt(sheet: MSheet, row: Line, column: Line): MCell | undefined {
  return sheet.cells.find((cell) => cell.row === row && cell.column === column);
}

export function put(sheet: MSheet, row: Line, column: Line, parts: Part[] | undefined): void {
  sheet.cells = sheet.cells.filter((cell) => cell.row !== row || cell.column !== column);
  if (parts) sheet.cells.push({ row, column, parts });
}

/** Living cells of living sheets, and names. */
export function holders(model: Model): { parts: Part[] }[] {
  const cells = model.sheets
    .filter(({ gone }) => !gone)
    .flatMap((sheet) => sheet.cells.filter(({ row, column }) => !row.gone && !column.gone));
  return [...cells, ...model.names];
}

export function textOf(model: Model, parts: readonly Part[], own: MSheet | null): string {
  return parts
    .map((part) => {
      if (typeof part === 'string') return part;
      return isRef(part) ? refText(part, own) : nameText(model, part.name);
    })
    .join('');
}

function nameText(model: Model, name: string): string {
  const defined = model.names.find((each) => each.name.toLowerCase() === name.toLowerCase());
  return defined?.name ?? name;
}

function refText(
  { sheet, explicit, rows, columns, single, lost }: Ref,
  own: MSheet | null,
): string {
  const down = rows && span(sheet.rows, rows);
  const across = columns && span(sheet.columns, columns);
  if (lost || sheet.gone || down === undefined || across === undefined) return '#REF!';
  const end = (which: 0 | 1) => {
    const fixed = which === 0 ? 'fixedFrom' : 'fixedTo';
    const letters = across && (columns?.[fixed] ? '$' : '') + columnLetters(across[which]);
    const digits = down && (rows?.[fixed] ? '$' : '') + String(down[which] + 1);
    return (letters ?? '') + (digits ?? '');
  };
  const address = single ? end(0) : `${end(0)}:${end(1)}`;
  const prefix = /^[A-Za-z]+$/.test(sheet.name) ? sheet.name : `'${sheet.name}'`;
  return explicit || sheet !== own ? `${prefix}!${address}` : address;
}

const reference =
  /(?:(?:'([^']+)'|([A-Z][a-z]+))!)?(?:(\$?)([A-Z]+)(\$?)(\d+)(?::(\$?)([A-Z]+)(\$?)(\d+))?|(\$?)([A-Z]+):(\$?)([A-Z]+)|(\$?)(\d+):(\$?)(\d+))|([A-Za-z]+_[a-z]+)/g;

/** Reads the formulas that the random moves write, and nothing else. */
export function parse(model: Model, own: MSheet, text: string): Part[] {
  if (!text.startsWith('=')) return [text];
  const parts: Part[] = [];
  let at = 0;
  for (const match of text.matchAll(reference)) {
    parts.push(text.slice(at, match.index), part(model, own, match));
    at = match.index + match[0].length;
  }
  return [...parts, text.slice(at)];
}

function part(model: Model, own: MSheet, match: RegExpMatchArray): Part {
  const [, quoted, plain, fc1, c1, fr1, r1, fc2, c2, fr2, r2] = match;
  const [fca, ca, fcb, cb, fra, ra, frb, rb, name] = match.slice(11);
  if (name !== undefined) return { name };
  const wanted = (quoted ?? plain)?.toLowerCase();
  const sheet =
    wanted === undefined
      ? own
      : model.sheets.find((each) => !each.gone && each.name.toLowerCase() === wanted);
  if (!sheet) throw new Error(`no sheet in ${match[0]}`);
  const column = (letters: string) => lineAt(sheet.columns, letters.charCodeAt(0) - 65);
  const row = (digits: string) => lineAt(sheet.rows, Number(digits) - 1);
  const ends = (
    line: (text: string) => Line,
    a: string | undefined,
    b: string | undefined,
    fixedA: string | undefined,
    fixedB: string | undefined,
  ): Ends | null =>
    a === undefined
      ? null
      : {
          from: line(a),
          to: line(b ?? a),
          fixedFrom: fixedA === '$',
          fixedTo: (b === undefined ? fixedA : fixedB) === '$',
        };
  return {
    sheet,
    explicit: wanted !== undefined,
    rows: ends(row, r1 ?? ra, r1 === undefined ? rb : r2, fr1 ?? fra, r1 === undefined ? frb : fr2),
    columns: ends(
      column,
      c1 ?? ca,
      c1 === undefined ? cb : c2,
      fc1 ?? fca,
      c1 === undefined ? fcb : fc2,
    ),
    single: c1 !== undefined && c2 === undefined,
    lost: false,
  };
}
