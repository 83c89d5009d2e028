import type { BrowserContext, Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import {
  bookFile,
  eventually,
  firstColumn,
  keptPages,
  openId,
  typeDown,
  waitForSaved,
} from '../support/kept.ts';
import { begin, ready } from '../support/sheet.ts';

const app = () => inject('app');
const alert = (page: Page) => page.getByRole('alert');

/** As a browser does that is short of room, or whose person clears what sites keep. */
async function clear(context: BrowserContext, page: Page, storageTypes = 'indexeddb') {
  const devtools = await context.newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', {
    origin: new URL(app()).origin,
    storageTypes,
  });
}

async function bookWith(page: Page, title: string, text: string): Promise<string> {
  await begin(page, 'Blank book');
  const box = page.getByRole('textbox', { name: 'Title of the book' });
  await box.fill(title);
  await box.press('Enter');
  await page.getByRole('grid').focus();
  await typeDown(page, [text]);
  await waitForSaved(page);
  return openId(page);
}

const toStart = async (page: Page) => {
  await page.getByRole('button', { name: 'Book menu' }).click();
  await page.getByRole('menuitem', { name: /^Start page/ }).click();
  await page.getByRole('heading', { name: 'A lighting workbook' }).waitFor();
};

test('books cleared while the start page is shown are missed at once and come back from an archive', async () => {
  const { page, context } = await openApp();
  const loft = await bookWith(page, 'Sail loft', '12 lx');
  await toStart(page);
  await bookWith(page, 'Boat shed', '34 lx');
  await toStart(page);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything as an archive' }).click();
  const archive = await (await coming).path();

  await clear(context, page);
  await alert(page)
    .filter({ hasText: /This browser has cleared (Sail loft, Boat shed|Boat shed, Sail loft)\./ })
    .waitFor();
  expect(await page.getByRole('button', { name: /Sail loft/ }).count()).toBe(0);

  const choosing = page.waitForEvent('filechooser');
  await alert(page).getByRole('button', { name: 'Take in an archive' }).click();
  await (await choosing).setFiles(archive);
  await page.getByText('2 books taken in').waitFor();
  await eventually(() => alert(page).count()).toBe(0);
  await page.getByRole('button', { name: /^Sail loft/ }).click();
  await ready(page);
  expect(await openId(page)).toBe(loft);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx']);
});

test('books cleared between two visits are missed until that is heard, and then no more', async () => {
  const { page, context } = await openApp();
  const id = await bookWith(page, 'Ice house', '12 lx');
  await page.close();
  const again = await context.newPage();
  await clear(context, again);
  await again.goto(`${app()}#${id}`);
  await alert(again).filter({ hasText: 'This browser has cleared Ice house.' }).waitFor();
  await alert(again).getByRole('button', { name: 'Open a saved file' }).waitFor();
  await alert(again).getByRole('button', { name: 'Say no more of it' }).click();
  await eventually(() => alert(again).count()).toBe(0);
  await again.reload();
  await again.getByRole('heading', { name: 'A lighting workbook' }).waitFor();
  await eventually(() => again.locator('main[aria-busy=false]').count()).toBe(1);
  expect(await alert(again).count()).toBe(0);
});

test('the address of a book that nobody knows of says so and how to get it back', async () => {
  const { page } = await openApp({ hash: '#nowhere' });
  await alert(page)
    .filter({ hasText: /book of this address is no longer kept on this device/ })
    .getByRole('button', { name: 'Take in an archive' })
    .waitFor();
});

test('a page that knew of the books misses them even where the whole site was cleared', async () => {
  const { page, context } = await openApp();
  await bookWith(page, 'Slipway', '12 lx');
  await toStart(page);
  await clear(context, page, 'all');
  await alert(page).filter({ hasText: 'This browser has cleared Slipway.' }).waitFor();
});

test('an open book that is cleared is kept again before anything is typed, and that is said', async () => {
  const { page, context } = await openApp();
  const id = await bookWith(page, 'Sail loft', '12 lx');
  await clear(context, page);
  await page.getByText('This browser has cleared what it kept. The open book is kept').waitFor();
  await waitForSaved(page);
  await eventually(async () => (await keptPages(page, id)) !== undefined).toBe(true);
  await page.reload();
  await ready(page);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx']);
});
