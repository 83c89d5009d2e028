import type { Outcome } from '../commands/command.ts';
import type { GridEvents, GridModel } from '../grid/contract.ts';
import type { openGrid as open } from '../grid/plain/open.ts';
import type { Desk } from './desk.ts';
import { gridModel } from './grid-model.ts';
import { margin, planPages, type Plan } from './paper.ts';

export interface PrintParts {
  /** The grid on the screen: what is printed is laid before it. */
  readonly grid: HTMLElement;
  readonly locale: string;
  desk(): Desk | null;
  now(): Date;
}

export interface Printing {
  /** Fetches the painter, so that the browser's own print finds it. */
  prepareWhenIdle(): void;
  /** Prints the sheet in view. */
  print(): Promise<Outcome>;
}

/**
 * The grid on the screen holds the cells in view only. Whenever the browser is about to print,
 * whoever asked for it, the whole sheet is laid as plain tables that the screen does not show.
 */
export function createPrinting({ grid, locale, desk, now }: PrintParts): Printing {
  let openGrid: typeof open | undefined;
  let putAway: () => void = () => undefined;
  const prepare = async () => {
    ({ openGrid } = await import('../grid/plain/open.ts'));
  };

  const lay = (): void => {
    putAway();
    const laid = desk();
    if (!laid || !openGrid) return;
    const model = gridModel(laid, () => Infinity);
    const { rows, columns } = written(model);
    const { document: book } = laid.book;
    const widths = Array.from({ length: columns }, (_, column) => model.columnWidth(column));
    const plan = planPages(book.settings.page, widths, 18 + 8 * Math.max(3, String(rows).length));

    const host = document.createElement('div');
    host.className = 'printed';
    grid.before(host);
    const views = (rows > 0 ? plan.runs : []).map((run) => {
      const part = document.createElement('div');
      host.append(part);
      const view = openGrid?.(part, cut(model, rows, run), noEvents);
      wrap(part, plan.room / plan.scale);
      part.style.setProperty('zoom', String(plan.scale));
      return view;
    });
    const pages = new CSSStyleSheet();
    const date = new Intl.DateTimeFormat(locale, { dateStyle: 'long' }).format(now());
    pages.replaceSync(pageRule(plan, `${book.title} · ${model.name}`, date));
    document.adoptedStyleSheets.push(pages);

    putAway = () => {
      putAway = () => undefined;
      for (const view of views) view?.dispose();
      host.remove();
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== pages);
    };
  };
  addEventListener('beforeprint', lay);
  addEventListener('afterprint', () => putAway());

  return {
    prepareWhenIdle() {
      const soon = () => void prepare().catch(saidWhenAsked);
      if ('requestIdleCallback' in window) requestIdleCallback(soon);
      else setTimeout(soon, 1000);
    },
    async print() {
      try {
        await prepare();
      } catch {
        return {
          ok: false,
          reason:
            'What lays a sheet on paper did not load. Nothing was printed and the book is kept. Connect to the network and print again.',
        };
      }
      window.print();
      return { ok: true };
    },
  };
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

/** What would run under its neighbour, off the paper or be cut gets more lines: paper does not scroll. */
function wrap(part: HTMLElement, room: number): void {
  const { left } = part.getBoundingClientRect();
  const long: { readonly element: HTMLElement; readonly width: string }[] = [];
  for (const row of part.querySelectorAll('tbody tr')) {
    let limit = left + room;
    for (const cell of [...row.querySelectorAll<HTMLElement>('td.filled')].reverse()) {
      const words = cell.querySelector<HTMLElement>('.words');
      const box = words?.getBoundingClientRect();
      if (!cell.classList.contains('left')) {
        if (cell.scrollWidth > cell.clientWidth) long.push({ element: cell, width: '' });
      } else if (words && box && box.right > limit) {
        long.push({ element: words, width: `${limit - box.left}px` });
      }
      limit = cell.getBoundingClientRect().left;
    }
  }
  for (const { element, width } of long) {
    element.classList.add('wrapped');
    element.style.width = width;
  }
}

/** Size of the paper, and at the foot of each page what it is, when it was printed, and which it is. */
function pageRule({ paper, room }: Plan, name: string, date: string): string {
  const foot = `font: 9pt 'Source Sans 3', sans-serif; vertical-align: top; padding-top: 2mm`;
  return `@page {
    size: ${paper.width}px ${paper.height}px;
    margin: ${margin}px ${margin}px ${margin * 1.3}px;
    @bottom-left { content: ${quoted(name)}; width: ${room * 0.6}px; text-align: left; ${foot} }
    @bottom-right {
      content: ${quoted(`${date} · page `)} counter(page) ' of ' counter(pages);
      width: ${room * 0.4}px; text-align: right; ${foot}
    }
  }`;
}

/** A text as a string of CSS. */
const quoted = (text: string): string =>
  `'${text.replace(/['\\\p{Cc}]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)}'`;

/** Nobody has asked for it yet; whoever does hears of it. */
const saidWhenAsked = (): undefined => undefined;

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
