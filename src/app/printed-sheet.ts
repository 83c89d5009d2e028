import type { Id } from '../book/types.ts';
import { addressAt } from '../book/look.ts';
import type { GridEvents, GridModel, GridView } from '../grid/contract.ts';
import type { openGrid as open } from '../grid/plain/open.ts';
import type * as printed from '../panels/handover/printed.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';
import { gridModel } from './grid-model.ts';
import { planPages, type Plan } from './paper.ts';
import { lookAt } from './workbook.ts';

/** What lays sheets on paper: fetched when there is a book to print. */
export interface Laying {
  readonly openGrid: typeof open;
  readonly printed: typeof printed;
}

export interface LaidSheet {
  readonly plan: Plan;
  readonly name: string;
  dispose(): void;
}

/** One sheet as plain tables with its head, figures, numbered notes and legend, in `host`. */
export function laySheet(host: HTMLElement, desk: Desk, id: Id, laying: Laying): LaidSheet {
  const look = lookAt(desk);
  const model = gridModel(
    desk,
    () => Infinity,
    () => id,
  );
  const { rows, columns } = written(model);
  const widths = Array.from({ length: columns }, (_, column) => model.columnWidth(column));
  const page = desk.book.document.settings.page;
  const plan = planPages(page, widths, 18 + 8 * Math.max(3, String(rows).length));
  const notes = notesOn(desk, id, rows, columns);

  laying.printed.layHead(add(host, 'printed-head'), look, id);
  const runs = rows > 0 ? plan.runs : [];
  const views = runs.map((run, index): GridView => {
    const part = add(host, 'part');
    if (index > 0) add(part, 'goes-on').textContent = words.print.continued(index + 1, runs.length);
    const cells = add(part, 'cells');
    const view = laying.openGrid(cells, cut(model, rows, run), noEvents);
    number(cells, run, notes);
    wrap(cells, plan.room / plan.scale);
    repeatHead(cells, model.frozen.rows);
    cells.style.setProperty('zoom', String(plan.scale));
    return view;
  });
  const ends = notes.map(({ text, cells }) => ({ address: cells.map(addressAt).join(', '), text }));
  laying.printed.layFoot(add(host, 'printed-foot'), look, id, ends, Math.min(plan.room, 700));
  return {
    plan,
    name: model.name,
    dispose() {
      for (const view of views) view.dispose();
    },
  };
}

function add(host: HTMLElement, name: string): HTMLElement {
  const element = document.createElement('div');
  element.className = name;
  host.append(element);
  return element;
}

/** One note with all cells that it is on. */
interface Noted {
  readonly text: string;
  readonly cells: { readonly row: number; readonly column: number }[];
}

/** What people wrote on cells and what the check has to say of them, in the order of reading. */
function notesOn(desk: Desk, sheet: Id, rows: number, columns: number): readonly Noted[] {
  const found = desk.book.document.sheet(sheet);
  const notes = new Map<string, Noted>();
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) {
      const [rowId, columnId] = [found?.rows.idAt(row), found?.columns.idAt(column)];
      const cell =
        rowId !== undefined && columnId !== undefined ? found?.cell(rowId, columnId) : undefined;
      const said = [cell?.note ?? '', ...desk.remarksAt({ sheet, row, column })];
      const text = said.filter((one) => one !== '').join(' ');
      if (text === '') continue;
      const noted = notes.get(text) ?? { text, cells: [] };
      noted.cells.push({ row, column });
      notes.set(text, noted);
    }
  return [...notes.values()];
}

/** The smallest block from A1 that has anything to see. */
function written(model: GridModel): { rows: number; columns: number } {
  const used = model.used();
  let rows = 0;
  let columns = 0;
  for (let row = 0; row < used.rows; row += 1) {
    for (let column = 0; column < used.columns; column += 1) {
      const { text, role, verdict, note } = model.cell(row, column);
      if (text === '' && !role && !verdict && !note) continue;
      rows = row + 1;
      columns = Math.max(columns, column + 1);
    }
  }
  return { rows, columns };
}

/** The first rows and some columns of a sheet as a sheet of their own. */
function cut(model: GridModel, rows: number, columns: readonly number[]): GridModel {
  const of = (column: number): number => columns[column] ?? 0;
  const size = { rows, columns: columns.length };
  return {
    name: model.name,
    rowCount: size.rows,
    columnCount: size.columns,
    frozen: { rows: 0, columns: 0 },
    columnWidth: (column) => model.columnWidth(of(column)),
    rowLabel: (row) => model.rowLabel(row),
    columnLabel: (column) => model.columnLabel(of(column)),
    cell: (row, column) => model.cell(row, of(column)),
    editText: () => '',
    used: () => size,
  };
}

/** The number of its note goes behind a cell's words, or before a number. */
function number(part: HTMLElement, columns: readonly number[], notes: readonly Noted[]): void {
  const lines = part.querySelectorAll('tbody tr');
  notes.forEach(({ cells }, index) => {
    for (const { row, column } of cells) {
      const cell = lines[row]?.querySelectorAll('td')[columns.indexOf(column)];
      if (!cell) continue;
      const mark = document.createElement('sup');
      mark.className = 'note-number';
      mark.textContent = String(index + 1);
      (cell.classList.contains('left') ? (cell.querySelector('.words') ?? cell) : cell).append(
        mark,
      );
    }
  });
}

/** Rows that stay in view on the screen head each page on paper. */
function repeatHead(part: HTMLElement, count: number): void {
  const lines = [...part.querySelectorAll('tbody tr')].slice(0, count);
  part.querySelector('thead')?.append(...lines);
}

/** What would run under its neighbour, off the paper or be cut gets more lines: paper does not scroll. */
function wrap(part: HTMLElement, room: number): void {
  const { left } = part.getBoundingClientRect();
  const long: { readonly element: HTMLElement; readonly width: string }[] = [];
  for (const row of part.querySelectorAll('tbody tr')) {
    let limit = left + room;
    for (const cell of [...row.querySelectorAll<HTMLElement>('td.filled')].reverse()) {
      const said = cell.querySelector<HTMLElement>('.words');
      const box = said?.getBoundingClientRect();
      if (!cell.classList.contains('left')) {
        if (cell.scrollWidth > cell.clientWidth) long.push({ element: cell, width: '' });
      } else if (said && box && box.right > limit) {
        long.push({ element: said, width: `${limit - box.left}px` });
      }
      limit = cell.getBoundingClientRect().left;
    }
  }
  for (const { element, width } of long) {
    element.classList.add('wrapped');
    element.style.width = width;
  }
}

const nothing = (): undefined => undefined;

/** Paper answers no gesture. */
const noEvents: GridEvents = {
  selected: nothing,
  edit: () => true,
  clear: nothing,
  fill: nothing,
  resizeColumn: nothing,
  copy: nothing,
  cut: nothing,
  paste: nothing,
  menu: nothing,
  key: () => false,
};
