import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { axeFaults } from '../support/axe.ts';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

// WCAG 2.2 by axe-core 4.13.

async function handOver(page: Page): Promise<void> {
  await begin(page, 'sample book');
  await page.keyboard.press('Control+K');
  await page.keyboard.type('Hand-over sheet');
  await page.keyboard.press('Enter');
  await page.locator('dialog .handover').waitFor();
}

it.each([
  ['on a desk', { width: 1280, height: 800 }],
  ['on a phone', { width: 390, height: 844 }],
])('axe finds nothing in the hand-over sheet %s, in any theme', async (_, viewport) => {
  const { page } = await openApp({ viewport, reducedMotion: true });
  await handOver(page);
  for (const theme of ['dark', 'light', 'metering']) {
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    expect(await axeFaults(page, 'dialog[open]', 'moderate'), theme).toEqual([]);
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
});
