import type { QuantityName } from '../../functions/quantities/names.ts';
import { emptySheet } from '../book/newdocument.ts';
import type { Spot } from '../book/look.ts';
import type { Cell, CellAt, Document, Means, SheetContent } from '../book/types.ts';
import { words } from '../words/words.ts';
import type { Sweep, Swept } from './sweep.ts';
import { contentOf, referring, text, writer } from './swept-cells.ts';

/** What is known of a cell that a sweep varies or reads. */
export interface SweptCell {
  readonly spot: Spot;
  readonly caption: string;
  readonly quantity: QuantityName | undefined;
}

export interface SweptCells {
  readonly down: SweptCell;
  readonly across?: SweptCell;
  readonly read: readonly SweptCell[];
}

/** What stands in a cell of the sheet of a sweep. */
interface Standing {
  readonly row: number;
  readonly column: number;
  readonly cell: Cell;
}

type Tools = Pick<Means, 'readEntry'>;

/** By this a sheet is known to be a sweep that can be run again. */
export const sweepTemplate = 'sweep';

/** The sheet of a sweep: what varies, how all of it stands now, and what each case came to. */
export function sweepSheet(
  document: Document,
  means: Pick<Means, 'newId' | 'readEntry'>,
  plan: Sweep,
  cells: SweptCells,
  swept: Swept,
  live = false,
): SheetContent {
  const standing = [following(live), ...standingOf(document, means, plan, cells, swept)];
  const [rows, columns] = [
    1 + Math.max(...standing.map(({ row }) => row)),
    1 + Math.max(...standing.map(({ column }) => column)),
  ].map((count) => Array.from({ length: count }, () => means.newId())) as [string[], string[]];
  const read = cells.read.map(({ caption }) => caption).join(', ');
  const varied = [cells.down, ...(cells.across ? [cells.across] : [])]
    .map(({ caption }) => caption)
    .join(', ');
  const properties = {
    name: words.choose
      .title(varied)
      .replace(/[[\]*?/\\:]/g, ' ')
      .slice(0, 31)
      .trim(),
    title: words.choose.title(varied),
    purpose: words.choose.purpose(read, varied),
    phase: 'plan',
    template: sweepTemplate,
  } as const;
  return {
    ...emptySheet(means.newId(), properties),
    rows,
    columns,
    columnProperties: columns.map((id, index) => ({
      id,
      properties: { size: index === 0 ? 84 : 136 },
    })),
    cells: standing.map(({ row, column, cell }): CellAt & { readonly cell: Cell } => ({
      row: rows[row] ?? '',
      column: columns[column] ?? '',
      cell,
    })),
  };
}

export const firstColumn = 1;

/** Everything on the sheet, by row and column from 0. */
export function standingOf(
  document: Document,
  means: Tools,
  plan: Sweep,
  cells: SweptCells,
  swept: Swept,
): readonly Standing[] {
  const cases = cells.across ? byTwo : byOne;
  return [...captions(document, cells), ...cases(document, means, plan, cells, swept)];
}

/** The first cell says whether the sheet follows the book by itself; whoever likes types it over. */
const following = (live: boolean): Standing => ({
  ...followingAt,
  cell: {
    ...text(live ? words.choose.live : words.choose.frozen),
    role: 'choice',
    note: words.choose.followingNote,
  },
});

export const followingAt = { row: 0, column: 0 } as const;

function captions(document: Document, { down, across, read }: SweptCells): Standing[] {
  const all = [down, ...(across ? [across] : []), ...read];
  return [
    { row: 1, column: 0, cell: text(words.choose.now) },
    ...all.flatMap((one, index): Standing[] => [
      {
        row: 0,
        column: firstColumn + index,
        cell: { ...text(one.caption), format: { bold: true } },
      },
      { row: 1, column: firstColumn + index, cell: referring(document, one.spot) },
    ]),
  ];
}

/** A row for each value, a column for each cell that is read. */
function byOne(
  document: Document,
  means: Tools,
  { down }: Sweep,
  cells: SweptCells,
  swept: Swept,
): Standing[] {
  const write = writer(document, means);
  return down.values.flatMap((value, index): Standing[] => {
    const row = firstCase + index;
    return [
      { row, column: firstColumn, cell: { ...write(value, cells.down), role: 'choice' } },
      ...cells.read.map((one, at) => ({
        row,
        column: firstColumn + 1 + at,
        cell: write(contentOf(swept[index]?.[0]?.[at] ?? null), one),
      })),
    ];
  });
}

/** Rows of cases begin below a blank one. */
export const firstCase = 3;

/** A table for each cell that is read: one cell’s values down, the other’s across. */
function byTwo(
  document: Document,
  means: Tools,
  { down, across }: Sweep,
  cells: SweptCells,
  swept: Swept,
): Standing[] {
  const write = writer(document, means);
  const second = cells.across;
  if (!across || !second) return [];
  return cells.read.flatMap((one, at): Standing[] => {
    const head = firstCase + at * tableRows(down.values.length);
    const title = words.choose.byTwo(one.caption, cells.down.caption, second.caption);
    return [
      { row: head, column: 0, cell: { ...text(title), format: { bold: true } } },
      ...across.values.map((value, place): Standing => ({
        row: head + 1,
        column: firstColumn + 1 + place,
        cell: { ...write(value, second), role: 'choice' },
      })),
      ...down.values.flatMap((value, line): Standing[] => [
        {
          row: head + 2 + line,
          column: firstColumn,
          cell: { ...write(value, cells.down), role: 'choice' },
        },
        ...across.values.map((_, place): Standing => ({
          row: head + 2 + line,
          column: firstColumn + 1 + place,
          cell: write(contentOf(swept[line]?.[place]?.[at] ?? null), one),
        })),
      ]),
    ];
  });
}

/** Title, heading, the cases, and a blank row. */
export const tableRows = (cases: number): number => cases + 3;
