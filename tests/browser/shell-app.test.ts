import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { openApp, type OpenOptions } from '../support/browser.ts';

const profiles: string[] = [];
afterEach(async () => {
  for (const profile of profiles.splice(0)) await rm(profile, { recursive: true, force: true });
});

/** Opens the app and the sample book in it, ready to be typed in. */
async function openSample(options: OpenOptions = {}): Promise<Page> {
  const { page } = await openApp(options);
  await page.click('.card >> text=Harbour Hours');
  await page.waitForSelector('.grid[data-ready]');
  return page;
}

async function goTo(page: Page, address: string): Promise<void> {
  await page.fill('.name-box input', address);
  await page.press('.name-box input', 'Enter');
}

const slip = (page: Page) => page.locator('aside.slip .big').innerText();
const saved = (page: Page) => page.waitForSelector('.saved.saved');

describe('the sample book', () => {
  test('says of each point how far it is off, and the slip explains it', async () => {
    const page = await openSample();
    expect(await page.locator('.bar .book-title').inputValue()).toBe('Harbour Hours');
    const fill = page.locator('.strip button[aria-label^="Fill side of face"]');
    expect(await fill.first().getAttribute('aria-label')).toBe('Fill side of face: 1/3 stop over');
    await fill.first().click();
    expect((await slip(page)).trim()).toBe('1/3 stop over');
    // By hand: from f/2.8 to f/1.4 and a third is two stops less a third.
    const from = page.locator('.row-facts li', { hasText: 'From key' });
    expect((await from.innerText()).replace(/\s+/g, ' ')).toContain('−1 2/3 stops');
  });

  test('a switch of units changes how numbers are said, and undo takes it back', async () => {
    const page = await openSample();
    await page.click('.switches label >> text=fc');
    await page.click('[aria-label^="Undo"]');
    expect(await page.locator('.notices').innerText()).toBe('Undid: Switch lux and footcandles');
    expect(await page.locator('.switches label:has(:checked)').first().innerText()).toBe('lux');
  });
});

