import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import {
  bookFile,
  eventually,
  firstColumn,
  openId,
  typeDown,
  waitForSaved,
} from '../support/kept.ts';
import { begin, handOn, ready } from '../support/sheet.ts';

const menu = async (page: Page, item: RegExp) => {
  await page.getByRole('button', { name: 'Book menu' }).click();
  await page.getByRole('menuitem', { name: item }).click();
};
const dialog = (page: Page) => page.getByRole('dialog', { name: 'Versions of this book' });
const rows = (page: Page) => dialog(page).getByRole('listitem');
const showVersions = (page: Page) => menu(page, /^Versions of this book/);
const startPage = (page: Page) => menu(page, /^Start page/);

async function keep(page: Page, name: string): Promise<void> {
  await menu(page, /^Keep a version/);
  await page.getByRole('textbox', { name: 'Name of the version' }).fill(name);
  await page.keyboard.press('Enter');
  await page.getByText(`Kept a version: ${name}.`).waitFor();
}

test('a named version is compared in words and cells, restored, and the restoring undone', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await typeDown(page, ['Key side', '2.0']);
  await keep(page, 'As rigged');
  await handOn(page).type('A2', '2.8');
  await handOn(page).type('A3', 'Fill side');

  await showVersions(page);
  await eventually(() => rows(page).count()).toBe(1);
  await dialog(page)
    .getByRole('button', { name: /^Compare As rigged/ })
    .click();
  const table = dialog(page).getByRole('row');
  await eventually(() => table.allInnerTexts()).toContain('A2\t2.0\t2.8');
  expect(await table.allInnerTexts()).toContain('A3\tnothing\tFill side');
  expect(await dialog(page).innerText()).toContain('1 row added');

  await dialog(page).getByRole('button', { name: 'All versions' }).click();
  await dialog(page)
    .getByRole('button', { name: /^Restore As rigged/ })
    .click();
  await page.getByText(/^The book is as it was: As rigged/).waitFor();
  expect(firstColumn(await bookFile(page))).toEqual(['Key side', '2.0']);
  await page.getByRole('grid').focus();
  await page.keyboard.press('Control+z');
  expect(firstColumn(await bookFile(page)), 'undone').toEqual(['Key side', '2.8', 'Fill side']);

  await waitForSaved(page);
  await page.reload();
  await ready(page);
  await page.getByRole('grid').focus();
  await page.keyboard.press('Control+Shift+z');
  expect(firstColumn(await bookFile(page)), 'done again after a reload').toEqual([
    'Key side',
    '2.0',
  ]);
  await showVersions(page);
  await eventually(() => rows(page).allInnerTexts()).toContainEqual(
    expect.stringContaining('Before a version was restored'),
  );
});

test('saving to a file keeps a version, and ten minutes of work keep one', async () => {
  const { page } = await openApp({ before: tenMinutesAreASecond });
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  await bookFile(page);
  await showVersions(page);
  await eventually(() => rows(page).allInnerTexts()).toEqual([
    expect.stringContaining('Saved to a file'),
  ]);
  await page.keyboard.press('Escape');
  await page.getByRole('grid').focus();
  await typeDown(page, ['34 lx']);
  await eventually(async () => {
    await showVersions(page);
    await page.waitForTimeout(300);
    const texts = await rows(page).allInnerTexts();
    await page.keyboard.press('Escape');
    return texts;
  }).toEqual([
    expect.stringMatching(/While working[^]*1 cell in Sheet 1/),
    expect.stringContaining('Saved to a file'),
  ]);
});

test('a book goes to the bin, comes back with its versions, and is gone when the bin is emptied', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  await keep(page, 'As rigged');
  const id = await openId(page);
  await startPage(page);
  await page.getByRole('button', { name: 'Put Untitled book in the bin' }).click();
  await page.getByRole('button', { name: 'Bin: 1 book' }).click();
  await page.goto(`${page.url().replace(/#.*/, '')}#${id}`);
  await page.reload();
  await page.getByText('This book is in the bin. Take it out of there first.').waitFor();

  await page.getByRole('button', { name: 'Bin: 1 book' }).click();
  await page.getByRole('button', { name: 'Take Untitled book out of the bin' }).click();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^Untitled book/ }).click();
  await ready(page);
  await showVersions(page);
  await eventually(() => rows(page).allInnerTexts()).toEqual([
    expect.stringContaining('As rigged'),
  ]);
  await page.keyboard.press('Escape');

  await startPage(page);
  await page.getByRole('button', { name: 'Put Untitled book in the bin' }).click();
  await page.getByRole('button', { name: 'Bin: 1 book' }).click();
  await page.getByRole('button', { name: 'Empty the bin' }).click();
  await eventually(() => page.getByRole('button', { name: /^Bin/ }).count()).toBe(0);
  expect(await page.evaluate(countEverything)).toEqual({});
});

test('what has lain in the bin for thirty days is gone', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await waitForSaved(page);
  await startPage(page);
  await page.getByRole('button', { name: 'Put Untitled book in the bin' }).click();
  await page.getByRole('button', { name: 'Bin: 1 book' }).waitFor();
  const in29Days = Date.now() + 29 * 86_400_000;
  await page.clock.setFixedTime(in29Days);
  await page.reload();
  await page.getByRole('button', { name: 'Bin: 1 book' }).waitFor();
  await page.clock.setFixedTime(in29Days + 2 * 86_400_000);
  await page.reload();
  await page.getByRole('heading', { name: 'begin' }).waitFor();
  await eventually(() => page.evaluate(countEverything)).toEqual({});
});

