import { expect, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

test('rows of a table are filtered by keyboard, edited where they stand, and undone', async () => {
  const { page } = await openApp();
  const sheet = await begin(page, 'blank book');
  const rows = 'Option\tVerdict\nPanel\tenough\nTube\ttoo narrow\nFresnel\tenough';
  await sheet.paste('A1', rows);
  await sheet.type('D6', '=COUNTA(A2:A4)');
  await sheet.go('B3');
  await page.keyboard.press('Alt+Shift+f');
  await page.getByRole('textbox', { name: 'Tick those that contain' }).fill('enough');
  await page.keyboard.press('Enter');
  await page.getByText('2 of 3 rows shown, by Verdict').waitFor();
  const labels = () => page.locator('.grid tbody [role=rowheader]').allInnerTexts();
  await expect.poll(async () => (await labels()).slice(0, 3)).toEqual(['1', '2', '4']);
  // Who stood in the row that went stands in the next one: what is typed goes there.
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.type('Fresnel 300');
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => page.locator('.entry-text').inputValue()).toBe('Fresnel 300');
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Go to an address or a name' }).inputValue())
    .toBe('A4');
  // A block that would come down on rows out of view is refused, and they stay as they were.
  await sheet.paste('A2', 'One\nTwo');
  await page.getByText('Rows are out of view there.').waitFor();
  await page.getByRole('button', { name: 'Show all rows' }).click();
  await expect.poll(() => sheet.read('A3')).toBe('Tube');
  expect(await sheet.read('D6')).toBe('3');
  await page.keyboard.press('Control+z');
  await page.getByText('2 of 3 rows shown, by Verdict').waitFor();
});
