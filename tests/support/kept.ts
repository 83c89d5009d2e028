import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { readBook } from '../../src/book/form/read.ts';
import type { KeptPages } from '../../src/storage/store.ts';

/** The id of the book that lies open. */
export const openId = (page: Page) => page.evaluate(() => location.hash.slice(1));

/** What the browser holds of a book, read past the app. */
export function keptPages(page: Page, id: string): Promise<KeptPages | undefined> {
  return page.evaluate(
    (key) =>
      new Promise<KeptPages | undefined>((resolve, reject) => {
        const opening = indexedDB.open('halfstop');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const transaction = database.transaction(['snapshots', 'journal']);
          const snapshot = transaction.objectStore('snapshots').get(key);
          const range = IDBKeyRange.bound([key, 0], [key, Number.MAX_SAFE_INTEGER]);
          const journal = transaction.objectStore('journal').getAll(range);
          transaction.oncomplete = () => {
            database.close();
            const { text, remains } = (snapshot.result ?? {}) as Partial<KeptPages['snapshot']>;
            // Empty lines only take a number.
            const lines = (journal.result as string[]).filter((line) => line !== '');
            resolve(
              text === undefined || remains === undefined
                ? undefined
                : { snapshot: { text, remains }, journal: lines },
            );
          };
        };
      }),
    id,
  );
}

/** Puts other pages in place of what is kept of a book, past the app; the list is left as it is. */
export function putPages(page: Page, id: string, pages: KeptPages): Promise<void> {
  return page.evaluate(
    ({ key, snapshot, journal }) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('halfstop');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const transaction = database.transaction(['snapshots', 'journal'], 'readwrite');
          transaction.objectStore('snapshots').put({ ...snapshot, upTo: 0 }, key);
          const lines = transaction.objectStore('journal');
          lines.delete(IDBKeyRange.bound([key, 0], [key, Number.MAX_SAFE_INTEGER]));
          journal.forEach((line, index) => lines.put(line, [key, index + 1]));
          transaction.oncomplete = () => {
            database.close();
            resolve();
          };
          transaction.onabort = () => reject(transaction.error);
        };
      }),
    { key: id, ...pages },
  );
}

/** The pages of the book that lies open. */
export async function openPages(page: Page): Promise<KeptPages> {
  const pages = await keptPages(page, await openId(page));
  if (!pages) throw new Error('Nothing is kept of the book.');
  return pages;
}

/** Holds sooner or later; a slow machine takes its time. */
export const eventually = <Found>(look: () => Found | Promise<Found>) =>
  expect.poll(look, { timeout: 60_000 });

/** Waits until the line across the top says so of the book. */
export async function waitForState(page: Page, words: RegExp): Promise<void> {
  await page.getByRole('status').filter({ hasText: words }).waitFor();
}

export const waitForSaved = (page: Page): Promise<void> =>
  waitForState(page, /^\s*Saved.*nothing leaves this device/);

/** Types texts below one another, from the cell that is selected. */
export async function typeDown(page: Page, texts: readonly string[]): Promise<void> {
  for (const text of texts) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
}

/** The text of the book, from the command that saves it as a file. */
export async function bookFile(page: Page): Promise<string> {
  const coming = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  return readFile(await (await coming).path(), 'utf8');
}

/** What was typed in the first column, down to the last cell with anything in it. */
export function firstColumn(file: string): string[] {
  const read = readBook(file);
  if (!read.ok) throw new Error(read.reason);
  const [sheet] = read.document.sheets;
  const column = sheet?.columns.idAt(0) ?? '';
  const texts = sheet?.rows.ids.map((row) => sheet.cell(row, column)?.typed ?? '') ?? [];
  return texts.slice(0, texts.findLastIndex((text) => text !== '') + 1);
}

/** Runs in the page: as a browser does whose person forbids sites to keep anything. */
export function forbidKeeping(): void {
  if (sessionStorage.getItem('keeping') === 'allowed') return;
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = () => {
    throw new DOMException('The user denied permission.', 'SecurityError');
  };
  addEventListener('allow-keeping', () => {
    IDBFactory.prototype.open = open;
  });
}
