import { mapReferences } from '../formula/adjust.ts';
import type { Formula, LineEnd } from '../formula/types.ts';
import { withEntry } from '../book/make/entered.ts';
import { refused, type Made } from '../book/make/made.ts';
import { readInto } from '../book/make/readInto.ts';
import { quantityAround } from '../book/look.ts';
import type {
  Cell,
  CellAt,
  Document,
  Id,
  InsertLinesStep,
  Means,
  Sheet,
  Step,
} from '../book/types.ts';
import type { Walk } from '../files/walk.ts';
import { findTable } from './tables.ts';
import { destinationsOf, type Destinations, type TableName } from './destinations.ts';
import { words } from '../words/words.ts';

/** A transaction that takes a walk into a sheet, and a sentence that says what came in. */
export interface Filling {
  readonly made: Made;
  readonly says: string;
}

/** Takes a walk of readings into a sheet of points, as one gesture. Points it does not have get rows. */
export function fillWalk(document: Document, means: Means, sheetId: Id, walk: Walk): Filling {
  const sheet = document.sheet(sheetId);
  if (!sheet) return { made: refused(words.walk.sheetGone), says: '' };
  const destinations = destinationsOf(document, sheetId, walk);
  const under = { ...document.settings, decimal: walk.decimal };
  const filling = new Filler(means, sheet, destinations.tables);
  const unread: string[] = [];
  for (const { text, table, row, column } of destinations.texts) {
    const at = typeof row === 'number' ? sheet.rows.idAt(row) : filling.rowFor(table, row);
    const columnId = sheet.columns.idAt(column);
    if (at === undefined || columnId === undefined) continue;
    const cell = filling.cell(at, columnId);
    const around = quantityAround(document, sheet, { sheet: sheetId, row: at, column: columnId });
    const read = readInto(means, cell, around, text, under);
    if ('reason' in read) unread.push(`${text}: ${read.reason}`);
    else filling.put(at, columnId, withEntry(cell, read.entered));
  }
  const label = words.walk.takeInLines(walk.rows.length);
  return {
    made: { ok: true, transaction: { label, steps: filling.steps() } },
    says: sentence(destinations, unread),
  };
}

/** A row for one more point, below the last of its table and like it. */
export function addPoint(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheetId: Id,
  name: string,
  table = findTable(document, sheetId, 'point'),
): { readonly made: Made; readonly row: Id | undefined } {
  const sheet = document.sheet(sheetId);
  if (!sheet || !table) return { made: refused(words.walk.noPointsOnSheet), row: undefined };
  const filling = new Filler(means, sheet, new Map([['point', table]]));
  const row = filling.rowFor('point', name);
  return {
    made: { ok: true, transaction: { label: words.walk.addPoint, steps: filling.steps() } },
    row,
  };
}

function sentence({ readings, waiting, leftOut }: Destinations, unread: readonly string[]): string {
  const parts = [words.walk.cameIn(readings)];
  if (waiting.length > 0) parts.push(words.walk.stillWithout(waiting.join(', ')));
  return [...parts, ...leftOut, ...unread].join(' ');
}

/** Cells as they will be, and the rows that have to be made for them. */
class Filler {
  readonly #means: Pick<Means, 'newId'>;
  readonly #sheet: Sheet;
  readonly #tables: Destinations['tables'];
  readonly #cells = new Map<string, CellAt>();
  readonly #made = new Map<string, Id>();
  readonly #inserts: InsertLinesStep[] = [];

  constructor(means: Pick<Means, 'newId'>, sheet: Sheet, tables: Destinations['tables']) {
    this.#means = means;
    this.#sheet = sheet;
    this.#tables = tables;
  }

  cell(row: Id, column: Id): Cell | undefined {
    const changed = this.#cells.get(`${row} ${column}`);
    return changed ? (changed.cell ?? undefined) : this.#sheet.cell(row, column);
  }

  put(row: Id, column: Id, cell: Cell | null): void {
    this.#cells.set(`${row} ${column}`, { row, column, cell });
  }

  /** The row made for a name: below the table’s last one, and like it. */
  rowFor(table: TableName | null, name: string): Id | undefined {
    const known = this.#made.get(`${table} ${name}`);
    const rows = table === null ? undefined : this.#tables.get(table)?.rows;
    const pattern = this.#sheet.rows.idAt(rows?.at(-1) ?? -1);
    if (known !== undefined || pattern === undefined) return known;
    const row = this.#means.newId();
    const before = [...this.#made].filter(([key]) => key.startsWith(`${table} `)).at(-1)?.[1];
    const { id: sheet } = this.#sheet;
    this.#inserts.push({
      kind: 'insertLines',
      sheet,
      axis: 'rows',
      ids: [row],
      after: before ?? pattern,
    });
    this.#made.set(`${table} ${name}`, row);
    for (const [index, column] of this.#sheet.columns.ids.entries()) {
      const cell = this.#sheet.cell(pattern, column);
      if (cell) this.put(row, column, likeRow(cell, pattern, row, index === 0 ? name : undefined));
    }
    return row;
  }

  steps(): readonly Step[] {
    const cells = [...this.#cells.values()];
    const set: Step = { kind: 'setCells', sheet: this.#sheet.id, cells };
    return cells.length > 0 ? [...this.#inserts, set] : [];
  }
}

/** The cell of a new row made like another: formulas look along their own row, readings and numbers are left out. */
function likeRow(cell: Cell, from: Id, to: Id, name: string | undefined): Cell | null {
  const own = (formula: Formula) => alongRow(formula, from, to);
  const { content, target } = cell;
  const said: Cell = {
    ...cell,
    ...(typeof target === 'object' && { target: own(target) }),
  };
  if (name !== undefined)
    return withEntry(said, { content: { kind: 'text', text: name }, typed: name });
  if (content.kind === 'formula') {
    return { ...said, content: { kind: 'formula', formula: own(content.formula) } };
  }
  const standing = cell.role === 'given' || (cell.role === 'choice' && content.kind === 'text');
  return standing ? said : withEntry(said, { content: { kind: 'blank' } });
}

function alongRow(formula: Formula, from: Id, to: Id): Formula {
  const end = (line: LineEnd): LineEnd =>
    line.id === from && !line.fixed ? { ...line, id: to } : line;
  return mapReferences(formula, (reference) => {
    if (reference.kind === 'cell') {
      return { ...reference, at: { ...reference.at, row: end(reference.at.row) } };
    }
    if (reference.kind !== 'range') return reference;
    return {
      ...reference,
      from: { ...reference.from, row: end(reference.from.row) },
      to: { ...reference.to, row: end(reference.to.row) },
    };
  });
}
