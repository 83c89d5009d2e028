import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

async function command(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
}

/** 800 lx at 2 m, seen from B1 metres. */
async function openLamp() {
  const { page } = await openApp();
  const sheet = await begin(page, 'blank book');
  await sheet.type('A1', 'Distance');
  await sheet.type('B1', '3 m');
  await sheet.type('A2', 'Light');
  await sheet.type('B2', '=INVERSESQUARE(800,2,B1)');
  return { page, sheet };
}

const box = (page: Page, name: string) => page.getByRole('textbox', { name, exact: false });

describe('solve for a cell', () => {
  test('by keyboard: asked, answered, used, and taken back by one undo', async () => {
    const { page, sheet } = await openLamp();
    await sheet.go('B2');
    await command(page, 'Solve for a cell');
    expect(await box(page, 'Make this cell').inputValue()).toBe('B2');
    await box(page, 'equal to').fill('200 lx');
    await box(page, 'by changing').fill('B1');
    await box(page, 'between').fill('1 m');
    await box(page, 'and').last().fill('10 m');
    await page.keyboard.press('Enter');
    await page.getByText('B1 at 4 m makes B2 200 lx.').waitFor();
    await page.getByRole('button', { name: 'Use it' }).click();
    await expect.poll(() => sheet.read('B2')).toContain('200');
    await page.keyboard.press('Control+z');
    await expect.poll(() => sheet.read('B1')).toContain('3');
  });

  test('says honestly that there is none, and what comes nearest', async () => {
    const { page, sheet } = await openLamp();
    await sheet.go('B2');
    await command(page, 'Solve for a cell');
    await box(page, 'equal to').fill('5 lx');
    await box(page, 'by changing').fill('B1');
    await box(page, 'between').fill('1 m');
    await box(page, 'and').last().fill('10 m');
    await page.keyboard.press('Enter');
    await page
      .getByText('None between 1 m and 10 m. Nearest is 10 m, which gives 32 lx.')
      .waitFor();
  });

  test('a cell of another kind is refused in the dialog, and what was written stays', async () => {
    const { page, sheet } = await openLamp();
    await sheet.go('B2');
    await command(page, 'Solve for a cell');
    await box(page, 'equal to').fill('200 lx');
    await box(page, 'by changing').fill('A1');
    await box(page, 'between').fill('1');
    await box(page, 'and').last().fill('2');
    await page.keyboard.press('Enter');
    await page.getByText('A1 holds no typed number to be changed.').waitFor();
    expect(await box(page, 'equal to').inputValue()).toBe('200 lx');
  });
});

describe('sweep a cell over values', () => {
  test('makes a sheet of its own that can be changed and run again', async () => {
    const { page, sheet } = await openLamp();
    await sheet.go('B1');
    await command(page, 'Sweep a cell over values');
    expect(await page.getByRole('textbox', { name: /^Vary/ }).inputValue()).toBe('B1');
    await page.getByRole('textbox', { name: /^over/ }).first().fill('2 m; 4 m');
    await page.getByRole('textbox', { name: /^Read/ }).fill('B2');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Sweep of Distance' }).waitFor();
    await expect.poll(() => sheet.read('C4')).toContain('800');
    await expect.poll(() => sheet.read('C5')).toContain('200');
    await sheet.type('B6', '8 m');
    await command(page, 'Run the sweep again');
    await expect.poll(() => sheet.read('C6')).toContain('50');
    await page.keyboard.press('Control+z');
    await expect.poll(() => sheet.read('C6')).not.toContain('50');
  });

  test('a live one follows the book by itself; one undo takes the change and what followed back', async () => {
    const { page, sheet } = await openLamp();
    const show = (title: string) =>
      page.getByRole('navigation').getByRole('button', { name: title, exact: true }).click();
    await sheet.go('B1');
    await command(page, 'Sweep a cell over values');
    await page.getByRole('textbox', { name: /^over/ }).first().fill('2 m; 4 m');
    await page.getByRole('textbox', { name: /^Read/ }).fill('B2');
    await page.getByRole('checkbox', { name: /Follow the book/ }).check();
    await page.getByRole('button', { name: 'Run', exact: true }).click();
    await page.getByRole('heading', { name: 'Sweep of Distance', level: 1 }).waitFor();
    expect(await sheet.read('A1')).toBe('live');
    await expect.poll(() => sheet.read('C4')).toContain('800');
    await page.getByText('Light: 800 lx at 2 m, 200 lx at 4 m.').waitFor({ state: 'attached' });
    await show('Sheet 1');
    await sheet.type('B2', '=INVERSESQUARE(1600,2,B1)');
    await show('Sweep of Distance');
    await expect.poll(() => sheet.read('C4')).toContain('1600');
    await page.getByText('Light: 1600 lx at 2 m, 400 lx at 4 m.').waitFor({ state: 'attached' });
    await page.keyboard.press('Control+z');
    await show('Sweep of Distance');
    await expect.poll(() => sheet.read('C4')).toContain('800');
    await show('Sheet 1');
    expect(await sheet.entry('B2')).toBe('=INVERSESQUARE(800,2,B1)');
    await show('Sweep of Distance');
    await command(page, 'Sweep: live or frozen');
    expect(await sheet.read('A1')).toBe('frozen');
  });

  test('a long one can be stopped, and nothing has changed', async () => {
    const { page, sheet } = await openLamp();
    await sheet.go('B1');
    await command(page, 'Sweep a cell over values');
    await page.getByRole('textbox', { name: /^from/ }).first().fill('1 m');
    await page.getByRole('textbox', { name: /^to/ }).first().fill('20 m');
    await page
      .getByRole('textbox', { name: /^in how many/ })
      .first()
      .fill('10000');
    await page.getByRole('textbox', { name: /^Read/ }).fill('B2');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.getByText('Stopped. Nothing was changed.').waitFor();
    expect(
      await page
        .getByRole('textbox', { name: /^in how many/ })
        .first()
        .inputValue(),
    ).toBe('10000');
  });
});

describe('choose the fixtures', () => {
  test('writes the cheapest set beside the options; a set typed over counts at once', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Choosing');
    await command(page, 'Choose the fixtures');
    await expect
      .poll(() => sheet.read('B4'))
      .toBe('222.00 EUR, surely the cheapest. The next costs 30.00 EUR more.');
    expect(await sheet.read('B12')).toBe('2');
    await sheet.type('B12', '1');
    expect(await sheet.read('B5')).toContain('168');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => sheet.read('B12')).toBe('');
  });
});

describe('compare', () => {
  test('sorted by a column from one of its cells, listed in order, and summed up on one page', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Which fixtures at which distance are enough');
    await sheet.go('F10');
    await command(page, 'Sort, lowest first');
    await expect.poll(() => sheet.read('A10')).toBe('Fresnel, diffused');
    await page.keyboard.press('Control+z');
    await expect.poll(() => sheet.read('A10')).toBe('One panel, near');
    await sheet.type('B5', 'watts');
    await sheet.type('D5', 'enough');
    await expect.poll(() => sheet.read('A22')).toBe('Four tubes');
    expect(await sheet.read('A26')).toBe('');
    await command(page, 'Hand-over sheet');
    const summary = page.locator('dialog .handover');
    await summary.getByText('One panel, near is the cheapest that is enough').waitFor();
    const options = await summary.locator('tbody tr').allInnerTexts();
    expect(options).toHaveLength(4);
    expect(options[0]).toContain('dearer and no better than Two panels, far');
    expect(await summary.locator('svg').count()).toBe(1);
    await summary.getByText('A planning aid only for what it draws').waitFor();
  });
});
