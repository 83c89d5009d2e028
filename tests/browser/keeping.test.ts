import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { journalLine } from '../../src/book/form/journal.ts';
import { writeBook } from '../../src/book/form/write.ts';
import { readPages } from '../../src/storage/pages.ts';
import type { KeptPages } from '../../src/storage/store.ts';
import { openApp } from '../support/browser.ts';
import {
  bookFile,
  eventually,
  firstColumn,
  keptPages,
  openId,
  openPages,
  putPages,
  typeDown,
  waitForSaved,
} from '../support/kept.ts';
import { begin, ready } from '../support/sheet.ts';
import { stage } from '../unit/book/stage.ts';

const undo = (page: Page) => page.keyboard.press('Control+z');

test('what was typed less than a second ago is there after a reload, and so is undo', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx', '34 lx', '56 lx']);
  await page.waitForTimeout(900);
  await page.reload();
  await ready(page);
  const file = await bookFile(page);
  expect(firstColumn(file)).toEqual(['12 lx', '34 lx', '56 lx']);

  await undo(page);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx']);
  await waitForSaved(page);
  await page.reload();
  await ready(page);
  await page.keyboard.press('Control+Shift+z');
  expect(await bookFile(page), 'redone after another reload').toBe(file);
});

test('a reload right after the last key loses nothing', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx', '34 lx']);
  await page.reload();
  await ready(page);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx']);
});

test('the browser is asked once to keep the books, and only after a change', async () => {
  const { page } = await openApp({ before: countAsking });
  const asked = () => page.evaluate(() => Number(Reflect.get(window, 'asked')));
  await begin(page, 'Blank book');
  await waitForSaved(page);
  expect(await asked()).toBe(0);
  for (const reading of ['12 lx', '34 lx']) {
    await typeDown(page, [reading]);
    await eventually(async () => (await openPages(page)).journal.join()).toContain(reading);
  }
  await eventually(asked).toBe(1);
});

test('a long journal is folded on another thread, and 1,000 gestures can still be undone', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await waitForSaved(page);
  const id = await openId(page);
  await atStart(page);
  const long = typedPages(1_540);
  await putPages(page, id, long);

  const worker = page.waitForEvent('worker');
  await page.getByRole('button', { name: /^Untitled book/ }).click();
  await ready(page);
  expect((await worker).url()).toMatch(/\/assets\/fold/);
  await eventually(async () => (await keptPages(page, id))?.journal.length).toBe(1_000);

  await page.reload();
  await ready(page);
  expect(await bookFile(page)).toBe(bookAfter(long, 1_540));
  await page.keyboard.down('Control');
  for (let gesture = 0; gesture < 1_000; gesture++) await page.keyboard.press('z');
  await page.keyboard.up('Control');
  expect(await bookFile(page)).toBe(bookAfter(long, 540));
});

/** Reloads without the name of the book in the address. */
async function atStart(page: Page): Promise<void> {
  await page.evaluate(() => history.replaceState(null, '', location.pathname));
  await page.reload();
  await page.getByRole('heading', { name: 'A lighting workbook' }).waitFor();
}

/** A book in which so many readings were typed one by one. */
function typedPages(readings: number): KeptPages {
  const scene = stage();
  const snapshot = { text: writeBook(scene.document), remains: null };
  const journal: string[] = [];
  scene.book.listen((change) => journal.push(journalLine(change)));
  for (let reading = 1; reading <= readings; reading++)
    scene.type({ [`B${String((reading % 40) + 1)}`]: `${String(reading)} lx` });
  return { snapshot, journal };
}

function bookAfter({ snapshot, journal }: KeptPages, lines: number): string {
  const read = readPages({ snapshot, journal: journal.slice(0, lines) });
  return read.ok ? writeBook(read.book.document) : read.reason;
}

/** Runs in the page. */
function countAsking(): void {
  Reflect.set(window, 'asked', 0);
  StorageManager.prototype.persist = () => {
    Reflect.set(window, 'asked', Number(Reflect.get(window, 'asked')) + 1);
    return Promise.resolve(false);
  };
}
