import type { PlannedCell } from './plan.ts';

/** A column of a planned table: its heading and how wide it is. */
export interface PlannedColumn {
  readonly caption: string;
  /** Pixels. */
  readonly width: number;
  /** Captions of numbers stand over the numbers. */
  readonly numbers?: true;
}

type Cells = Record<string, PlannedCell>;

/** Columns from A on, spoken of by name, so that one can be put between others. */
export interface Columns<Name extends string> {
  letterOf(column: Name): string;
  readonly widths: readonly number[];
  readonly captions: Readonly<Record<Name, string>>;
  /** A row of cells by the names of their columns. */
  row(at: number, cells: Readonly<Partial<Record<Name, PlannedCell>>>): Cells;
  /** A row of captions, set like the columns below them. */
  captionRow(at: number, captions: Readonly<Partial<Record<Name, string>>>): Cells;
}

/** A to Z, then AA to AZ. */
const columnLetters = (index: number): string =>
  (index < 26 ? '' : 'A') + String.fromCharCode(65 + (index % 26));

export function columnsOf<Name extends string>(
  columns: Readonly<Record<Name, PlannedColumn>>,
): Columns<Name> {
  const names = Object.keys(columns) as Name[];
  const letterOf = (column: Name): string => columnLetters(names.indexOf(column));
  const row: Columns<Name>['row'] = (at, cells) =>
    Object.fromEntries(
      names.flatMap((name) => {
        const cell = cells[name];
        return cell ? [[`${letterOf(name)}${at}`, cell]] : [];
      }),
    );
  const captionCell = (name: Name, typed: string): PlannedCell => ({
    typed,
    bold: true,
    ...(columns[name].numbers && { align: 'right' }),
  });
  return {
    letterOf,
    widths: names.map((name) => columns[name].width),
    captions: Object.fromEntries(names.map((name) => [name, columns[name].caption])) as Record<
      Name,
      string
    >,
    row,
    captionRow: (at, captions) =>
      row(
        at,
        Object.fromEntries(
          names.flatMap((name) => {
            const caption = captions[name];
            return caption === undefined ? [] : [[name, captionCell(name, caption)]];
          }),
        ) as Partial<Record<Name, PlannedCell>>,
      ),
  };
}
