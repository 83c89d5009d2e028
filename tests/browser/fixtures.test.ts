import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { axeFaults } from '../support/axe.ts';
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
  const sheet = await begin(page, 'sample book');
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

  // 620 cd/m² over 1.2 m × 1.2 m at a metre: PANELLUX says 606.3 lx, the inverse square law 893 lx.
  await dialog.getByLabel('Light straight ahead at').fill('1 m');
  const frame = dialog.locator('tr', { has: page.getByLabel('Name Window frame') });
  await expect.poll(() => frame.innerText()).toContain('606.3 lx');
  expect(await frame.innerText()).toMatch(/nearer than 8\.49 m: 0\.6 stop less/);

  await dialog.getByRole('button', { name: 'Change Window frame' }).click();
  const change = page.getByRole('dialog', { name: 'Change Window frame' });
  expect(await change.getByLabel('Luminance, or lux').inputValue()).toBe('620 cd/m2');
  await change.getByLabel('Luminance, or lux').fill('nothing');
  await change.getByRole('button', { name: 'Keep' }).click();
  await change.getByRole('alert').getByText('Luminance, or lux at the distance:').waitFor();
  await change.getByLabel('Luminance, or lux').fill('1240');
  await change.getByLabel('Note').fill('from the loft door');
  await change.getByRole('button', { name: 'Keep' }).click();
  await expect.poll(() => frame.innerText()).toContain('from the loft door');
  expect(await frame.innerText()).toContain('1213 lx');

  await dialog.getByRole('button', { name: 'Change narrow spot' }).click();
  const ofFile = page.getByRole('dialog', { name: 'Change narrow spot' });
  await ofFile.getByText('Its light is that of k_spot_irregular_2002.ies').waitFor();
  await ofFile.getByLabel('Watts').fill('777');
  await ofFile.getByRole('button', { name: 'Keep' }).click();
  const spot = dialog.locator('tr', { has: page.getByLabel('Name narrow spot') });
  await expect.poll(() => spot.innerText()).toContain('777 W');

  expect(await axeFaults(page, 'dialog.fixtures')).toEqual([]);
  await page.keyboard.press('Escape');
  // A formula follows the frame; undone are the formula, the file’s watts and the frame’s change.
  await sheet.type('Z40', '=FIXTURELUX("Window frame",1)');
  await expect.poll(() => sheet.read('Z40')).toBe('1213 lx');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await sheet.type('Z40', '=FIXTURELUX("Window frame",1)');
  await expect.poll(() => sheet.read('Z40')).toBe('606.3 lx');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await openFixtures(page);
  expect(await namesIn(page)).not.toContain('Window frame');
  expect(await namesIn(page)).toContain('Pasted bulb');
  expect(await faults.settle()).toEqual([]);
});
