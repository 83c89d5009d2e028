import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isFunction } from '../../src/engine/index.ts';
import { readForeign } from '../../src/files/in/read.ts';
import { odsOf } from '../../src/files/ods/write.ts';
import { openApp } from '../support/browser.ts';
import { begin, handOn, ready } from '../support/sheet.ts';

const levels = () => ({
  name: 'Levels.ods',
  mimeType: 'application/vnd.oasis.opendocument.spreadsheet',
  buffer: Buffer.from(
    odsOf({
      title: 'Levels',
      names: [],
      sheets: [
        {
          name: 'Levels',
          widths: new Map(),
          frozenRows: 0,
          frozenColumns: 0,
          cells: [
            { row: 0, column: 0, value: 'Key (fc)' },
            { row: 1, column: 0, value: 25 },
            { row: 1, column: 1, value: 4, formula: '=2*2' },
            { row: 2, column: 1, value: 7, formula: '=CUBEVALUE(1)' },
          ],
        },
      ],
    }),
  ),
});

async function choose(page: Page, command: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.keyboard.type(command);
  await page.getByRole('option', { name: command, exact: false }).first().waitFor();
  await page.keyboard.press('Enter');
}

async function importInto(page: Page, file: ReturnType<typeof levels>): Promise<void> {
  const asked = page.waitForEvent('filechooser');
  await choose(page, 'Import');
  await (await asked).setFiles(file);
}

const dialog = (page: Page, name: string) => page.getByRole('dialog', { name });

test('a file is shown before it is taken in, and one undo takes it back', async () => {
  const { page } = await openApp();
  const hand = await begin(page, 'Blank book');
  await hand.type('A1', '12 lx');
  await importInto(page, levels());
  const box = dialog(page, 'Import');
  await box.getByText('There is no function CUBEVALUE here.').waitFor();
  expect(await box.getByRole('combobox').inputValue()).toBe('guess');
  await box.getByRole('button', { name: 'Import' }).click();
  await box.waitFor({ state: 'detached' });
  expect([await hand.read('A2'), await hand.read('B2'), await hand.read('B3')]).toEqual([
    '25 fc',
    '4',
    '7',
  ]);
  await page.keyboard.press('Control+z');
  await page.waitForFunction(
    () => !document.querySelector('nav.contents')?.textContent?.includes('Levels'),
  );
  expect(await hand.read('A1')).toBe('12 lx');
});

test('a file let go over the start page becomes a book of its own', async () => {
  const { page } = await openApp();
  const { name, buffer } = levels();
  // Nobody lets a file go over a page that is not there yet.
  await page.getByRole('button', { name: 'Blank book' }).first().waitFor();
  await page.evaluate(
    ({ name, bytes }) => {
      const data = new DataTransfer();
      data.items.add(new File([Uint8Array.from(bytes)], name));
      dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
    },
    { name, bytes: [...buffer] },
  );
  await dialog(page, 'Import').getByRole('button', { name: 'Import' }).click();
  await ready(page);
  expect(await handOn(page).read('A2')).toBe('25 fc');
});

test('a damaged file is refused with a sentence, and the open book stays as it was', async () => {
  const { page } = await openApp();
  const hand = await begin(page, 'Blank book');
  await hand.type('A1', '12 lx');
  const file = levels();
  await importInto(page, { ...file, buffer: file.buffer.subarray(0, 300) });
  await dialog(page, 'Import').getByText('Nothing was taken in').waitFor();
  await dialog(page, 'Import').getByRole('button', { name: 'Close' }).last().click();
  expect(await hand.read('A1')).toBe('12 lx');
});

test('the sample book goes out as xlsx with its formulas written out', async () => {
  const { page } = await openApp();
  await begin(page, 'Harbour Hours');
  await choose(page, 'Export');
  const saved = page.waitForEvent('download');
  await dialog(page, 'Export').getByRole('button', { name: 'Export' }).click();
  const path = await (await saved).path();
  const read = readForeign(new Uint8Array(readFileSync(path)), 'a.xlsx', { isFunction });
  if (!read.ok) throw new Error(read.reason);
  const { sheets } = read.imported.book;
  expect(sheets.map(({ name }) => name)).toContain('Sail loft');
  expect(sheets.some(({ cells }) => cells.some(({ formula }) => formula?.includes('LN(')))).toBe(
    true,
  );
});
