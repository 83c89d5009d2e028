import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { sampleSpectra } from '../../src/files/spectra/samples.ts';
import { axeFaults } from '../support/axe.ts';
import { openApp } from '../support/browser.ts';
import { begin, ready } from '../support/sheet.ts';

const sample = (file: string) => sampleSpectra.find((one) => one.file === file)!;
const asFile = (name: string, text: string) => ({
  ...{ name, mimeType: 'text/plain', buffer: Buffer.from(text) },
});
/** Every 5 nm from 400: the last 20 nm at the blue end were not read. */
const short = ['nm,power', ...Array.from({ length: 77 }, (_, at) => `${400 + 5 * at},1`)].join(
  '\n',
);

async function openSpectra(page: Page) {
  await page.keyboard.press('Control+k');
  await page.keyboard.type('wavelength');
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Spectra' });
  await dialog.waitFor();
  return dialog;
}

const namesIn = (page: Page) =>
  page
    .locator('dialog.spectra tbody input.input')
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));

it('spectra come in, are named in a formula, drawn, put on the sheet, undone, and there after a reload', async () => {
  const { page, faults } = await openApp();
  const hand = await begin(page, 'Blank book');
  const dialog = await openSpectra(page);
  await dialog.getByText('The book keeps no spectrum yet.').waitFor();
  const { file, text } = sample('phosphor-warm.csv');
  await dialog
    .locator('input[type=file]')
    .setInputFiles([
      asFile(file, text),
      asFile('amber.csv', sample('amber-gel.csv').text),
      asFile('short.csv', short),
      asFile('order.csv', short.replace('405,1', '395,1')),
    ]);
  await dialog.getByText('3 spectra added.').waitFor();
  await dialog
    .getByText(/^order\.csv: Line 3: Wavelengths must rise: 395 nm comes after/)
    .waitFor();
  await dialog.getByText(/^short\.csv: From 380 to 400 nm nothing was read/).waitFor();
  expect(await namesIn(page)).toEqual(['amber', 'phosphor-warm', 'short']);

  // What is shown last came first; a filter stands before a light.
  await dialog.getByLabel('Show phosphor-warm').check();
  await dialog.getByText('What phosphor-warm comes to').waitFor();
  await dialog.getByLabel('Behind a filter').selectOption('amber');
  await dialog.getByText('The filter takes').waitFor();
  await dialog.getByText(/^phosphor-warm through amber: \d{4} K/).waitFor();
  await dialog.getByLabel('Behind a filter').selectOption('none');
  await dialog.getByRole('button', { name: 'Put Colour rendering' }).click();
  await dialog.getByText('The figure stands under the sheet in view.').waitFor();

  await dialog.getByLabel('Name phosphor-warm').fill('Key');
  await dialog.getByLabel('Name phosphor-warm').press('Tab');
  await dialog.getByLabel('Name Key', { exact: true }).waitFor();
  expect(await axeFaults(page, 'dialog.spectra')).toEqual([]);

  await page.evaluate(
    (pasted) => {
      const data = new DataTransfer();
      data.setData('text/plain', pasted);
      document.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
    },
    short.replaceAll(',', '\t'),
  );
  await dialog.getByText('1 spectrum added.').waitFor();
  expect(await namesIn(page)).toContain('pasted');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+z');

  await hand.type('A1', '=SPECTRUMCRI("KEY")');
  await expect.poll(() => hand.read('A1')).toMatch(/^74\.\d/);
  await expect.poll(() => page.locator('p[class="saved saved"]').count()).toBe(1);
  await page.reload();
  await ready(page);
  expect(await hand.read('A1')).toMatch(/^74\.\d/);
  const figure = page.locator('.figure h3', { hasText: 'phosphor-warm: Colour rendering' });
  await page.keyboard.press('Control+Alt+f');
  await figure.waitFor();
  await page.getByText(/^Key: Ra 74; the lowest is R9, strong red, with −6/).waitFor();
  await openSpectra(page);
  expect(await namesIn(page)).toEqual(['amber', 'Key', 'short']);
  expect(await faults.settle()).toEqual([]);
});

it('files that are let go over the window go to the shelf that they belong on', async () => {
  const { page, faults } = await openApp();
  await begin(page, 'Blank book');
  await page.evaluate(
    (files) => {
      const data = new DataTransfer();
      for (const { name, text } of files) data.items.add(new File([text], name));
      dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    },
    ['tungsten-3100.xml', 'daylight-6200.txt', 'tube.tsv'].map((file) => ({
      ...{ name: file, text: sample(file).text },
    })),
  );
  await page.getByRole('dialog', { name: 'Spectra' }).getByText('3 spectra added.').waitFor();
  expect(await namesIn(page)).toEqual(['Daylight 6200', 'tube', 'Tungsten 3100']);
  await page.getByRole('button', { name: 'Add sample spectra' }).click();
  await page.getByText('7 spectra added.').waitFor();
  expect(await faults.settle()).toEqual([]);
});
