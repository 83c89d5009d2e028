import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import {
  bookFile,
  eventually,
  firstColumn,
  openPages,
  typeDown,
  waitForSaved,
  waitForState,
} from '../support/kept.ts';
import { begin, ready } from '../support/sheet.ts';

const elsewhere = /^\s*Not saved\. This book is open in another tab/;

test('a second tab is told, keeps nothing and overwrites nothing, and takes over once it may', async () => {
  const { page: first, context } = await openApp();
  await begin(first, 'Blank book');
  await typeDown(first, ['12 lx']);
  await waitForSaved(first);

  const second = await sameBook(first, context);
  await waitForState(second, elsewhere);
  await typeDown(second, ['wrong', 'wrong again']);
  await waitForState(second, elsewhere);
  expect(firstColumn(await bookFile(second)), 'it can be saved to a file').toContain('wrong again');

  await first.bringToFront();
  await typeDown(first, ['34 lx']);
  await waitForSaved(first);
  await eventually(async () => (await openPages(first)).journal.join()).toContain('34 lx');
  expect((await openPages(first)).journal.join()).not.toContain('wrong');

  await first.close();
  await second.reload();
  await ready(second);
  await waitForSaved(second);
  expect(firstColumn(await bookFile(second))).toEqual(['12 lx', '34 lx']);
  await second.keyboard.press('Control+z');
  await waitForSaved(second);
  await second.reload();
  await ready(second);
  expect(firstColumn(await bookFile(second))).toEqual(['12 lx']);
});

test('a second tab takes over with one click; what was being typed in the first is kept', async () => {
  const { page: first, context } = await openApp();
  await begin(first, 'Blank book');
  await typeDown(first, ['12 lx']);
  await first.keyboard.type('34 lx');
  const second = await sameBook(first, context);
  await waitForState(second, elsewhere);
  await second.getByRole('button', { name: 'Keep it here' }).click();
  await waitForSaved(second);
  await waitForState(first, elsewhere);
  expect(firstColumn(await bookFile(second))).toEqual(['12 lx', '34 lx']);

  await second.bringToFront();
  await second.getByRole('grid').focus();
  await second.keyboard.press('ArrowDown');
  await second.keyboard.press('ArrowDown');
  await typeDown(second, ['56 lx']);
  await eventually(async () => (await openPages(second)).journal.join()).toContain('56 lx');
  await first.bringToFront();
  await first.getByRole('button', { name: 'Keep it here' }).click();
  await waitForSaved(first);
  await waitForState(second, elsewhere);
  expect(firstColumn(await bookFile(first)), 'and back again').toEqual(['12 lx', '34 lx', '56 lx']);
});

test('a book that is open in another tab cannot be removed from the start page', async () => {
  const { page: first, context } = await openApp();
  await begin(first, 'Blank book');
  await waitForSaved(first);
  const second = await context.newPage();
  await second.goto(first.url().replace(/#.*/, ''));
  await second.getByRole('button', { name: 'Put Untitled book in the bin' }).click();
  await second.getByText('This book is open in another tab. Close it there first.').waitFor();
  await first.bringToFront();
  await typeDown(first, ['12 lx']);
  await waitForSaved(first);
  expect((await openPages(first)).journal).not.toEqual([]);
});

test('in a browser without locks the last tab keeps the book, and the other is told', async () => {
  const { page: first, context } = await openApp({ before: withoutLocks });
  await begin(first, 'Blank book');
  await typeDown(first, ['12 lx']);
  await waitForSaved(first);
  const second = await sameBook(first, context);
  await waitForSaved(second);

  await first.bringToFront();
  await typeDown(first, ['wrong']);
  await waitForState(first, elsewhere);
  expect(firstColumn(await bookFile(first)), 'it can be saved to a file').toContain('wrong');
  await second.bringToFront();
  await second.keyboard.press('Control+z');
  await eventually(async () => (await openPages(second)).journal.at(-1)).toBe('{"kind":"undo"}');
  expect((await openPages(second)).journal.join()).not.toContain('wrong');
});

async function sameBook(page: Page, context: BrowserContext): Promise<Page> {
  const other = await context.newPage();
  await other.goto(page.url());
  await ready(other);
  return other;
}

/** Runs in the page. */
function withoutLocks(): void {
  Object.defineProperty(Navigator.prototype, 'locks', { value: undefined });
}
