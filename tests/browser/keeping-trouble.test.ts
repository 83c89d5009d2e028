import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import {
  bookFile,
  eventually,
  firstColumn,
  forbidKeeping,
  keptPages,
  openId,
  openPages,
  putPages,
  typeDown,
  waitForSaved,
  waitForState,
} from '../support/kept.ts';
import { begin, ready } from '../support/sheet.ts';

const origin = () => new URL(inject('app')).origin;
const alert = (page: Page) => page.getByRole('alert');

test('a full device is said, the work goes on and into a file, and is kept once there is room', async () => {
  const { page, context } = await openApp();
  const devtools = await context.newCDPSession(page);
  const room = (quotaSize?: number) =>
    devtools.send('Storage.overrideQuotaForOrigin', {
      origin: origin(),
      ...(quotaSize !== undefined && { quotaSize }),
    });
  await room(150_000);
  const sheet = await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  await waitForSaved(page);
  const readings = Array.from({ length: 3_000 }, (_, i) => `${String(i)} lx`);
  await sheet.paste('A2', readings.join('\n'));
  await waitForState(page, /^\s*Not saved\. This device has no room left/);
  await sheet.type('A3', '34 lx');
  await waitForState(page, /^\s*Not saved/);
  const all = ['12 lx', ...readings.with(1, '34 lx')];
  expect(firstColumn(await bookFile(page))).toEqual(all);
  expect((await openPages(page)).journal, 'what was kept before is still kept').toHaveLength(1);

  await room();
  await waitForSaved(page);
  await page.reload();
  await ready(page);
  expect(firstColumn(await bookFile(page))).toEqual(all);
});

test('a browser that forbids keeping says so, works all the same and asks before the page goes', async () => {
  const { page } = await openApp({ before: forbidKeeping });
  await alert(page)
    .filter({ hasText: /does not let books be kept on the device/ })
    .waitFor();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx', '34 lx']);
  await waitForState(page, /^\s*Not saved\. This browser does not let the book be kept/);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx']);

  const asking = page.waitForEvent('dialog');
  const closing = page.close({ runBeforeUnload: true });
  const question = await asking;
  expect(question.type()).toBe('beforeunload');
  await question.dismiss();
  await closing;

  await page.evaluate(() => dispatchEvent(new Event('allow-keeping')));
  await waitForSaved(page);
  await page.evaluate(() => sessionStorage.setItem('keeping', 'allowed'));
  await page.reload();
  await ready(page);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx']);
});

test('changes that are not kept are left behind only when that is asked for twice', async () => {
  const { page } = await openApp({ before: forbidKeeping });
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  await waitForState(page, /^\s*Not saved/);
  const leave = async () => {
    await page.getByRole('button', { name: 'Book menu' }).click();
    await page.getByRole('menuitem', { name: /^Start page/ }).click();
  };
  await leave();
  await page.getByText(/is not kept on this device\. Save the book to a file first/).waitFor();
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx']);
  await leave();
  await page.getByRole('heading', { name: 'A lighting workbook' }).waitFor();
});

test('a book cleared from the browser while it is open is kept again, with its undo', async () => {
  const { page, context } = await openApp();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx', '34 lx']);
  await waitForSaved(page);
  const devtools = await context.newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', {
    origin: origin(),
    storageTypes: 'indexeddb',
  });
  await typeDown(page, ['56 lx']);
  await waitForState(page, /^\s*Not saved\. What this browser kept of the book has been cleared/);
  await waitForSaved(page);
  await page.reload();
  await ready(page);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx', '56 lx']);
  for (let gesture = 0; gesture < 2; gesture++) await page.keyboard.press('Control+z');
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx']);
});

test('a last change that is half written is left out and said; the rest goes on being kept', async () => {
  const { page, id } = await keptBook(['12 lx', '34 lx', '56 lx']);
  const { snapshot, journal } = await openPages(page);
  const last = journal.at(-1) ?? '';
  await putPages(page, id, { snapshot, journal: journal.with(-1, last.slice(0, 40)) });
  await page.reload();
  await ready(page);
  await page.getByText(/only half written when this book was kept, so it is left out/).waitFor();
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx']);
  await page.getByRole('grid').focus();
  await typeDown(page, ['78 lx']);
  await waitForSaved(page);
  await eventually(async () => (await openPages(page)).journal.join()).toContain('78 lx');
  await page.reload();
  await ready(page);
  expect((await openPages(page)).journal).not.toContain(last.slice(0, 40));
});

test.each([
  ['cut short', (text: string) => text.slice(0, 300), /cut short or damaged/],
  [
    'of a newer version',
    (text: string) => text.replace('"version": 1', '"version": 7'),
    /written by a newer Halfstop/,
  ],
])(
  'a book %s is not opened but said, given as a file and left as it is',
  async (_, spoil, words) => {
    const { page, id } = await keptBook(['12 lx']);
    const { snapshot, journal } = await openPages(page);
    const spoilt = { snapshot: { ...snapshot, text: spoil(snapshot.text) }, journal };
    await putPages(page, id, spoilt);
    await page.reload();
    await alert(page).filter({ hasText: words }).waitFor();

    const coming = page.waitForEvent('download');
    await alert(page).getByRole('button', { name: 'Save it as a file, as it is' }).click();
    const file = await (await coming).createReadStream();
    const text = (await file.toArray()).join('');
    expect(text).toBe([spoilt.snapshot.text, ...journal].join('\n'));
    expect(await keptPages(page, id)).toEqual(spoilt);
  },
);

test('a book damaged in its midst is opened up to there as another; the damaged one stays', async () => {
  const { page, id } = await keptBook(['12 lx', '34 lx', '56 lx']);
  const { snapshot, journal } = await openPages(page);
  const spoilt = { snapshot, journal: journal.with(1, '{"kind":"do"}') };
  await putPages(page, id, spoilt);
  await page.reload();
  await ready(page);
  await page.getByText(/One change in this book cannot be read/).waitFor();
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx']);
  const part = await openId(page);
  expect(part).not.toBe(id);
  expect(await keptPages(page, id)).toEqual(spoilt);

  await page.getByRole('grid').focus();
  await page.keyboard.press('ArrowDown');
  await typeDown(page, ['78 lx']);
  await eventually(async () => (await openPages(page)).journal.join()).toContain('78 lx');
  await page.evaluate((damaged) => (location.hash = damaged), id);
  await page.reload();
  await ready(page);
  await page.getByText(/the book that was made of it before/).waitFor();
  expect(await openId(page), 'no second book is made of it').toBe(part);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '78 lx']);
  expect(await keptPages(page, id)).toEqual(spoilt);
});

async function keptBook(texts: readonly string[]): Promise<{ page: Page; id: string }> {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  for (const text of texts) {
    await typeDown(page, [text]);
    await eventually(async () => (await openPages(page)).journal.join()).toContain(text);
  }
  return { page, id: await openId(page) };
}
