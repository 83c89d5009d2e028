import { describe, expect, test } from 'vitest';
import type { Place, Selection } from '../../src/grid/contract.ts';
import { axeFaults } from '../support/axe.ts';
import {
  activeCell,
  at,
  block,
  click,
  drag,
  fingers,
  focusGrid,
  forget,
  headingBox,
  type Kind,
  middle,
  openGrid,
  selection,
  told,
} from '../support/grid.ts';

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: painting',
  ({ kind }) => {
    test('a cell shows its text, its unit and its marks', async () => {
      const page = await openGrid(kind);
      const cell = page.locator('td', { hasText: '0.56' }).last();
      expect(await cell.locator('.words').textContent()).toBe('−0.56');
      expect(await cell.locator('small').textContent()).toBe('stops');
      expect(await page.locator('td.reading').count()).toBeGreaterThan(5);
      expect(await page.locator('td.choice').count()).toBeGreaterThan(5);
      expect(await page.locator('td.over .shape').count()).toBeGreaterThan(2);
      expect(await page.locator('td.under .shape').count()).toBe(1);
    });

    test('the shapes of over, under, agrees, waits and clips are five different shapes', async () => {
      const page = await openGrid(kind);
      const shapes = await page.evaluate(() =>
        ['over', 'under', 'agrees', 'waits', 'clips'].map((name) =>
          document.querySelector(`td.${name} .shape path`)?.getAttribute('d'),
        ),
      );
      expect(shapes.every(Boolean)).toBe(true);
      expect(new Set(shapes).size).toBe(5);
    });

    test('thirds are set as fractions and the text stays what it is', async () => {
      const page = await openGrid(kind);
      const cell = page.locator('td', { hasText: 'f/1.4 1/3' }).last();
      expect(await cell.locator('.fraction').textContent()).toBe('1/3');
      expect(await cell.textContent()).toBe('f/1.4 1/3');
    });

    test('text that looks like an element is text', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => window.bench.view.scrollTo({ row: 14, column: 0 }));
      const cell = page.locator('td', { hasText: 'onerror' }).last();
      expect(await cell.textContent()).toContain('<img src=x onerror=');
      expect(await page.locator('td img').count()).toBe(0);
      expect(await page.title()).toBe('A grid by itself');
    });

    test('a changed cell is painted when it is named, the others are not asked again', async () => {
      const page = await openGrid(kind);
      const asked = await page.evaluate(() => {
        const { model, view } = window.bench;
        model.entries.set('4,0', 'Key side, new');
        model.asked.clear();
        view.paint([{ row: 4, column: 0 }]);
        return [...model.asked];
      });
      expect(asked).toEqual(['4,0']);
      expect(await page.locator('td', { hasText: 'Key side, new' }).count()).toBe(1);
    });

    test('a wider column, another count and frozen panes appear after a refresh', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => {
        const { model, view } = window.bench;
        model.widths.set(0, 240);
        model.columnCount = 5;
        model.rowCount = 9;
        view.refresh();
      });
      const { width } = await headingBox(page, 'column', 'A');
      expect(width).toBe(240);
      expect(await page.locator('th.column-heading', { hasText: 'F' }).count()).toBe(0);
      expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('10');
    });

    test('a selection outside a sheet that shrank moves inside and is told', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => {
        const { model, view } = window.bench;
        view.selectRange({ from: { row: 40, column: 3 }, to: { row: 40, column: 3 } });
        window.bench.told.length = 0;
        model.rowCount = 10;
        view.refresh();
      });
      expect((await selection(page)).focus).toEqual(at(9, 3));
      expect(await told(page, 'selected')).toHaveLength(1);
    });

    test('scrolling to a cell brings it into view and says what is in view', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => window.bench.view.scrollTo({ row: 55, column: 20 }));
      const host = await page.locator('#host').boundingBox();
      const { x, y } = await middle(page, 55, 20);
      expect(y).toBeLessThan((host?.y ?? 0) + (host?.height ?? 0));
      expect(x).toBeLessThan((host?.x ?? 0) + (host?.width ?? 0));
      const visible = await page.evaluate(() => window.bench.view.visible());
      expect(visible.to.row).toBe(55);
      expect(visible.from.row).toBeGreaterThan(30);
      expect((await told(page, 'scrolled')).at(-1)).toEqual([visible]);
    });

    test('a number too wide for its column is cut with a mark, never shown as another number', async () => {
      const page = await openGrid(kind);
      const style = await page.evaluate(() => {
        const cell = [...document.querySelectorAll('td.right')].at(-1);
        if (!cell) return null;
        const { overflow, textOverflow } = getComputedStyle(cell);
        return { overflow, textOverflow };
      });
      expect(style).toEqual({ overflow: 'hidden', textOverflow: 'ellipsis' });
    });
  },
);

