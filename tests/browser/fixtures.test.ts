import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

const asFile = (name: string, buffer: Buffer) => ({ name, mimeType: 'text/plain', buffer });
const kept = (name: string) =>
  asFile(name, readFileSync(join(import.meta.dirname, '../standards/photometric-files', name)));
const bulb =
  'IESNA:LM-63-2002\n[LUMINAIRE] Pasted bulb\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 60\n0 180\n0\n100 100\n';

async function openFixtures(page: Page) {
  await page.keyboard.press('Control+k');
  await page.keyboard.type('Fixtures');
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Fixtures' });
  await dialog.waitFor();
  return dialog;
}

const namesIn = (page: Page) =>
  page
    .locator('dialog.fixtures tbody input')
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));

it('fixtures come in from files, from the clipboard and by hand; what is broken is said by its line', async () => {
  const { page, faults } = await openApp();
  await begin(page, 'sample book');
  const dialog = await openFixtures(page);
  await dialog.locator('tbody tr').first().waitFor();
  const before = await namesIn(page);
  expect(before).toContain('Soft panel 60 × 30');
  await dialog
    .locator('input[type=file]')
    .setInputFiles([
      kept('k_spot_irregular_2002.ies'),
      kept('b_quadrant.ldt'),
      asFile('broken.ies', Buffer.from(bulb.slice(0, -5))),
    ]);
  await dialog.getByText('2 fixtures added.').waitFor();
  await dialog.getByText(/^broken\.ies: Line \d+: .* Nothing was taken\.$/).waitFor();
  expect(await namesIn(page)).toEqual(expect.arrayContaining(['narrow spot', 'elliptical beam']));

  await page.evaluate((text) => {
    const data = new DataTransfer();
    data.setData('text/plain', text);
    document.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
  }, bulb);
  await dialog.getByText('1 fixture added.').waitFor();

  await dialog.getByLabel('Name', { exact: true }).fill('Window frame');
  await dialog.getByText('a panel').click();
  await dialog.getByLabel('Width').fill('1.2 m');
  await dialog.getByLabel('Height').fill('1.2 m');
  await dialog.getByLabel('Luminance, or lux').fill('620');
  await dialog.getByRole('button', { name: 'Add', exact: true }).click();
  await page.locator('dialog.fixtures input[aria-label="Name Window frame"]').waitFor();

  const { violations } = await new AxeBuilder({ page }).include('dialog.fixtures').analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+z');
  await openFixtures(page);
  expect(await namesIn(page)).not.toContain('Window frame');
  expect(await namesIn(page)).toContain('Pasted bulb');
  expect(await faults.settle()).toEqual([]);
});
