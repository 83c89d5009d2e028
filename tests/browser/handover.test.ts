import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
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

/** What axe finds in the dialog, as `rule: elements`. */
async function faultsOf(page: Page): Promise<string[]> {
  const { violations, passes } = await new AxeBuilder({ page }).include('dialog[open]').analyze();
  expect(passes.length, 'axe looked at something').toBeGreaterThan(10);
  return violations
    .filter(({ impact }) => impact !== 'minor')
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
}

it.each([
  ['on a desk', { width: 1280, height: 800 }],
  ['on a phone', { width: 390, height: 844 }],
])('axe finds nothing in the hand-over sheet %s, in any theme', async (_, viewport) => {
  const { page } = await openApp({ viewport, reducedMotion: true });
  await handOver(page);
  for (const theme of ['dark', 'light', 'metering']) {
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    expect(await faultsOf(page), theme).toEqual([]);
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
});
