import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { writeBook } from '../../src/book/form/write.ts';
import { describeCells } from '../../src/book/make/properties.ts';
import { addSheet } from '../../src/book/make/sheets.ts';
import { attacks } from '../fuzz/attacks.ts';
import { openApp, openTestPage } from '../support/browser.ts';
import { bookFile, waitForSaved } from '../support/kept.ts';
import { begin, handOn, ready } from '../support/sheet.ts';
import { openBook } from '../unit/engine/support/openBook.ts';

test('a figure that cannot be drawn says so in its place; the book goes on and is kept', async () => {
  const { page, context, faults } = await openApp({
    before: () => {
      document.createElementNS = () => {
        throw new Error('broken on purpose');
      };
    },
  });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.evaluate(() => localStorage.setItem('halfstop-figures', 'open'));
  await page.reload();
  const sheet = await begin(page, 'sample book');
  const broken = page.locator('.figure .broken').first();
  await broken.waitFor();
  expect(await broken.innerText()).toContain('This figure could not be drawn.');
  await broken.getByRole('button', { name: 'Copy details' }).click();
  await broken.getByText('Details copied.').waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('broken on purpose');

  await sheet.type('C13', 'f/1.4');
  await waitForSaved(page);
  expect(await bookFile(page)).toContain('f/1.4');
  expect(faults.take(/broken on purpose/)).toBeGreaterThan(0);
});

test('a panel that cannot be drawn says so in its place, the others go on, and it comes back', async () => {
  const { page, faults } = await openTestPage('shell');
  await page.waitForSelector('body[data-ready]');
  await page.evaluate(() => {
    const { foot } = window.shellBench.workbook;
    const { value } = foot;
    Reflect.set(window, 'whole', value);
    Object.assign(foot, { value: { ...value, facts: [null] } });
  });
  const broken = page.locator('.foot .broken');
  await broken.waitFor();
  expect(await broken.innerText()).toContain('This part could not be drawn.');
  expect(await page.locator('.contents .broken, .slip .broken, .bar .broken').count()).toBe(0);
  await page.evaluate(() => {
    Object.assign(window.shellBench.workbook.foot, { value: Reflect.get(window, 'whole') });
  });
  await broken.waitFor({ state: 'detached' });
  expect(faults.take(/./)).toBeGreaterThan(0);
});

test('an error that nobody caught is told', async () => {
  const { page, faults } = await openApp();
  await page.locator('.card').first().waitFor();
  await page.evaluate(() => {
    void Promise.reject(new Error('nobody caught it'));
  });
  await page.getByText('Something went wrong that should not have.').waitFor();
  expect(faults.take(/nobody caught it/)).toBeGreaterThan(0);
});

test('a book that is long in reading is said to be read, and can be stopped', async () => {
  const { page, context } = await openApp();
  // The thread that reads it never gets its script.
  await context.route('**/opening*', () => undefined);
  await page.locator('.card').first().waitFor();
  const asked = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).first().click();
  const buffer = Buffer.from('{}');
  await (await asked).setFiles({ name: 'loft.halfstop', mimeType: 'application/json', buffer });
  const box = page.getByRole('dialog', { name: 'Open a book' });
  await box.getByText('Reading loft.halfstop').waitFor();
  await box.getByRole('button', { name: 'Stop' }).click();
  await page.getByText('Stopped. Nothing was changed.').waitFor();
  await box.waitFor({ state: 'detached' });
});

/** Everything that a name or a text can be, made to do harm. */
function hostileBook(): string {
  const opened = openBook({ Walk: attacks.map((attack) => [`'${attack}`, '1 lx']) });
  const { document, means, must, idOf } = opened;
  const sheet = idOf('Walk');
  attacks.forEach((note, row) => {
    const region = { sheet, top: row, left: 1, height: 1, width: 1 };
    must(describeCells(document, means, [region], { note, role: 'reading' }));
  });
  for (const name of attacks) {
    const made = addSheet(document, means, { name, title: name, purpose: name });
    if (made.ok && document.sheets.length < 40) opened.book.run(made.transaction);
  }
  return writeBook(document).replace('"title":"Untitled"', `"title":${JSON.stringify(attacks[2])}`);
}

const strangers =
  'script:not([src]), iframe, object, embed, base, [onerror], [onload], [src*="hit"], [href*="hit"], [style*="expression"]';

async function unharmed(page: Page, where: string): Promise<void> {
  expect(await page.locator(strangers).count(), where).toBe(0);
  expect(await page.evaluate(() => Reflect.get(window, 'harm')), where).toBe(0);
}

test('two hundred texts made to do harm stay texts on every screen', async () => {
  // The test fails as well if anything is asked of anyone else, or refused by the policy.
  const { page } = await openApp({
    before: () => {
      Object.assign(window, { harm: 0, hit: () => Object.assign(window, { harm: 1 }) });
    },
  });
  await page.locator('.card').first().waitFor();
  const asked = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).first().click();
  await (
    await asked
  ).setFiles({
    name: '<img src=x onerror=hit()>.halfstop',
    mimeType: 'application/json',
    buffer: Buffer.from(hostileBook()),
  });
  await ready(page);
  const sheet = handOn(page);
  expect(await sheet.read('A1')).toBe(attacks[0]);
  await unharmed(page, 'sheet');
  for (const row of [40, 80, 120, 160, 200]) {
    await sheet.go(`B${String(row)}`);
    const note = page.locator('aside.slip .note textarea');
    await expect.poll(() => note.inputValue()).toBe(attacks[row - 1]?.replace(/\r\n?/g, '\n'));
    await unharmed(page, `slip of row ${String(row)}`);
  }
  for (const command of [
    ...['Remarks on the book', 'Names of the book', 'Versions of this book', 'Hand-over sheet'],
    ...['Settings of the book', 'Find and replace', 'Export'],
  ]) {
    await page.keyboard.press('Control+k');
    await page.keyboard.type(command);
    await page.keyboard.press('Enter');
    await page.locator('dialog[open]:not(.finder)').waitFor();
    await unharmed(page, command);
    await page.keyboard.press('Escape');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
  }
  await sheet.type('C1', 'see https://loft.example/plan');
  await sheet.go('C1');
  await page.getByRole('button', { name: 'loft.example' }).click();
  const way = page.getByRole('dialog').getByRole('link', { name: 'Open it' });
  expect(await way.getAttribute('href')).toBe('https://loft.example/plan');
  expect(await way.getAttribute('rel')).toBe('noopener noreferrer');
  await page.getByRole('button', { name: 'Stay here' }).click();
  await page.goto(page.url().replace(/#.*/, '#"><img src=x onerror=hit()>'));
  await page.reload();
  await page.locator('.card').first().waitFor();
  await unharmed(page, 'start page');
});
