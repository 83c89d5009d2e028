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