test('everything goes into an archive and comes back on another device', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  await keep(page, 'As rigged');
  await handOn(page).type('A1', '34 lx');
  await startPage(page);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything as an archive' }).click();
  const path = await (await coming).path();
  await page.getByText('Saved 1 book with their versions as an archive').waitFor();

  const { page: other } = await openApp();
  const chooser = other.waitForEvent('filechooser');
  await other.getByRole('button', { name: 'Take in an archive' }).click();
  await (
    await chooser
  ).setFiles({ name: 'a.zip', mimeType: 'application/zip', buffer: readFileSync(path) });
  await other.getByText('1 book taken in.').waitFor();
  await other.getByRole('button', { name: /^Untitled book/ }).click();
  await ready(other);
  expect(firstColumn(await bookFile(other))).toEqual(['34 lx']);
  await showVersions(other);
  await eventually(() => rows(other).allInnerTexts()).toContainEqual(
    expect.stringContaining('As rigged'),
  );
});

test('a book that is let go over the window is opened, and Ctrl S writes back to its file', async () => {
  const { page } = await openApp({ before: filesGiveAWayBack });
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  const text = await bookFile(page);
  await page.evaluate(dropBook, text);
  await eventually(() => openId(page)).not.toBe('');
  await eventually(() => page.evaluate(() => document.title)).toContain('Untitled book');
  await ready(page);
  await handOn(page).type('A2', '34 lx');
  await page.keyboard.press('Control+s');
  await page.getByText(/^Saved to loft\.halfstop\./).waitFor();
  expect(firstColumn(await page.evaluate(fileThere))).toEqual(['12 lx', '34 lx']);
});

test('a double click on a file opens the app with it', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  const text = await bookFile(page);
  const { page: other } = await openApp({ before: filesGiveAWayBack });
  await other.evaluate(launchWith, text);
  await ready(other);
  expect(await handOn(other).entry('A1')).toBe('12 lx');
});

test('a file that is no book is refused with a sentence', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'halfstop-files-'));
  const path = join(folder, 'notes.halfstop');
  writeFileSync(path, '{"form":"something else"}');
  const { page } = await openApp();
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  await (await chooser).setFiles(path);
  await page.getByText('The file is not a Halfstop book, so nothing was opened.').waitFor();
  rmSync(folder, { recursive: true });
});

/** Runs in the page: ten minutes pass in a second for what waits for them. */
function tenMinutesAreASecond(): void {
  const { setTimeout: later } = window;
  const quicker = (run: () => void, milliseconds = 0) =>
    later(run, milliseconds > 60_000 ? milliseconds / 600 : milliseconds);
  Reflect.set(window, 'setTimeout', quicker);
}

/** Runs in the page: files come from the folder that the page has to itself, and wait for who takes them. */
function filesGiveAWayBack(): void {
  Object.defineProperty(window, 'launchQueue', {
    value: {
      setConsumer(take: (launch: object) => void) {
        Reflect.set(window, 'launched', take);
        const waiting: unknown = Reflect.get(window, 'waiting');
        if (waiting) take({ files: waiting });
      },
    },
  });
  Object.defineProperty(DataTransferItem.prototype, 'getAsFileSystemHandle', {
    async value() {
      const folder = await navigator.storage.getDirectory();
      return folder.getFileHandle('loft.halfstop');
    },
  });
}

/** Runs in the page. */
async function dropBook(text: string): Promise<void> {
  const folder = await navigator.storage.getDirectory();
  const handle = await folder.getFileHandle('loft.halfstop', { create: true });
  const writable = await handle.createWritable();
  await writable.write(text);
  await writable.close();
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(await handle.getFile());
  history.replaceState(null, '', '#');
  document.body.dispatchEvent(
    new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }),
  );
}

/** Runs in the page. */
async function launchWith(text: string): Promise<void> {
  const folder = await navigator.storage.getDirectory();
  const handle = await folder.getFileHandle('loft.halfstop', { create: true });
  const writable = await handle.createWritable();
  await writable.write(text);
  await writable.close();
  Reflect.set(window, 'waiting', [handle]);
  const launched = Reflect.get(window, 'launched') as ((launch: object) => void) | undefined;
  launched?.({ files: [handle] });
}

/** Runs in the page. */
async function fileThere(): Promise<string> {
  const folder = await navigator.storage.getDirectory();
  return (await (await folder.getFileHandle('loft.halfstop')).getFile()).text();
}

/** Runs in the page: what lies in the database, where anything does. */
function countEverything(): Promise<Record<string, number>> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('halfstop');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const database = opening.result;
      const names = [...database.objectStoreNames];
      const transaction = database.transaction(names);
      const counts = names.map((name) => [name, transaction.objectStore(name).count()] as const);
      transaction.oncomplete = () => {
        database.close();
        resolve(
          Object.fromEntries(
            counts.flatMap(([name, { result }]) => (result > 0 ? [[name, result]] : [])),
          ),
        );
      };
    };
  });
}
