import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin, type SheetHand } from '../support/sheet.ts';

// While a formula is typed, a click on a cell writes its address, wherever the typing is.

const places = [
  { where: 'in the cell', inLine: false },
  { where: 'in the entry line', inLine: true },
] as const;

/** Begins an entry, in the cell or in the entry line. */
async function typeAt(
  page: Page,
  sheet: SheetHand,
  address: string,
  inLine: boolean,
  text: string,
): Promise<void> {
  await sheet.go(address);
  if (inLine) await page.focus('.entry-text');
  await page.keyboard.type(text);
}

async function drag(page: Page, sheet: SheetHand, from: string, to: string): Promise<void> {
  const [a, b] = [await sheet.cell(from).boundingBox(), await sheet.cell(to).boundingBox()];
  if (!a || !b) throw new Error(`${from} or ${to} is not in view.`);
  await page.mouse.move(a.x + a.width / 2, a.y + a.height / 2);
  await page.mouse.down();
  await page.mouse.move(b.x + b.width / 2, b.y + b.height / 2, { steps: 6 });
  await page.mouse.up();
}

const line = (page: Page) => page.inputValue('.entry-text');
const sheetInView = (page: Page) => page.getByRole('grid').getAttribute('aria-label');

describe.each(places)('pointing while typing $where', ({ inLine }) => {
  test('a click writes the address, another click instead writes that one, a drag a block', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Blank book');
    await typeAt(page, sheet, 'D14', inLine, '=STOPS(');
    await sheet.cell('A10').click();
    expect(await line(page)).toBe('=STOPS(A10');
    await sheet.cell('B12').click();
    expect(await line(page)).toBe('=STOPS(B12');
    await page.keyboard.type(',SUM(');
    await drag(page, sheet, 'A15', 'B17');
    expect(await line(page)).toBe('=STOPS(B12,SUM(A15:B17');
    await page.keyboard.type('))');
    await page.keyboard.press('Enter');
    expect(await sheet.entry('D14')).toBe('=STOPS(B12,SUM(A15:B17))');
  });

  test('a cell of another sheet is written with its sheet, and Enter comes back', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Harbour Hours');
    const home = await sheetInView(page);
    await typeAt(page, sheet, 'N40', inLine, '=1+');
    await page.locator('nav .sheet-link:not([aria-current=page])').first().click();
    expect(await sheetInView(page)).not.toBe(home);
    expect(await line(page)).toBe('=1+');
    await sheet.cell('B3').click();
    await page.keyboard.type('+');
    await page.keyboard.press('Enter');
    // The formula is not finished: it is refused, and what was typed stays.
    const unfinished = await line(page);
    expect(unfinished).toMatch(/^=1\+.+!B3\+$/);
    await page.keyboard.type('0');
    await page.keyboard.press('Enter');
    expect(await sheetInView(page)).toBe(home);
    expect(await sheet.entry('N40')).toBe(`${unfinished}0`);
  });

  test('Escape drops the entry and comes back to the sheet it began on', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Harbour Hours');
    const home = await sheetInView(page);
    await typeAt(page, sheet, 'N40', inLine, '=1+');
    await page.locator('nav .sheet-link:not([aria-current=page])').first().click();
    await sheet.cell('B3').click();
    await page.keyboard.press('Escape');
    expect(await sheetInView(page)).toBe(home);
    expect(await sheet.entry('N40')).toBe('');
  });

  test('a click where no reference may stand ends the entry and selects', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Blank book');
    await typeAt(page, sheet, 'B2', inLine, 'f/4');
    await sheet.cell('D5').click();
    expect(await page.inputValue('.name-box input')).toBe('D5');
    expect(await sheet.entry('B2')).toBe('f/4');
  });

  test('an entry that is refused holds against a click elsewhere', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Blank book');
    await typeAt(page, sheet, 'B2', inLine, '=1+1)');
    await sheet.cell('D5').click();
    expect(await line(page)).toBe('=1+1)');
    await page.getByRole('alert').first().waitFor();
    await page.keyboard.press('Escape');
    expect(await sheet.entry('B2')).toBe('');
  });

  test('F4 goes through the fixed forms of the reference at the caret', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Blank book');
    await typeAt(page, sheet, 'D14', inLine, '=B2+C3');
    const seen: string[] = [];
    for (let press = 0; press < 4; press += 1) {
      await page.keyboard.press('F4');
      seen.push(await line(page));
    }
    expect(seen).toEqual(['=B2+$C$3', '=B2+C$3', '=B2+$C3', '=B2+C3']);
    await page.keyboard.press('F2');
    for (let back = 0; back < 3; back += 1) await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('F4');
    expect(await line(page)).toBe('=$B$2+C3');
    await page.keyboard.press('Enter');
    expect(await sheet.entry('D14')).toBe('=$B$2+C3');
  });
});

test('rows dragged by their headings move in one step that undo takes back', async () => {
  const { page } = await openApp();
  const sheet = await begin(page, 'Blank book');
  for (const [address, text] of [
    ['A1', 'key'],
    ['A2', 'fill'],
    ['A3', 'back'],
    ['A4', '=A1'],
  ] as const)
    await sheet.type(address, text);
  const heading = async (row: number) => {
    const box = await page
      .locator('th.row-heading')
      .filter({ hasText: new RegExp(`^${row}$`) })
      .last()
      .boundingBox();
    if (!box) throw new Error(`There is no row ${row}.`);
    return box;
  };
  const one = await heading(1);
  const three = await heading(3);
  await page.mouse.click(one.x + 20, one.y + 15);
  await page.mouse.move(one.x + 20, one.y + 15);
  await page.mouse.down();
  await page.mouse.move(three.x + 20, three.y + three.height - 4, { steps: 6 });
  await page.mouse.up();
  expect(await page.inputValue('.name-box input')).toBe('3:3');
  const column = async () => [
    await sheet.entry('A1'),
    await sheet.entry('A2'),
    await sheet.entry('A3'),
    await sheet.entry('A4'),
  ];
  expect(await column()).toEqual(['fill', 'back', 'key', '=A3']);
  await page.keyboard.press('Control+z');
  expect(await column()).toEqual(['key', 'fill', 'back', '=A1']);
});
