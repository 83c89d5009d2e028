import type { Id } from '../book/types.ts';
import { addressAt } from '../book/look.ts';
import { rowsLeftOut } from '../commands/filtered.ts';
import type { GridEvents, GridModel } from '../grid/contract.ts';
import type { openGrid as open } from '../grid/plain/open.ts';
import type * as printed from '../panels/handover/printed.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';
import { gridModel } from './grid-model.ts';
import { planPages, type Plan } from './paper.ts';
import { fitPages, type LaidPart } from './fit-pages.ts';
import { notesOn, numberNotes, type Run } from './printed-notes.ts';
import { kindOf, laterRows, rowsToPrint } from './printed-rows.ts';
import { spilling, written } from './printed-cells.ts';
import { lookAt } from './look-at.ts';

/** What lays sheets on paper: fetched when there is a book to print. */
export interface Laying {
  readonly openGrid: typeof open;
  readonly printed: typeof printed;
}

export interface LaidSheet {
  readonly plan: Plan;
  readonly name: string;
}

/** Wider paper has a figure’s sentences beside it and not above: both are seen on one page. */
const sideBySide = 900;
const besideDrawing = 270;
const widestDrawing = 700;

/** One sheet as plain tables with its head, legend, numbered notes and figures, in `host`. */
export function laySheet(host: HTMLElement, desk: Desk, id: Id, laying: Laying): LaidSheet {
  const look = lookAt(desk);
  const model = gridModel(
    desk,
    () => Infinity,
    () => id,
  );
  const filtered = new Set(rowsLeftOut(look, id));
  const { rows, columns } = written(model);
  const { rows: toPrint, leftOut } = rowsToPrint(model, rows, columns);
  const widths = Array.from({ length: columns }, (_, column) => model.columnWidth(column));
  const page = desk.book.document.settings.page;
  const numbers = 18 + 8 * Math.max(3, String(rows).length);
  const plan = planPages(page, widths, numbers, spilling(model, toPrint, widths));
  host.style.width = `${String(plan.room)}px`;
  const notes = notesOn(desk, id, rows, columns);

  laying.printed.layHead(add(host, 'printed-head'), look, id);
  const runs = rows > 0 ? plan.runs : [];
  const parts = runs.map((columnsHere, index): LaidPart => {
    const part = add(host, 'part');
    if (index > 0) add(part, 'goes-on').textContent = words.print.continued(index + 1, runs.length);
    const rowsHere = index > 0 ? laterRows(model, toPrint, columnsHere) : toPrint;
    const run = { rows: rowsHere.filter((row) => !filtered.has(row)), columns: columnsHere };
    const cells = paint(part, cut(model, run), laying);
    numberNotes(cells, run, notes);
    wrap(cells, plan.room / plan.scale);
    const frozen = run.rows.filter((row) => row < model.frozen.rows).length;
    repeatHead(cells, frozen);
    cells.style.setProperty('zoom', String(plan.scale));
    const kinds = run.rows.slice(frozen).map((row) => kindOf(model, row, columnsHere));
    return { element: part, kinds };
  });
  const ends = notes.map(({ text, cells }) => ({ address: cells.map(addressAt).join(', '), text }));
  const foot = add(host, 'printed-foot');
  const isWide = plan.room > sideBySide;
  foot.classList.toggle('side-by-side', isWide);
  const width = Math.min(plan.room - (isWide ? besideDrawing : 0), widestDrawing);
  laying.printed.layFoot(foot, look, id, { ends, leftOut }, width);
  fitPages(host, plan, parts);
  return { plan, name: model.name };
}

function add(host: HTMLElement, name: string): HTMLElement {
  const element = document.createElement('div');
  element.className = name;
  host.append(element);
  return element;
}

/** What the grid painted, without the grid: it would paint again what is moved to another page. */
function paint(part: HTMLElement, model: GridModel, { openGrid }: Laying): HTMLElement {
  const painted = add(part, 'cells');
  const view = openGrid(painted, model, noEvents);
  const cells = painted.cloneNode(true) as HTMLElement;
  view.dispose();
  painted.replaceWith(cells);
  return cells;
}

/** Some rows and columns of a sheet as a sheet of their own. */
function cut(model: GridModel, { rows, columns }: Run): GridModel {
  const of = (column: number): number => columns[column] ?? 0;
  const at = (row: number): number => rows[row] ?? 0;
  const size = { rows: rows.length, columns: columns.length };
  return {
    name: model.name,
    rowCount: size.rows,
    columnCount: size.columns,
    frozen: { rows: 0, columns: 0 },
    columnWidth: (column) => model.columnWidth(of(column)),
    rowLabel: (row) => model.rowLabel(at(row)),
    columnLabel: (column) => model.columnLabel(of(column)),
    cell: (row, column) => model.cell(at(row), of(column)),
    editText: () => '',
    used: () => size,
  };
}

/** Rows that stay in view on the screen head each page on paper. */
function repeatHead(part: HTMLElement, count: number): void {
  const lines = [...part.querySelectorAll('tbody tr')].slice(0, count);
  part.querySelector('thead')?.append(...lines);
}

/** Wrapped words keep so much clear of what is beside them, in CSS pixels: zoom rounds. */
const clear = 8;

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
        long.push({ element: said, width: `${limit - box.left - clear}px` });
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
