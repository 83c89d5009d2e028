import { enter, type Entry } from '../../book/make/enter.ts';
import type { Made } from '../../book/make/made.ts';
import type { Document, Id, Means, Refusal } from '../../book/types.ts';
import { words } from '../../words/words.ts';
import type { Picked } from './pick.ts';
import type { Option, Pick as Chosen, Problem } from './problem.ts';
import { firstRow, reach, readers, Unread, type Ground } from './read.ts';
import { obstacleInWords, outcomeInWords } from './said.ts';

/** By these words the parts of the sheet are found; the template sets them. */
export const captions = {
  outcome: 'Outcome',
  within: 'Within',
  option: 'Option',
  take: 'Take',
  output: 'Output',
  second: 'Second choice',
  item: 'Item',
  available: 'There are',
  cost: 'Cost',
  current: 'Current',
  dims: 'Dims',
  circuit: 'Circuit',
  carries: 'Still carries',
  hangs: 'Hangs on it',
} as const;

type Caption = keyof typeof captions;

/** Rows between the captions and the first option: wanted, what it comes to, how far off. */
const rowsOfPoints = 3;
export interface PickSheet {
  readonly problem: Problem;
  /** Row of each option, in their order. */
  readonly rows: readonly number[];
  readonly columns: ReadonlyMap<Caption, number>;
  readonly circuits: { readonly rows: readonly number[]; readonly hangs: number | undefined };
  readonly outcome: { readonly row: number; readonly column: number } | undefined;
}

const refused = (reason: string): Refusal => ({ ok: false, reason });

/** Reads the problem off a sheet that was made from the template, or says what is missing. */
export function readPickSheet(ground: Ground): ({ readonly ok: true } & PickSheet) | Refusal {
  const { text, number } = readers(ground);
  const head = firstRow((row) => text(row, 0) === captions.option);
  if (head === undefined) return refused(words.choose.noTable(captions.option));
  const columns = new Map<Caption, number>();
  for (const [name, caption] of Object.entries(captions))
    for (let column = 0; column < reach.columns; column += 1)
      if (text(head, column) === caption) columns.set(name as Caption, column);
  const missing = needed.find((name) => !columns.has(name));
  if (missing) return refused(words.choose.noColumn(captions[missing]));
  const column = (name: Caption) => columns.get(name) ?? 0;
  try {
    const points: { readonly name: string; readonly lux: number; readonly column: number }[] = [];
    for (let at = column('dims') + 1; text(head, at) !== ''; at += 1) {
      const lux = number(head + 1, at);
      if (lux !== undefined && lux > 0) points.push({ name: text(head, at), lux, column: at });
    }
    if (points.length === 0) return refused(words.choose.noPoints);
    const below = firstRow((row) => row > head && text(row, 0) === captions.circuit);
    const last = below ?? head + reach.rows;
    const options: Option[] = [];
    const rows: number[] = [];
    const available = new Map<string, number>();
    for (let row = head + 1 + rowsOfPoints; row < last; row += 1) {
      const name = text(row, 0);
      if (name === '') continue;
      const item = text(row, column('item')) || name;
      const count = number(row, column('available')) ?? 0;
      available.set(item, Math.max(available.get(item) ?? 0, Math.floor(count)));
      rows.push(row);
      options.push({
        name,
        item,
        amps: number(row, column('current')) ?? 0,
        cost: number(row, column('cost')) ?? 0,
        dimmable: text(row, column('dims')).toLowerCase() !== 'no',
        gives: points.map((point) => number(row, point.column) ?? 0),
      });
    }
    if (options.length === 0) return refused(words.choose.noOptions);
    const circuits = below === undefined ? undefined : circuitsFrom(below);
    const tolerance = valueBeside(captions.within) ?? 1 / 3;
    return {
      ok: true,
      problem: { options, available, points, tolerance, circuits: circuits?.list ?? [] },
      rows,
      columns,
      circuits: { rows: circuits?.rows ?? [], hangs: circuits?.hangs },
      outcome: beside(captions.outcome),
    };
  } catch (fault) {
    if (fault instanceof Unread) return refused(fault.message);
    throw fault;
  }

  function circuitsFrom(below: number) {
    const at = (caption: string) => {
      for (let found = 0; found < reach.columns; found += 1)
        if (text(below, found) === caption) return found;
      return undefined;
    };
    const [carries, hangs] = [at(captions.carries), at(captions.hangs)];
    const list: { readonly name: string; readonly amps: number }[] = [];
    const found: number[] = [];
    for (let row = below + 1; text(row, 0) !== ''; row += 1) {
      list.push({
        name: text(row, 0),
        amps: (carries === undefined ? 0 : number(row, carries)) ?? 0,
      });
      found.push(row);
    }
    return { list, rows: found, hangs };
  }

  /** The cell right of a caption above the table. */
  function beside(caption: string) {
    for (let row = 0; row < (head ?? 0); row += 1)
      for (let at = 0; at < reach.columns; at += 1)
        if (text(row, at) === caption) return { row, column: at + 1 };
    return undefined;
  }

  function valueBeside(caption: string): number | undefined {
    const found = beside(caption);
    return found && number(found.row, found.column);
  }
}

const needed = ['take', 'output', 'available', 'cost', 'current', 'dims'] as const;

/** Writes what was chosen into the sheet, or why nothing can be: one step for undo. */
export function writePicked(
  document: Document,
  means: Means,
  sheet: Id,
  { problem, rows, columns, circuits, outcome }: PickSheet,
  picked: Picked,
): Made {
  const entries: Entry[] = [];
  const put = (row: number, column: number | undefined, text: string) => {
    if (column !== undefined) entries.push({ sheet, row, column, text, under: { decimal: '.' } });
  };
  const [best, second] =
    picked.kind === 'found' ? [picked.best, picked.second] : [undefined, undefined];
  for (const [index, row] of rows.entries()) {
    const count = best?.counts[index] ?? 0;
    put(row, columns.get('take'), best ? String(count) : '');
    put(row, columns.get('output'), count > 0 ? `${percent(best?.outputs[index] ?? 0)} %` : '');
    put(row, columns.get('second'), second ? String(second.counts[index] ?? 0) : '');
  }
  for (const [index, row] of circuits.rows.entries())
    put(row, circuits.hangs, best ? hanging(problem, best, index) : '');
  const says =
    picked.kind === 'none'
      ? obstacleInWords(problem, picked.obstacle)
      : picked.kind === 'found'
        ? outcomeInWords(document, picked)
        : words.choose.undecided;
  if (outcome) put(outcome.row, outcome.column, says);
  return enter(document, means, entries, { label: words.choose.pick });
}

const percent = (share: number): number => Math.round(share * 1000) / 10;

function hanging({ options }: Problem, { onCircuits }: Chosen, circuit: number): string {
  return options
    .flatMap(({ name }, index) => {
      const count = onCircuits[index]?.[circuit] ?? 0;
      return count > 0 ? [`${count} × ${name}`] : [];
    })
    .join(', ');
}