describe('sheet: only what is in view', () => {
  test('cells out of view are not asked for', async () => {
    const page = await openGrid('sheet', { rows: 1000, columns: 200 });
    const asked = await page.evaluate(() => [...window.bench.model.asked]);
    expect(asked.length).toBeGreaterThan(80);
    expect(asked.length).toBeLessThan(1000);
    expect(asked.some((key) => Number(key.split(',')[0]) > 60)).toBe(false);
  });

  test('50,000 rows scroll to the end and paint the last one', async () => {
    const page = await openGrid('sheet', { rows: 50_000 });
    await page.evaluate(() => window.bench.view.scrollTo({ row: 49_999, column: 0 }));
    expect(await page.locator('td', { hasText: 'Row 50000' }).last().isVisible()).toBe(true);
    const heading = await headingBox(page, 'row', '50000');
    const cell = await middle(page, 49_999, 0);
    expect(Math.abs(heading.middle.y - cell.y)).toBeLessThan(0.6);
  });

  test('rows come into view by the wheel', async () => {
    const page = await openGrid('sheet', { rows: 50_000 });
    const { x, y } = await middle(page, 4, 0);
    await page.mouse.move(x, y);
    for (let turn = 0; turn < 8; turn += 1) await page.mouse.wheel(0, 1000);
    await page.waitForFunction(() => window.bench.view.visible().from.row > 200);
    // The wheel may still be turning: what counts is the row that is in view when it is looked for.
    await expect
      .poll(async () => {
        const row = await page.evaluate(() => window.bench.view.visible().from.row + 3);
        return page
          .locator('td', { hasText: `Row ${row + 1}` })
          .last()
          .isVisible();
      })
      .toBe(true);
  });
});

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: headings and frozen panes keep to their cells',
  ({ kind }) => {
    test.each([1, 1.5, 2])('at %s device pixels to one, scrolled and not', async (ratio) => {
      const page = await openGrid(kind, {
        rows: 120,
        frozenRows: 2,
        frozenColumns: 1,
        ratio,
      });
      for (const place of [at(0, 0), at(77, 13), at(110, 22)]) {
        await page.evaluate((to) => window.bench.view.scrollTo(to), place);
        const drift = await page.evaluate(worstDrift);
        expect(drift.compared).toBeGreaterThan(30);
        expect(drift.rows).toBeLessThan(0.51);
        expect(drift.columns).toBeLessThan(0.51);
      }
      const frozen = await middle(page, 0, 0);
      const host = await page.locator('#host').boundingBox();
      expect(frozen.y - (host?.y ?? 0)).toBeLessThan(60);
    });
  },
);

