import type { GridModel } from '../grid/contract.ts';
import type { Row } from './pages.ts';
import { isNothing } from './printed-cells.ts';

/** Prepared rows that are left for writing by hand; more where the table is not begun. */
const forTheHand = 3;
const onAForm = 12;

interface RowsToPrint {
  readonly rows: readonly number[];
  /** First and last of the rows that are left out, each looking like the one before it. */
  readonly leftOut: readonly (readonly [from: number, to: number])[];
}

/**
 * A sheet has many prepared rows with nothing in them. Of rows that all look alike and whose first
 * entry is empty, paper has a few to write on; of those with no entry and nothing to see, one.
 */
export function rowsToPrint(model: GridModel, count: number, columns: number): RowsToPrint {
  const rows: number[] = [];
  const leftOut: [number, number][] = [];
  const looks = Array.from({ length: count }, (_, row) => lookOf(model, row, columns));
  for (let row = 0; row < count;) {
    let end = row + 1;
    while (end < count && looks[end]?.seen === looks[row]?.seen) end += 1;
    const look = looks[row] ?? unused;
    const kept = look.spare ? (looks[row - 1]?.filled ? forTheHand : onAForm) : 1;
    const until = look.spare || look.silent ? Math.min(end, row + kept) : end;
    for (let one = row; one < until; one += 1) rows.push(one);
    // A sentence is not worth a single row.
    if (end - until === 1) rows.push(until);
    else if (until < end) leftOut.push([until, end - 1]);
    row = end;
  }
  return { rows, leftOut };
}

interface Look {
  /** What is seen of it, as one text. */
  readonly seen: string;
  /** Prepared for an entry that is not there. */
  readonly spare: boolean;
  /** Results with nothing to say. */
  readonly silent: boolean;
  /** Has an entry. */
  readonly filled: boolean;
}

const unused: Look = { seen: '', spare: false, silent: false, filled: false };

function lookOf(model: GridModel, row: number, columns: number): Look {
  const cells = Array.from({ length: columns }, (_, column) => model.cell(row, column));
  const entry = cells.find(({ role }) => role !== undefined);
  const isBlank = cells.every(({ text }) => text === '');
  const seen = cells.map(({ text, unit, role, verdict, note }) =>
    [text, unit, role, verdict, note].join('\t'),
  );
  return {
    seen: seen.join('\n'),
    spare: entry !== undefined && entry.text === '' && !cells.some(({ note }) => note),
    silent: isBlank && !entry && cells.some((_, column) => model.editText(row, column) !== ''),
    filled: entry !== undefined && entry.text !== '',
  };
}

/** How a row reads: what has only titles and captions stands at the head of what follows. */
export function kindOf(model: GridModel, row: number, columns: readonly number[]): Row['kind'] {
  const cells = columns.map((column) => model.cell(row, column)).filter((cell) => !isNothing(cell));
  if (cells.length === 0) return 'blank';
  const said = cells.filter(({ text }) => text !== '');
  return said.length > 0 && said.every(({ heading, bold }) => heading ?? bold) ? 'heads' : 'says';
}

/** In a later run of columns: rows that stay in view or say something beside the first column, no caption with nothing under it at the end. */
export function laterRows(
  model: GridModel,
  rows: readonly number[],
  columns: readonly number[],
): readonly number[] {
  const [, ...others] = columns;
  const said = rows.filter(
    (row) => row < model.frozen.rows || kindOf(model, row, others) !== 'blank',
  );
  const last = said.findLastIndex((row) => kindOf(model, row, others) === 'says');
  return last < 0 ? said : said.slice(0, last + 1);
}
