import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { SelectedRange } from '../../src/grid/contract.ts';
import {
  at,
  drag,
  fingers,
  headingBox,
  middle,
  openGrid,
  selection,
  told,
  type Kind,
} from '../support/grid.ts';

// Rows and columns are moved by their headings: first chosen whole, then dragged.

const rows = (first: number, last: number): SelectedRange => ({
  kind: 'rows',
  from: at(first, 0),
  to: at(last, 25),
});
const columns = (first: number, last: number): SelectedRange => ({
  kind: 'columns',
  from: at(0, first),
  to: at(59, last),
});

/** Selects whole rows or columns, as headings do, and gives the boxes of some headings. */
async function chosen(page: Page, lines: SelectedRange): Promise<void> {
  await page.evaluate(({ kind, from, to }) => {
    window.bench.view.select({
      focus: from,
      anchor: from,
      lead: to,
      ranges: [{ kind, from, to }],
    });
    window.bench.told.length = 0;
  }, lines);
}

const lowerHalf = (box: { x: number; y: number; width: number; height: number }) => ({
  x: box.x + box.width / 2,
  y: box.y + box.height * 0.8,
});

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: dragging headings',
  ({ kind }) => {
    test('selected rows go before or after the row whose upper or lower half they are dropped on', async () => {
      const page = await openGrid(kind);
      await chosen(page, rows(4, 5));
      const five = await headingBox(page, 'row', '5');
      await drag(page, five.middle, lowerHalf(await headingBox(page, 'row', '9')));
      const six = await headingBox(page, 'row', '6');
      const three = await headingBox(page, 'row', '3');
      await drag(page, six.middle, { x: three.middle.x, y: three.y + 4 });
      expect(await told(page, 'moveLines')).toEqual([
        [rows(4, 5), 9],
        [rows(4, 5), 2],
      ]);
    });

    test('selected columns go before the column on whose left half they are dropped', async () => {
      const page = await openGrid(kind);
      await chosen(page, columns(1, 1));
      const b = await headingBox(page, 'column', 'B');
      const e = await headingBox(page, 'column', 'E');
      await drag(page, b.middle, { x: e.x + 6, y: e.middle.y });
      expect(await told(page, 'moveLines')).toEqual([[columns(1, 1), 4]]);
    });

    test('a line shows where they would go, and goes when they are dropped', async () => {
      const page = await openGrid(kind);
      await chosen(page, rows(4, 4));
      const five = await headingBox(page, 'row', '5');
      const nine = await headingBox(page, 'row', '9');
      const line = page.locator('.guide');
      expect(await line.isVisible()).toBe(false);
      await page.mouse.move(five.middle.x, five.middle.y);
      await page.mouse.down();
      const { x, y } = lowerHalf(nine);
      await page.mouse.move(x, y, { steps: 5 });
      const drawn = await line.boundingBox();
      const end = nine.y + nine.height;
      expect(Math.abs((drawn?.y ?? 0) + (drawn?.height ?? 0) / 2 - end)).toBeLessThan(2);
      expect(drawn?.width).toBeGreaterThan(300);
      await page.mouse.up();
      expect(await line.isVisible()).toBe(false);
    });

    test('over the cells of the sheet the drag goes on', async () => {
      const page = await openGrid(kind);
      await chosen(page, rows(4, 4));
      const five = await headingBox(page, 'row', '5');
      const cell = await middle(page, 8, 3);
      await drag(page, five.middle, { x: cell.x, y: cell.y - 6 });
      expect(await told(page, 'moveLines')).toEqual([[rows(4, 4), 8]]);
    });

    test('dropped on themselves, or let go by Escape, they stay', async () => {
      const page = await openGrid(kind);
      await chosen(page, rows(4, 6));
      const five = await headingBox(page, 'row', '5');
      await drag(page, five.middle, lowerHalf(await headingBox(page, 'row', '7')));
      const nine = await headingBox(page, 'row', '9');
      await page.mouse.move(five.middle.x, five.middle.y);
      await page.mouse.down();
      await page.mouse.move(nine.middle.x, nine.middle.y, { steps: 4 });
      await page.keyboard.press('Escape');
      expect(await page.locator('.guide').isVisible()).toBe(false);
      await page.mouse.up();
      expect(await told(page, 'moveLines')).toEqual([]);
      expect((await selection(page)).ranges).toEqual([rows(4, 6)]);
    });

    test('a press that does not move selects this line alone', async () => {
      const page = await openGrid(kind);
      await chosen(page, rows(4, 6));
      const six = (await headingBox(page, 'row', '6')).middle;
      await page.mouse.click(six.x, six.y);
      expect((await selection(page)).ranges).toEqual([rows(5, 5)]);
      expect(await told(page, 'moveLines')).toEqual([]);
    });

    test('a drag from a heading that is not selected selects, and Shift extends', async () => {
      const page = await openGrid(kind);
      await drag(
        page,
        (await headingBox(page, 'row', '5')).middle,
        (await headingBox(page, 'row', '8')).middle,
      );
      expect((await selection(page)).ranges).toEqual([rows(4, 7)]);
      await page.keyboard.down('Shift');
      const six = (await headingBox(page, 'row', '6')).middle;
      await page.mouse.click(six.x, six.y);
      await page.keyboard.up('Shift');
      expect((await selection(page)).ranges).toEqual([rows(4, 5)]);
      expect(await told(page, 'moveLines')).toEqual([]);
    });

    test('a finger takes a selected row along, and scrolls from any other', async () => {
      const page = await openGrid(kind, {
        touch: true,
        mobile: true,
        viewport: { width: 820, height: 1100 },
      });
      const five = (await headingBox(page, 'row', '5')).middle;
      const nine = lowerHalf(await headingBox(page, 'row', '9'));
      const glass = await fingers(page);
      const swipe = async () => {
        await glass('touchStart', [five]);
        for (const part of [0.25, 0.5, 0.75, 1]) {
          await glass('touchMove', [{ x: five.x, y: five.y + (nine.y - five.y) * part }]);
        }
        await glass('touchEnd', []);
      };
      await swipe();
      expect(await told(page, 'moveLines')).toEqual([]);
      expect((await selection(page)).ranges[0].kind).toBe('cells');
      await page.touchscreen.tap(five.x, five.y);
      expect((await selection(page)).ranges).toEqual([rows(4, 4)]);
      await swipe();
      expect(await told(page, 'moveLines')).toEqual([[rows(4, 4), 9]]);
    });
  },
);