/** Runs in the page: how far any heading is off from the cells of its row or column. */
function worstDrift(): { compared: number; rows: number; columns: number } {
  const { view } = window.bench;
  const visible = view.visible();
  const top = (labelled: string, kind: string) =>
    [...document.querySelectorAll(`th.${kind}-heading`)]
      .filter((th) => th.textContent === labelled)
      .at(-1)
      ?.getBoundingClientRect();
  let rows = 0;
  let columns = 0;
  let compared = 0;
  const seenRows = [0, 1];
  for (let row = visible.from.row; row <= visible.to.row; row += 1) seenRows.push(row);
  const seenColumns = [0];
  for (let column = visible.from.column; column <= visible.to.column; column += 1) {
    seenColumns.push(column);
  }
  for (const row of seenRows) {
    const heading = top(window.bench.model.rowLabel(row), 'row');
    for (const column of seenColumns) {
      const cell = view.cellRect({ row, column });
      if (!heading || !cell) continue;
      compared += 1;
      rows = Math.max(
        rows,
        Math.abs(heading.top - cell.top),
        Math.abs(heading.bottom - cell.bottom),
      );
    }
  }
  for (const column of seenColumns) {
    const heading = top(window.bench.model.columnLabel(column), 'column');
    for (const row of seenRows) {
      const cell = view.cellRect({ row, column });
      if (!heading || !cell) continue;
      compared += 1;
      columns = Math.max(
        columns,
        Math.abs(heading.left - cell.left),
        Math.abs(heading.right - cell.right),
      );
    }
  }
  return { compared, rows, columns };
}

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: selecting',
  ({ kind }) => {
    test('a click selects a cell and lights its headings', async () => {
      const page = await openGrid(kind);
      await click(page, 6, 2);
      expect((await selection(page)).focus).toEqual(at(6, 2));
      expect((await told(page, 'selected')).at(-1)?.[1]).toBe('mouse');
      expect(await page.locator('th.lit').allTextContents()).toContain('C');
      expect(await page.locator('th.lit').allTextContents()).toContain('7');
      expect(await page.evaluate(() => window.bench.view.hasFocus)).toBe(true);
    });

    test('a drag selects a block, with the cell it began in as focus', async () => {
      const page = await openGrid(kind);
      await drag(page, await middle(page, 8, 4), await middle(page, 5, 2));
      const { focus, ranges } = await selection(page);
      expect(focus).toEqual(at(8, 4));
      expect(ranges).toEqual([{ kind: 'cells', ...block(at(5, 2), at(8, 4)) }]);
    });

    test('Shift and a click extend, Ctrl and a click add a range', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 1);
      await page.keyboard.down('Shift');
      await click(page, 7, 2);
      await page.keyboard.up('Shift');
      expect((await selection(page)).ranges).toEqual([
        { kind: 'cells', ...block(at(5, 1), at(7, 2)) },
      ]);
      await page.keyboard.down('Control');
      await click(page, 9, 4);
      await page.keyboard.up('Control');
      const { focus, ranges } = await selection(page);
      expect(focus).toEqual(at(9, 4));
      expect(ranges).toHaveLength(2);
    });

    test('headings select whole rows, columns and, at the corner, the sheet', async () => {
      const page = await openGrid(kind);
      const column = (await headingBox(page, 'column', 'C')).middle;
      await page.mouse.click(column.x, column.y);
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'columns',
        ...block(at(0, 2), at(59, 2)),
      });
      await drag(
        page,
        (await headingBox(page, 'row', '5')).middle,
        (await headingBox(page, 'row', '7')).middle,
      );
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'rows',
        ...block(at(4, 0), at(6, 25)),
      });
      const host = await page.locator('#host').boundingBox();
      await page.mouse.click((host?.x ?? 0) + 8, (host?.y ?? 0) + 8);
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'all',
        ...block(at(0, 0), at(59, 25)),
      });
    });

    test('arrows step, Shift extends, Home and Page Down go far', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowRight');
      expect((await selection(page)).focus).toEqual(at(6, 3));
      await page.keyboard.press('Shift+ArrowDown');
      await page.keyboard.press('Shift+ArrowRight');
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'cells',
        ...block(at(6, 3), at(7, 4)),
      });
      await page.keyboard.press('Home');
      expect((await selection(page)).focus).toEqual(at(6, 0));
      await page.keyboard.press('PageDown');
      expect((await selection(page)).focus.row).toBeGreaterThan(12);
      await page.keyboard.press('Control+Home');
      expect((await selection(page)).focus).toEqual(at(0, 0));
      await page.keyboard.press('Control+End');
      expect((await selection(page)).focus).toEqual(at(14, 8));
    });

    test('Ctrl and an arrow go to the edge of a block', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 0);
      await page.keyboard.press('Control+ArrowRight');
      expect((await selection(page)).focus).toEqual(at(5, 8));
      await page.keyboard.press('Control+ArrowRight');
      expect((await selection(page)).focus).toEqual(at(5, 25));
      await page.keyboard.press('Control+ArrowLeft');
      await page.keyboard.press('Control+Shift+ArrowLeft');
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'cells',
        ...block(at(5, 0), at(5, 8)),
      });
    });

    test('Ctrl+Space, Shift+Space and Ctrl+A select column, row and sheet', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.keyboard.press('Control+Space');
      expect((await selection(page)).ranges[0].kind).toBe('columns');
      await click(page, 5, 2);
      await page.keyboard.press('Shift+Space');
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'rows',
        ...block(at(5, 0), at(5, 25)),
      });
      expect((await selection(page)).focus).toEqual(at(5, 2));
      await page.keyboard.press('Control+a');
      expect((await selection(page)).ranges[0].kind).toBe('all');
    });

    test('Tab and Enter move, Enter after Tabs goes back below the first', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 1);
      await page.keyboard.press('Tab');
      await page.keyboard.press('Tab');
      expect((await selection(page)).focus).toEqual(at(5, 3));
      await page.keyboard.press('Enter');
      expect((await selection(page)).focus).toEqual(at(6, 1));
      await page.keyboard.press('Shift+Enter');
      await page.keyboard.press('Shift+Tab');
      expect((await selection(page)).focus).toEqual(at(5, 0));
    });

    test('inside a selected block Tab and Enter go around it', async () => {
      const page = await openGrid(kind);
      await drag(page, await middle(page, 5, 1), await middle(page, 6, 2));
      const walk: Place[] = [];
      for (let press = 0; press < 4; press += 1) {
        await page.keyboard.press('Tab');
        walk.push((await selection(page)).focus);
      }
      expect(walk).toEqual([at(5, 2), at(6, 1), at(6, 2), at(5, 1)]);
      await page.keyboard.press('Enter');
      expect((await selection(page)).focus).toEqual(at(6, 1));
    });

    test('the host may say where Enter goes', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => {
        window.bench.next = ({ row }) => ({ row: row + 3, column: 2 });
      });
      await click(page, 5, 2);
      await page.keyboard.press('Enter');
      expect((await selection(page)).focus).toEqual(at(8, 2));
      await page.keyboard.type('f/4');
      await page.keyboard.press('ArrowDown');
      expect((await selection(page)).focus).toEqual(at(9, 2));
    });

    test('a selection made by program is painted, scrolled to and told as such', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() =>
        window.bench.view.selectRange({ from: { row: 50, column: 1 }, to: { row: 52, column: 3 } }),
      );
      expect((await told(page, 'selected')).at(-1)?.[1]).toBe('program');
      expect(await page.locator('td.selected').count()).toBe(9);
    });

    test('outlines are drawn around what was copied and around references', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() =>
        window.bench.view.outline([
          { range: { from: { row: 4, column: 1 }, to: { row: 6, column: 2 } }, as: 'copied' },
        ]),
      );
      const drawn = () =>
        page.evaluate(() => ({
          right: document.querySelectorAll('td.copied-right').length,
          bottom: document.querySelectorAll('td.copied-bottom').length,
        }));
      // Three cells down each side, two along top and bottom, the lines before and above included.
      expect(await drawn()).toEqual({ right: 6, bottom: 4 });
      await page.evaluate(() => window.bench.view.outline([]));
      expect(await drawn()).toEqual({ right: 0, bottom: 0 });
    });

    test('dragging below the edge scrolls on', async () => {
      const page = await openGrid(kind, { rows: 200 });
      const host = await page.locator('#host').boundingBox();
      const start = await middle(page, 5, 1);
      await page.mouse.move(start.x, start.y);
      await page.mouse.down();
      await page.mouse.move(start.x, (host?.y ?? 0) + (host?.height ?? 0) + 60, { steps: 5 });
      await page.waitForFunction(() => window.bench.view.selection.lead.row > 40);
      await page.mouse.up();
      expect((await selection(page)).focus).toEqual(at(5, 1));
    });
  },
);

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: editing',
  ({ kind }) => {
    test('typing replaces, Enter hands the entry over and goes down', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.keyboard.type('f/2');
      expect(await told(page, 'edit')).toEqual([]);
      await page.keyboard.press('Enter');
      expect(await told(page, 'edit')).toEqual([[at(5, 2), 'f/2', 'down']]);
      expect((await selection(page)).focus).toEqual(at(6, 2));
      expect(await page.locator('td', { hasText: /^f\/2$/ }).count()).toBe(1);
    });

    test('each change is told while typing, and the end of it', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.keyboard.type('85');
      await page.keyboard.press('Escape');
      expect(await told(page, 'editing')).toEqual([
        [at(5, 2), '8'],
        [at(5, 2), '85'],
        [null, ''],
      ]);
      expect(await told(page, 'edit')).toEqual([]);
    });

    test('F2 shows what was typed, not what is shown', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 4);
      await page.keyboard.press('F2');
      expect(await page.locator('.entry').inputValue()).toBe('=FSTOPS(C6, key_side)');
      await page.keyboard.press('ArrowLeft');
      await page.keyboard.type('!');
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe(
        '=FSTOPS(C6, key_side!)',
      );
    });

    test('a double click edits the cell', async () => {
      const page = await openGrid(kind);
      const { x, y } = await middle(page, 5, 4);
      await page.mouse.dblclick(x, y);
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('=FSTOPS(C6, key_side)');
    });

    test('an entry left as it was is no edit', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 4);
      await page.keyboard.press('F2');
      await page.keyboard.press('Enter');
      expect(await told(page, 'edit')).toEqual([]);
      expect((await selection(page)).focus).toEqual(at(6, 4));
    });

    test('a refused entry stays open with its text and the reason', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.evaluate(() => {
        window.bench.refusal = 'A reading must be more than 0. What was typed is kept.';
      });
      await page.keyboard.type('-3');
      await page.keyboard.press('Enter');
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('-3');
      expect(await page.getByRole('alert').textContent()).toContain('more than 0');
      expect(await page.locator('.entry').getAttribute('aria-invalid')).toBe('true');
      await page.evaluate(() => {
        window.bench.refusal = '';
      });
      await page.keyboard.type('0');
      expect(await page.getByRole('alert').count()).toBe(0);
      await page.keyboard.press('Enter');
      expect((await told(page, 'edit')).at(-1)).toEqual([at(5, 2), '-30', 'down']);
    });

    test('a refused entry also holds against a click elsewhere', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.evaluate(() => {
        window.bench.refusal = 'Not this.';
      });
      await page.keyboard.type('x');
      await click(page, 9, 1);
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('x');
      expect((await selection(page)).focus).toEqual(at(5, 2));
    });

    test('a click elsewhere finishes the entry and selects', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.keyboard.type('f/8');
      await click(page, 9, 1);
      expect(await told(page, 'edit')).toEqual([[at(5, 2), 'f/8', 'stay']]);
      expect((await selection(page)).focus).toEqual(at(9, 1));
    });

    test('a click can become a reference, and dragging makes it a block', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 4);
      await page.evaluate(() => {
        window.bench.pointing = true;
      });
      await page.keyboard.type('=SUM(');
      await forget(page);
      await drag(page, await middle(page, 7, 1), await middle(page, 8, 2));
      const pointed = await told(page, 'point');
      expect(pointed[0]).toEqual([block(at(7, 1), at(7, 1)), false]);
      expect(pointed.at(-1)).toEqual([block(at(7, 1), at(8, 2)), true]);
      await page.evaluate(() => window.bench.view.insertInEditor('B8:C9'));
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('=SUM(B8:C9');
      expect((await selection(page)).focus).toEqual(at(5, 4));
    });

    test('with no editor open, the host may take a click or a drag for an entry of its own', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 4);
      await page.evaluate(() => {
        window.bench.pointing = true;
        window.bench.told.length = 0;
      });
      await drag(page, await middle(page, 7, 1), await middle(page, 8, 2));
      const pointed = await told(page, 'point');
      expect(pointed[0]).toEqual([block(at(7, 1), at(7, 1)), false]);
      expect(pointed.at(-1)).toEqual([block(at(7, 1), at(8, 2)), true]);
      expect(await told(page, 'selected')).toEqual([]);
      expect((await selection(page)).focus).toEqual(at(5, 4));
    });

    test('the caret of the editor can be read and put', async () => {
      const page = await openGrid(kind);
      const carets = await page.evaluate(() => {
        const { view } = window.bench;
        const closed = view.editorCaret;
        view.openEditor({ row: 5, column: 2 }, '=A1+B2');
        const opened = view.editorCaret;
        view.setEditorText('=$A$1+B2', 5);
        return [closed, opened, view.editorCaret];
      });
      expect(carets).toEqual([0, 6, 5]);
      await page.keyboard.type('0');
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('=$A$10+B2');
    });

    test('the entry line can write into the open editor', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => {
        const { view } = window.bench;
        view.openEditor({ row: 5, column: 2 }, '=A1');
        view.setEditorText('=A1+1');
      });
      expect(await page.locator('.entry').inputValue()).toBe('=A1+1');
      await page.evaluate(() => window.bench.view.closeEditor('keep', 'right'));
      expect(await told(page, 'edit')).toEqual([[at(5, 2), '=A1+1', 'right']]);
      expect((await selection(page)).focus).toEqual(at(5, 3));
    });

    test('a cell that may not be edited says why and opens nothing', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => {
        window.bench.closed = 'This cell belongs to the exercise.';
      });
      await click(page, 5, 2);
      await page.keyboard.type('4');
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe(null);
      expect(await page.getByRole('alert').textContent()).toBe(
        'This cell belongs to the exercise.',
      );
      await page.keyboard.press('ArrowDown');
      expect(await page.getByRole('alert').count()).toBe(0);
    });

    test('text that comes without a key press opens the editor', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 0);
      await page.keyboard.insertText('Schlüssel 🔦');
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('Schlüssel 🔦');
      await page.keyboard.press('Tab');
      expect(await told(page, 'edit')).toEqual([[at(5, 0), 'Schlüssel 🔦', 'right']]);
    });

    test('an input method composes in the cell, and the keys it takes do not end the entry', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 0);
      const client = await page.context().newCDPSession(page);
      await client.send('Input.imeSetComposition', {
        text: 'ni',
        selectionStart: 2,
        selectionEnd: 2,
      });
      expect(await page.locator('.entry.open').inputValue()).toBe('ni');
      await client.send('Input.dispatchKeyEvent', {
        type: 'rawKeyDown',
        windowsVirtualKeyCode: 229,
        key: 'Process',
        code: 'Enter',
      });
      expect(await told(page, 'edit')).toEqual([]);
      await client.send('Input.insertText', { text: '你' });
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('你');
      await page.keyboard.press('Enter');
      expect(await told(page, 'edit')).toEqual([[at(5, 0), '你', 'down']]);
    });

    test('Delete asks the host to clear the selection', async () => {
      const page = await openGrid(kind);
      await drag(page, await middle(page, 5, 1), await middle(page, 6, 2));
      await page.keyboard.press('Delete');
      const cleared = (await told(page, 'clear')) as [Selection][];
      expect(cleared[0]?.[0].ranges).toEqual([{ kind: 'cells', ...block(at(5, 1), at(6, 2)) }]);
    });

    test('the host sees each key first and may keep it', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.evaluate(() => window.bench.taken.add('Delete').add('Enter'));
      await page.keyboard.press('Delete');
      await page.keyboard.type('7');
      await page.keyboard.press('Enter');
      expect(await told(page, 'clear')).toEqual([]);
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('7');
      expect((await told(page, 'key')).at(-1)).toEqual(['Enter', true]);
    });

    test('an open editor keeps its text while its cell is scrolled away and back', async () => {
      const page = await openGrid(kind, { rows: 200 });
      await click(page, 5, 2);
      await page.keyboard.type('f/11');
      await page.evaluate(() => window.bench.view.scrollTo({ row: 150, column: 0 }));
      await page.waitForSelector('.entry.away');
      await page.evaluate(() => window.bench.view.scrollTo({ row: 0, column: 0 }));
      await page.waitForSelector('.entry:not(.away)');
      const box = await page.locator('.entry').boundingBox();
      const cell = await middle(page, 5, 2);
      expect(box?.y).toBeLessThan(cell.y);
      await page.keyboard.press('Enter');
      expect(await told(page, 'edit')).toEqual([[at(5, 2), 'f/11', 'down']]);
    });
  },
);

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: gestures',
  ({ kind }) => {
    test('the handle of a block is dragged to fill', async () => {
      const page = await openGrid(kind);
      await drag(page, await middle(page, 4, 1), await middle(page, 5, 1));
      const handle = await page.locator('.handle').last().boundingBox();
      if (!handle) throw new Error('There is no handle.');
      await drag(page, { x: handle.x + 4, y: handle.y + 4 }, await middle(page, 8, 1));
      expect(await told(page, 'fill')).toEqual([
        [block(at(4, 1), at(5, 1)), block(at(4, 1), at(8, 1))],
      ]);
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'cells',
        ...block(at(4, 1), at(8, 1)),
      });
    });

    test('the edge of a column is dragged to make it wider, and double clicked to fit', async () => {
      const page = await openGrid(kind);
      const box = await headingBox(page, 'column', 'B');
      const edge = { x: box.x + box.width - 2, y: box.middle.y };
      await drag(page, edge, { x: edge.x + 50, y: edge.y });
      expect(await told(page, 'resizeColumn')).toEqual([[1, 126]]);
      expect((await headingBox(page, 'column', 'B')).width).toBe(126);
      await page.mouse.dblclick(edge.x + 50, edge.y);
      expect(await told(page, 'fitColumn')).toEqual([[1]]);
      expect((await selection(page)).ranges[0].kind).toBe('cells');
    });

    test('copy, cut and paste reach the host with the selection', async () => {
      const page = await openGrid(kind);
      await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
      await drag(page, await middle(page, 5, 1), await middle(page, 6, 2));
      await page.keyboard.press('Control+c');
      await page.keyboard.press('Control+x');
      await page.keyboard.press('Control+c');
      await page.keyboard.press('Control+v');
      const [copied] = (await told(page, 'copy'))[0] as [Selection];
      expect(copied.ranges[0]).toEqual({ kind: 'cells', ...block(at(5, 1), at(6, 2)) });
      expect(await told(page, 'cut')).toHaveLength(1);
      const [, pasted] = (await told(page, 'paste'))[0] as [Selection, string];
      expect(pasted).toBe('copied by the host');
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe(null);
    });

    test('while an entry is open, copy and paste work on its text', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.keyboard.type('f/8');
      await page.keyboard.press('Control+a');
      await page.keyboard.press('Control+c');
      expect(await told(page, 'copy')).toEqual([]);
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('f/8');
    });

    test('a right click asks for the menu of the cell and selects it, unless it is in the selection', async () => {
      const page = await openGrid(kind);
      const inside = await middle(page, 6, 2);
      await drag(page, await middle(page, 5, 1), inside);
      await page.mouse.click(inside.x, inside.y, { button: 'right' });
      expect((await selection(page)).ranges[0].to).toEqual(at(6, 2));
      expect((await selection(page)).ranges[0].from).toEqual(at(5, 1));
      const outside = await middle(page, 9, 4);
      await page.mouse.click(outside.x, outside.y, { button: 'right' });
      expect((await selection(page)).focus).toEqual(at(9, 4));
      const menus = await told(page, 'menu');
      expect(menus).toHaveLength(2);
      expect(menus[1]?.[0]).toMatchObject({ on: 'cell', place: at(9, 4) });
      const column = (await headingBox(page, 'column', 'D')).middle;
      await page.mouse.click(column.x, column.y, { button: 'right' });
      expect((await told(page, 'menu'))[2]?.[0]).toMatchObject({ on: 'column' });
      expect((await selection(page)).ranges[0].kind).toBe('columns');
    });

    test('Shift+F10 and the menu key ask for the menu at the cell', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.keyboard.press('Shift+F10');
      await page.keyboard.press('ContextMenu');
      const menus = (await told(page, 'menu')) as [{ place: Place; x: number; y: number }][];
      expect(menus).toHaveLength(2);
      const cell = await middle(page, 5, 2);
      expect(menus[0]?.[0].place).toEqual(at(5, 2));
      expect(Math.abs((menus[0]?.[0].y ?? 0) - cell.y)).toBeLessThan(20);
    });

    test('Tab enters the grid once; Escape, then Tab or Shift+Tab, leaves it', async () => {
      const page = await openGrid(kind);
      const focused = () => page.evaluate(() => document.activeElement?.id ?? '');
      await page.locator('#before').focus();
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => window.bench.view.hasFocus)).toBe(true);
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => window.bench.view.hasFocus)).toBe(true);
      await page.keyboard.press('Escape');
      expect(await told(page, 'escapeGrid')).toHaveLength(1);
      await page.keyboard.press('Tab');
      expect(await focused()).toBe('after');
      await page.keyboard.press('Shift+Tab');
      expect(await page.evaluate(() => window.bench.view.hasFocus)).toBe(true);
      await page.keyboard.press('Escape');
      await page.keyboard.press('Shift+Tab');
      expect(await focused()).toBe('before');
    });

    test('a sentence said at a cell goes with the next key', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 2);
      await page.evaluate(() =>
        window.bench.view.say({ row: 5, column: 2 }, 'Column C has a frozen heading.'),
      );
      expect(await page.getByRole('alert').textContent()).toBe('Column C has a frozen heading.');
      await page.keyboard.press('ArrowDown');
      expect(await page.getByRole('alert').count()).toBe(0);
    });

    test('a grid that is disposed leaves nothing behind', async () => {
      const page = await openGrid(kind);
      await page.evaluate(() => window.bench.view.dispose());
      expect(await page.locator('#host *').count()).toBe(0);
      await page.mouse.click(200, 200);
      await page.keyboard.press('ArrowDown');
    });
  },
);

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: a finger',
  ({ kind }) => {
    const finger = { touch: true, mobile: true, viewport: { width: 820, height: 1100 } } as const;

    test('taps to select, without the keyboard of the screen', async () => {
      const page = await openGrid(kind, finger);
      const { x, y } = await middle(page, 5, 2);
      await page.touchscreen.tap(x, y);
      expect((await selection(page)).focus).toEqual(at(5, 2));
      expect((await told(page, 'selected')).at(-1)?.[1]).toBe('touch');
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe(null);
      expect(await page.locator('.entry').getAttribute('inputmode')).toBe('none');
    });

    test('a second tap on the selected cell, later, edits nothing', async () => {
      const page = await openGrid(kind, finger);
      const { x, y } = await middle(page, 5, 2);
      await page.touchscreen.tap(x, y);
      await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 450)));
      await page.touchscreen.tap(x, y);
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe(null);
    });

    test('taps twice to edit, with the keyboard', async () => {
      const page = await openGrid(kind, finger);
      const { x, y } = await middle(page, 5, 4);
      await page.touchscreen.tap(x, y);
      await page.touchscreen.tap(x, y);
      expect(await page.evaluate(() => window.bench.view.editorText)).toBe('=FSTOPS(C6, key_side)');
      expect(await page.locator('.entry').getAttribute('inputmode')).toBe('text');
      expect(await page.evaluate(() => window.bench.view.hasFocus)).toBe(true);
    });

    test('swipes to scroll, and selects nothing', async () => {
      const page = await openGrid(kind, { ...finger, rows: 300 });
      await forget(page);
      const { x, y } = await middle(page, 8, 2);
      const touch = await fingers(page);
      await touch('touchStart', [{ x, y }]);
      for (let moved = 15; moved <= 180; moved += 15) {
        await touch('touchMove', [{ x, y: y - moved }]);
      }
      await touch('touchEnd', []);
      await page.waitForFunction(() => window.bench.view.visible().from.row > 1);
      expect(await told(page, 'selected')).toEqual([]);
      expect((await selection(page)).focus).toEqual(at(0, 0));
    });

    test('is held for the menu', async () => {
      const page = await openGrid(kind, finger);
      const { x, y } = await middle(page, 5, 2);
      const touch = await fingers(page);
      await touch('touchStart', [{ x, y }]);
      await page.waitForFunction(() => window.bench.told.some(([name]) => name === 'menu'));
      await touch('touchEnd', []);
      const menus = await told(page, 'menu');
      expect(menus).toHaveLength(1);
      expect(menus[0]?.[0]).toMatchObject({ on: 'cell', place: at(5, 2) });
      expect((await selection(page)).focus).toEqual(at(5, 2));
    });

    test('drags the corner to select more', async () => {
      const page = await openGrid(kind, finger);
      const { x, y } = await middle(page, 5, 1);
      await page.touchscreen.tap(x, y);
      const handle = await page.locator('.handle').last().boundingBox();
      const to = await middle(page, 7, 2);
      if (!handle) throw new Error('There is no handle.');
      const touch = await fingers(page);
      await touch('touchStart', [
        { x: handle.x + handle.width - 4, y: handle.y + handle.height - 4 },
      ]);
      await touch('touchMove', [{ x: to.x - 10, y: to.y - 10 }]);
      await touch('touchMove', [to]);
      await touch('touchEnd', []);
      expect((await selection(page)).ranges[0]).toEqual({
        kind: 'cells',
        ...block(at(5, 1), at(7, 2)),
      });
      expect(await told(page, 'fill')).toEqual([]);
    });

    test('finds rows 44 pixels high, and a mouse 31', async () => {
      const page = await openGrid(kind, finger);
      const height = () =>
        page.evaluate(() => window.bench.view.cellRect({ row: 3, column: 1 })?.height);
      expect(await height()).toBe(44);
      await page.evaluate(() => window.bench.view.setDensity('fine'));
      expect(await height()).toBe(31);
    });
  },
);