describe('the contents', () => {
  const titles = (page: Page) => page.locator('.sheet-link > span').allInnerTexts();
  const line = (page: Page, title: string) =>
    page.locator('.contents li', { has: page.getByText(title, { exact: true }) });

  /** Drags one sheet over the lower or upper part of another, and lets go if `key` is not pressed. */
  async function drag(page: Page, title: string, over: string, part: number, key?: string) {
    const from = await line(page, title).boundingBox();
    const to = await line(page, over).boundingBox();
    if (!from || !to) throw new Error('A sheet is not in view.');
    await page.mouse.move(from.x + 60, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(to.x + 60, to.y + to.height * part, { steps: 4 });
    if (key !== undefined) await page.keyboard.press(key);
    await page.mouse.up();
  }

  test('a sheet is dragged among the others and to another phase, each in one step', async () => {
    const page = await openSample();
    const before = await titles(page);
    const shown = () => page.locator('.sheet-link[aria-current=page]').innerText();
    const was = await shown();
    expect(before.indexOf('Boat shed')).toBe(before.indexOf('Sail loft') + 1);
    await drag(page, 'Boat shed', 'Sail loft', 0.2);
    const swapped = before.with(before.indexOf('Sail loft'), 'Boat shed');
    swapped[before.indexOf('Boat shed')] = 'Sail loft';
    await expect.poll(() => titles(page)).toEqual(swapped);
    // The click at the end of a drag shows no sheet.
    expect(await shown()).toBe(was);

    await drag(page, 'Camera', 'Sun', 0.8);
    const sun = before.indexOf('Sun');
    await expect.poll(async () => (await titles(page)).indexOf('Camera')).toBe(sun + 1);
    const group = page.locator('.contents section', { hasText: 'Camera' });
    expect(await group.locator('.sheet-link > span').allInnerTexts()).toEqual([
      ...before.slice(0, sun + 1),
      'Camera',
    ]);

    await drag(page, 'Camera', 'Reflected survey', 0.8, 'Escape');
    expect((await titles(page)).indexOf('Camera')).toBe(sun + 1);
    await page.click('[aria-label^="Undo"]');
    expect(await page.locator('.notices').innerText()).toBe('Undid: Move the sheet');
    await page.click('[aria-label^="Undo"]');
    await expect.poll(() => titles(page)).toEqual(before);
  });

  test('Alt and an arrow moves a sheet, and the keys stay with it', async () => {
    const page = await openSample();
    const before = await titles(page);
    await page.focus('.sheet-link[aria-current=page]');
    await page.keyboard.press('Alt+ArrowDown');
    const focused = () =>
      page.evaluate(() => document.activeElement?.querySelector('span')?.textContent);
    await expect
      .poll(async () => (await titles(page)).indexOf('Sail loft'))
      .toBe(before.indexOf('Sail loft') + 1);
    await expect.poll(focused).toBe('Sail loft');
    await page.keyboard.press('Alt+ArrowUp');
    await expect.poll(() => titles(page)).toEqual(before);
    await expect.poll(focused).toBe('Sail loft');
  });
});

describe('what opens', () => {
  test('a sheet opens at its beginning, wherever the one before was', async () => {
    const page = await openSample({ viewport: { width: 900, height: 500 } });
    await goTo(page, 'M40');
    const scrolled = () =>
      page.locator('.ht_master .wtHolder').evaluate((one) => one.scrollTop + one.scrollLeft);
    await expect.poll(scrolled).toBeGreaterThan(0);
    await page.locator('.sheet-link', { hasText: 'Sun' }).click();
    await page.getByRole('heading', { level: 1, name: 'Sun' }).waitFor();
    await expect.poll(scrolled).toBe(0);
  });

  test('a dialog begins at what it asks for, never at the button that closes it', async () => {
    const page = await openSample();
    for (const name of ['Keyboard', 'Settings of the book', 'Fixtures', 'Add a figure']) {
      await page.keyboard.press('Control+k');
      await page.fill('.finder-text', name);
      await page.keyboard.press('Enter');
      await page.waitForSelector('dialog[open] h2');
      const at = () =>
        page.evaluate(() => {
          const on = document.activeElement;
          return on?.closest('dialog[open]') ? on.getAttribute('aria-label') : undefined;
        });
      await expect.poll(at, { message: name }).not.toBe(undefined);
      expect(await at(), name).not.toBe('Close');
      await page.keyboard.press('Escape');
      await page.waitForSelector('dialog[open]', { state: 'detached' });
    }
  });
});

describe('a book is kept', () => {
  test('what was typed is there after a reload, and can still be undone', async () => {
    const { page } = await openApp();
    await page.click('.card >> text=Blank book');
    await page.waitForSelector('.grid[data-ready]');
    await page.keyboard.type('f/5.6');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() =>
      /^Saved \d/.test(document.querySelector('.saved')?.textContent?.trim() ?? ''),
    );
    await page.reload();
    await page.waitForSelector('.grid[data-ready]');
    await goTo(page, 'A1');
    expect(await slip(page)).toBe('f/5.6');
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() =>
      document.querySelector('.slip .where')?.textContent?.includes('blank'),
    );
  });

  test('it is offered on the start page when the browser is opened again', async () => {
    const profile = await mkdtemp(join(tmpdir(), 'halfstop-profile-'));
    profiles.push(profile);
    const first = await openApp({ profile });
    await first.page.click('.card >> text=Blank book');
    await first.page.waitForSelector('.grid[data-ready]');
    await first.page.fill('.book-title', 'Ice house');
    await first.page.press('.book-title', 'Enter');
    await saved(first.page);
    await first.page.waitForFunction(() =>
      /^Saved \d/.test(document.querySelector('.saved')?.textContent?.trim() ?? ''),
    );
    await first.close();
    const second = await openApp({ profile });
    const kept = second.page.locator('.kept-book b');
    await kept.waitFor();
    expect(await kept.allTextContents()).toEqual(['Ice house']);
  });
});

describe('typing', () => {
  test('a reading that cannot be read is refused with a sentence and stays in the editor', async () => {
    const page = await openSample();
    await goTo(page, 'B2');
    const before = await slip(page);
    await page.fill('.entry-text', '12 m');
    await page.press('.entry-text', 'Enter');
    expect(await page.locator('.entry-help .wrong').innerText()).toContain('12 m');
    expect(await page.inputValue('.entry-text')).toBe('12 m');
    await page.press('.entry-text', 'Escape');
    expect(await slip(page)).toBe(before);
  });
});
