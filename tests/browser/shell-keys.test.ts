import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

declare global {
  interface Window {
    /** How many file pickers were asked for when the last key press had been dealt with. */
    askedWithKey: number;
  }
}

/** Counts pickers from now on. The browser tells of them only once it has been asked to. */
async function countPickers(page: Page): Promise<() => number> {
  let count = 0;
  page.on('filechooser', () => (count += 1));
  await page.evaluate(() => {
    addEventListener('keydown', ({ key }) => {
      if (key === 'o') window.askedWithKey = document.querySelectorAll('input[type=file]').length;
    });
  });
  return () => count;
}

describe('Ctrl+O asks for a file', () => {
  test.each([
    ['on the start page', null],
    ['in the grid', '.grid textarea.entry'],
    ['in the entry line', '.entry-text'],
    ['in the name box', '.name-box input'],
    ['on a button', '.find'],
  ])('%s, in the task of the key itself', async (_, focused) => {
    const { page } = await openApp();
    if (focused === null) await page.locator('.card').first().waitFor();
    else {
      await begin(page, 'Blank book');
      await page.focus(focused);
    }
    const pickers = await countPickers(page);
    await page.keyboard.press('Control+o');
    await expect.poll(pickers).toBe(1);
    expect(await page.evaluate(() => window.askedWithKey)).toBe(1);
  });

  test('while an entry is being typed, which stays', async () => {
    const { page } = await openApp();
    await begin(page, 'Blank book');
    const pickers = await countPickers(page);
    await page.keyboard.type('f/4');
    await page.keyboard.press('Control+o');
    await expect.poll(pickers).toBe(1);
    expect(await page.inputValue('.grid textarea.entry')).toBe('f/4');
  });
});