describe.each<{ kind: Kind }>([{ kind: 'sheet' }, { kind: 'plain' }])(
  '$kind: for those who do not see it',
  ({ kind }) => {
    test('it is a grid with a name and counts, headings included', async () => {
      const page = await openGrid(kind);
      const grid = page.getByRole('grid', { name: 'Key, fill and background' });
      expect(await grid.getAttribute('aria-rowcount')).toBe('61');
      expect(await grid.getAttribute('aria-colcount')).toBe('27');
      expect(await grid.getAttribute('aria-multiselectable')).toBe('true');
    });

    test('the focus points at the cell, with its place and that it is selected', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 4);
      expect(await activeCell(page)).toEqual({
        text: '−1 2/3stops',
        label: '−1 2/3 stops',
        role: 'gridcell',
        row: '7',
        column: '6',
        selected: 'true',
      });
      await page.keyboard.press('ArrowRight');
      expect(await activeCell(page)).toMatchObject({ text: '1/3 stop over', column: '7' });
      expect(await page.locator('td[aria-selected=true]:not([aria-hidden])').count()).toBe(1);
    });

    test('a waiting cell and an error are read with their sentence, a reading as one', async () => {
      const page = await openGrid(kind);
      await click(page, 10, 4);
      expect((await activeCell(page)).label).toBe('–, Waiting for a reading in C11.');
      await page.keyboard.press('ArrowLeft');
      await page.keyboard.press('ArrowLeft');
      expect((await activeCell(page)).label).toBe('reading');
      await page.evaluate(() =>
        window.bench.view.selectRange({ from: { row: 12, column: 4 }, to: { row: 12, column: 4 } }),
      );
      expect((await activeCell(page)).label).toContain('FSTOPS: the reading must be more than 0');
    });

    test('the focus finds a frozen cell when the sheet is scrolled', async () => {
      const page = await openGrid(kind, { rows: 200, frozenRows: 2, frozenColumns: 1 });
      await focusGrid(page);
      await page.evaluate(() => {
        window.bench.view.scrollTo({ row: 150, column: 20 });
        window.bench.view.selectRange({ from: { row: 0, column: 0 }, to: { row: 0, column: 0 } });
      });
      expect(await activeCell(page)).toMatchObject({ text: 'Camera A', row: '2', column: '2' });
      const hidden = await page.evaluate(() => {
        const id = document.activeElement?.getAttribute('aria-activedescendant') ?? '';
        return document.getElementById(id)?.closest('[aria-hidden=true]') !== null;
      });
      expect(hidden).toBe(false);
    });

    test('the open editor is named after its cell', async () => {
      const page = await openGrid(kind);
      await click(page, 5, 4);
      await page.keyboard.press('F2');
      expect(await page.getByRole('textbox', { name: 'Entry, E6' }).isVisible()).toBe(true);
      expect(await page.locator('.entry').getAttribute('aria-activedescendant')).toBe(null);
    });

    test.each(['dark', 'light'] as const)('axe finds nothing in the %s theme', async (theme) => {
      const page = await openGrid(kind, {
        theme,
        rows: 16,
        columns: 9,
        frozenRows: 2,
        frozenColumns: 1,
      });
      await drag(page, await middle(page, 5, 2), await middle(page, 9, 5));
      expect(await axeFaults(page)).toEqual([]);
      await page.keyboard.press('F2');
      expect(await axeFaults(page, '#host')).toEqual([]);
    });
  },
);
