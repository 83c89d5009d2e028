import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

// The loft is recorded, rebuilt in the shed and reported on, with a phone. Verdicts are worked out by
// hand in tests/unit/repeat.

async function menu(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Book menu' }).tap();
  await page.getByRole('menuitem', { name }).tap();
}

/** Answers the next question for a file. */
async function handed(page: Page, name: string, content: string, ask: () => Promise<void>) {
  const asked = page.waitForEvent('filechooser');
  await ask();
  await (await asked).setFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(content) });
}

it('a set-up is recorded in one place, rebuilt in another and reported on', async () => {
  const viewport = { width: 390, height: 844 };
  const { page } = await openApp({ viewport, touch: true, mobile: true });
  const hand = await begin(page, 'Harbour Hours');
  const title = page.locator('.head h1');
  const records = page.locator('dialog.records');
  const tap = (name: string) => records.getByRole('button', { name }).first().tap();

  await menu(page, 'Record this set-up');
  await expect
    .poll(() => page.locator('.notices').innerText())
    .toMatch(/Sail loft is recorded: 6 points/);
  await menu(page, 'Records of set-ups');
  await tap('View record Sail loft');
  expect(await records.innerText()).toMatch(/Key side of face\s*f\/2\.8/);
  const file = page.waitForEvent('download');
  await tap('Save as a file');
  const saved = readFileSync(await (await file).path(), 'utf8');

  await tap('Make a rebuild sheet');
  await expect.poll(() => title.innerText()).toBe('Rebuild of Sail loft');
  expect(await hand.read('D12')).toBe('f/2.8');
  const walk = readFileSync(new URL('../support/walks/shed.csv', import.meta.url), 'utf8');
  await menu(page, 'Records of set-ups');
  await handed(page, 'shed.csv', walk, () => tap('Take in a walk'));
  await expect.poll(() => hand.read('G12')).toMatch(/1\s*\/?\s*3 stop over|⅓ stop over/);
  await menu(page, 'Work out what to set');
  await expect.poll(() => hand.read('J12')).toMatch(/^Down with the key/i);

  await menu(page, 'Records of set-ups');
  await tap('Make a match report');
  await expect.poll(() => title.innerText()).toBe('Match report: Sail loft');
  await expect.poll(() => hand.read('A1')).toMatch(/^The light does not match: 5 of 5 points/);

  // On paper: the sentence, each point, and room for a signature.
  const paper = () =>
    page.evaluate(() => {
      dispatchEvent(new Event('beforeprint'));
      const said = document.querySelector('.printed')?.textContent ?? '';
      dispatchEvent(new Event('afterprint'));
      return said;
    });
  await expect.poll(paper).toMatch(/The light does not match: 5 of 5 points[^]*Signature/);

  // In another book: the file is taken in whole, and a damaged one not at all.
  await menu(page, 'Records of set-ups');
  await handed(page, 'cut.json', saved.slice(0, 400), () => tap('Take in a record'));
  await expect
    .poll(() => records.getByRole('alert').innerText())
    .toBe('The file is cut short or damaged, so nothing was taken in.');
  await handed(page, 'loft.json', saved, () => tap('Take in a record'));
  await expect.poll(() => records.locator('li').count()).toBe(2);
});
