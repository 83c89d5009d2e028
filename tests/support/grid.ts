import type { Page } from 'playwright-core';
import type { Place, Range, Selection } from '../../src/grid/contract.ts';
import { openTestPage, type OpenOptions } from './browser.ts';

// The grid by itself, as tests/browser/pages/grid.ts puts it on a page: what a hand does on it and
// what it tells its host.

export type Kind = 'sheet' | 'plain';

interface Wanted extends OpenOptions {
  rows?: number;
  columns?: number;
  frozenRows?: number;
  frozenColumns?: number;
}

export async function openGrid(kind: Kind, wanted: Wanted = {}): Promise<Page> {
  const { rows = 60, columns = 26, frozenRows = 0, frozenColumns = 0, ...options } = wanted;
  const hash = `#${new URLSearchParams({
    kind,
    rows: String(rows),
    columns: String(columns),
    frozenRows: String(frozenRows),
    frozenColumns: String(frozenColumns),
  })}`;
  const { page } = await openTestPage('grid', { ...options, hash, again: true });
  await page.waitForSelector('body[data-ready]');
  return page;
}

/** What the grid told its host under this name, in order. */
export const told = (page: Page, name: string): Promise<unknown[][]> =>
  page.evaluate(
    (wanted) => window.bench.told.filter(([one]) => one === wanted).map((one) => one.slice(1)),
    name,
  );

export const forget = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.bench.told.length = 0;
  });

export const selection = (page: Page): Promise<Selection> =>
  page.evaluate(() => window.bench.view.selection);

export const at = (row: number, column: number): Place => ({ row, column });
export const block = (a: Place, b: Place): Range => ({ from: a, to: b });

/** Where a cell is on the screen, as its middle. */
export async function middle(
  page: Page,
  row: number,
  column: number,
): Promise<{ x: number; y: number }> {
  const box = await page.evaluate(
    (place) => window.bench.view.cellRect(place)?.toJSON() as DOMRect | undefined,
    at(row, column),
  );
  if (!box) throw new Error(`The cell in row ${row}, column ${column} is not painted.`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export async function click(page: Page, row: number, column: number): Promise<void> {
  const { x, y } = await middle(page, row, column);
  await page.mouse.click(x, y);
}

export async function drag(
  page: Page,
  from: { x: number; y: number },
  to: { x: number; y: number },
) {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.mouse.up();
}

/** The seen element of a heading; in frozen panes the copy on top. */
export async function headingBox(page: Page, kind: 'row' | 'column', label: string) {
  const box = await page
    .locator(`th.${kind}-heading`)
    .filter({ hasText: new RegExp(`^${label}$`) })
    .last()
    .boundingBox();
  if (!box) throw new Error(`There is no ${kind} heading ${label}.`);
  return { ...box, middle: { x: box.x + box.width / 2, y: box.y + box.height / 2 } };
}

/** Fingers on the glass, as the browser gets them from it. */
export async function fingers(page: Page) {
  const client = await page.context().newCDPSession(page);
  return (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: { x: number; y: number }[]) =>
    client.send('Input.dispatchTouchEvent', { type, touchPoints });
}

export const activeCell = (page: Page) =>
  page.evaluate(() => {
    const id = document.activeElement?.getAttribute('aria-activedescendant');
    const cell = id ? document.getElementById(id) : null;
    return {
      text: cell?.textContent ?? null,
      label: cell?.getAttribute('aria-label') ?? null,
      role: cell?.getAttribute('role') ?? null,
      row: cell?.closest('[role=row]')?.getAttribute('aria-rowindex') ?? null,
      column: cell?.getAttribute('aria-colindex') ?? null,
      selected: cell?.getAttribute('aria-selected') ?? null,
    };
  });

export const focusGrid = (page: Page): Promise<void> =>
  page.evaluate(() => window.bench.view.focus());
