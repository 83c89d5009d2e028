import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeFaults } from '../support/axe.ts';
import { openApp } from '../support/browser.ts';
import { figureCalled, printedFigures, savedFigure } from '../support/figures.ts';
import { begin } from '../support/sheet.ts';

const lead = async (page: Page, title: string): Promise<string> =>
  (await figureCalled(page, title).locator('figcaption p').innerText()).replace(/\s+/g, ' ');

const title = 'Sources and white';

// 10⁶ / 6900 = 144.9 mired, 10⁶ / 5600 = 178.6, 10⁶ / 3230 = 309.6, 10⁶ / 3200 = 312.5.
test('the sources of the loft are held against the camera’s white, and against another', async () => {
  const { page, faults } = await openApp({ viewport: { width: 1280, height: 1000 } });
  const sheet = await begin(page, 'sample book');
  await page.locator('.sheet-link', { hasText: 'Match' }).click();
  await page.getByRole('heading', { level: 1, name: 'Match' }).waitFor();
  expect(await sheet.read('K10')).toBe('168 mired too blue');
  expect(await sheet.read('K11')).toBe('agrees');
  expect(await sheet.read('B4')).toMatch(/^Leave Key, Oil lamp\. Correct Fill \(/);
  // The lamp that is meant to be off is no point that is.
  await page.getByText('1 of 4 points agrees').waitFor();
  await page.keyboard.press('Control+Alt+f');
  await expect.poll(() => lead(page, title)).toMatch(/^1 of 5 sources agrees with .*3200 K/);

  // The camera is set to day instead, and the reading of the window is taken again.
  await sheet.type('B1', '5600 K');
  await sheet.type('D10', '5500 K');
  expect(await sheet.read('K10')).toBe('agrees');
  expect(await sheet.read('K11')).toBe('131 mired too warm');
  expect(await sheet.read('L11')).toMatch(
    /^3230 K at a 5600 K camera: 131 mired too warm; full blue/,
  );
  await expect.poll(() => lead(page, title)).toMatch(/^1 of 5 sources agrees with .*5600 K/);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect.poll(() => sheet.read('K11')).toBe('agrees');

  expect(await axeFaults(page, '.figures')).toEqual([]);
  const svg = await savedFigure(page, title);
  for (const words of ['Bench tube', 'white wanted', 'Planckian locus'])
    expect(svg).toContain(words);
  const [, , bars] = await printedFigures(page);
  expect(bars?.letters).toBeGreaterThan(30);
  expect(await faults.settle()).toEqual([]);
});
