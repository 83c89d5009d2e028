import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

// A teacher adds a sheet, hands it out, one learner answers, and the book that comes back is marked.
// What is right and what is wrong is worked out in tests/unit/teach.

async function handed(page: Page, path: string, content: Uint8Array, ask: () => Promise<void>) {
  const asked = page.waitForEvent('filechooser');
  await ask();
  const buffer = Buffer.from(content);
  await (await asked).setFiles({ name: path, mimeType: 'application/octet-stream', buffer });
}

async function saved(page: Page, ask: () => Promise<void>): Promise<Uint8Array> {
  const file = page.waitForEvent('download');
  await ask();
  return readFileSync(await (await file).path());
}

it('an exercise is handed out, answered with checks on the spot, and marked', async () => {
  const { page } = await openApp();
  await begin(page, 'Blank book');
  const press = (name: string) =>
    page.locator('dialog').getByRole('button', { name, exact: true }).first().click();
  const open = () => page.locator('.head').getByRole('button', { name: 'Exercise' }).click();

  await page.getByRole('button', { name: 'Add a sheet' }).first().click();
  await page
    .locator('dialog')
    .getByRole('button', { name: /^An exercise/ })
    .click();
  await page
    .locator('dialog')
    .getByRole('button', { name: /Stops and f-numbers/ })
    .click();
  await expect.poll(() => page.locator('.head h1').innerText()).toBe('Stops and f-numbers');
  await open();
  await page.locator('dialog [name=names]').fill('Name\nMira Holm\nJun Park');
  await page.locator('dialog [name=seed]').fill('7');
  const zip = unzipSync(await saved(page, () => press('Make the hand-outs')));
  expect(Object.keys(zip).toSorted()).toEqual(['Jun Park.halfstop', 'Mira Holm.halfstop']);
  const mine = zip['Jun Park.halfstop'] ?? new Uint8Array();
  expect(new TextDecoder().decode(mine)).not.toContain('"expected"');
  const key = await saved(page, () => press('Save the key'));

  // The learner, who has nothing but the hand-out.
  const learner = await openApp();
  const chooses = () =>
    learner.page
      .getByRole('button', { name: /Open a file/ })
      .first()
      .click();
  await learner.page.evaluate(() => Reflect.deleteProperty(window, 'showOpenFilePicker'));
  await handed(learner.page, 'Jun Park.halfstop', mine, chooses);
  await learner.page.locator('.head').getByRole('button', { name: 'Exercise' }).click();
  const asked = learner.page.locator('dialog .asked > li').first();
  await asked.locator('input').fill('three');
  await asked.locator('input').press('Tab');
  await expect.poll(() => asked.locator('.said').innerText()).toMatch(/stops/);
  await asked.locator('input').fill('=FSTOPS(B2,B3)');
  await asked.locator('input').press('Tab');
  await asked.getByRole('button', { name: /^Check/ }).click();
  await expect.poll(() => asked.locator('.said').innerText()).toBe('Right.');
  expect(await asked.innerText()).toContain('checked 1 time');
  await learner.page.locator('dialog header button').click();
  const back = await saved(learner.page, () => learner.page.keyboard.press('Control+s'));

  // Marked by the key alone, in another window.
  const teacher = await openApp();
  await teacher.page.evaluate(() => Reflect.deleteProperty(window, 'showOpenFilePicker'));
  await handed(teacher.page, 'KEY.json', key, () =>
    teacher.page
      .getByRole('button', { name: /Open a file/ })
      .first()
      .click(),
  );
  await teacher.page.locator('.sheet-link', { hasText: 'Stops and f-numbers' }).click();
  await teacher.page.locator('.head').getByRole('button', { name: 'Exercise' }).click();
  const marks = teacher.page.locator('dialog');
  await marks.getByRole('button', { name: 'Mark', exact: true }).click();
  await handed(teacher.page, 'homework.halfstop', back, () =>
    marks.getByRole('button', { name: 'Choose files' }).click(),
  );
  await expect.poll(() => marks.locator('.marks').innerText()).toMatch(/Jun Park\s+2 of 5 points/);
  expect(await marks.locator('.marks').innerText()).toContain('counted, renamed');
});
