import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { middle, openGrid, type Kind } from '../support/grid.ts';

const long =
  'A long remark on the canvas by the window, as somebody wrote it down on the day itself';

/** Writes into cells as a host does, and paints these cells alone. */
const write = (page: Page, row: number, texts: Readonly<Record<number, string>>) =>
  page.evaluate(
    ({ row, texts }) => {
      const { model, view } = window.bench;
      const columns = Object.keys(texts).map(Number);
      for (const column of columns) model.entries.set(`${row},${column}`, texts[column] ?? '');
      view.paint(columns.map((column) => ({ row, column })));
    },
    { row, texts },
  );

/** The column whose content is seen in the middle of each of these cells. */
async function seen(page: Page, row: number, columns: readonly number[]): Promise<number[]> {
  const found: number[] = [];
  for (const column of columns) {
    const { x, y } = await middle(page, row, column);
    const index = await page.evaluate(
      (at) => document.elementFromPoint(at.x, at.y)?.closest('td')?.getAttribute('aria-colindex'),
      { x, y },
    );
    found.push(Number(index) - 2);
  }
  return found;
}

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: words that run on',
  ({ kind }) => {
    test('they cover blank cells, stop at a written one, and do not come back behind it', async () => {
      const page = await openGrid(kind);
      await write(page, 2, { 0: long });
      expect(await seen(page, 2, [0, 1, 2, 3])).toEqual([0, 0, 0, 0]);
      await write(page, 2, { 1: 'flat' });
      expect(await seen(page, 2, [0, 1, 2, 3])).toEqual([0, 1, 2, 3]);
      await write(page, 2, { 1: '', 2: 'dome' });
      expect(await seen(page, 2, [0, 1, 2, 3])).toEqual([0, 0, 2, 3]);
      await write(page, 2, { 2: '' });
      expect(await seen(page, 2, [0, 1, 2, 3])).toEqual([0, 0, 0, 0]);
    });

    test('they stop at the mark of an empty cell that is to be filled in', async () => {
      const page = await openGrid(kind);
      const [row, column] = await page.evaluate(() => {
        const cell = document.querySelector('td.reading:not(.filled)');
        const line = cell?.closest('[aria-rowindex]')?.getAttribute('aria-rowindex');
        return [Number(line) - 2, Number(cell?.getAttribute('aria-colindex')) - 2] as const;
      });
      expect(column).toBeGreaterThan(0);
      await write(page, row, { [column - 1]: long });
      expect(await seen(page, row, [column - 1, column])).toEqual([column - 1, column]);
    });

    test('the same holds when the whole sheet is laid out anew with other widths', async () => {
      const page = await openGrid(kind);
      await write(page, 2, { 0: long, 2: 'dome' });
      await page.evaluate(() => {
        const { model, view } = window.bench;
        model.widths.set(1, 40);
        view.refresh();
      });
      expect(await seen(page, 2, [0, 1, 2, 3])).toEqual([0, 0, 2, 3]);
    });

    test('words, numbers and verdicts of a row stand on one line', async () => {
      const page = await openGrid(kind);
      const bottoms = await page.evaluate(() => {
        const words = document.querySelectorAll('[role=row][aria-rowindex="7"] td .words');
        return [...words].slice(0, 6).map((words) => {
          const range = document.createRange();
          range.selectNodeContents(words);
          return Math.round(range.getBoundingClientRect().bottom * 2) / 2;
        });
      });
      expect(bottoms.length).toBe(6);
      expect(new Set(bottoms).size).toBe(1);
    });
  },
);
