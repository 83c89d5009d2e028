import { command } from './command.mjs';

/** @typedef {import('playwright-core').Page} Page */

const title = (/** @type {Page} */ page, /** @type {string | RegExp} */ name) =>
  page.getByRole('heading', { level: 1, name }).waitFor();

/** A sheet of the book, by its title in the contents. @param {string} name */
const shown = (name) => async (/** @type {Page} */ page) => {
  const drawer = page.locator('.open-contents');
  if (await drawer.isVisible()) await drawer.click();
  await page.locator('.sheet-link', { hasText: name }).click();
  await title(page, name);
};

/** The figures of the sheet in view, as tall as they are. */
export async function figuresOver(/** @type {Page} */ page) {
  await command(page, 'Go to the figures');
  const whole = page.getByRole('button', { name: 'Figures over the whole page' });
  if (await whole.isVisible()) await whole.click();
  await page.locator('.figure svg[role=img]').first().waitFor();
}

async function colours(/** @type {Page} */ page) {
  await shown('Match')(page);
  await figuresOver(page);
}

/** What a record of the first sheet is made into. @param {string} verb @param {RegExp} made */
const fromRecord = (verb, made) => async (/** @type {Page} */ page) => {
  await command(page, 'Record this set-up');
  await page.getByText('is recorded').waitFor();
  await command(page, 'Records of set-ups');
  await page.getByRole('button', { name: verb }).first().click();
  await title(page, made);
};

/** A sheet of ours that the sample has no use for. @param {string} name */
const added = (name) => async (/** @type {Page} */ page) => {
  await command(page, 'Add a sheet');
  const box = page.getByRole('dialog', { name: 'Add a sheet', exact: true });
  await box.getByRole('button', { name }).click();
  await title(page, name);
};

/**
 * Other sheets of the open sample book than the first, and what is made in it.
 * @type {Readonly<Record<string, (page: Page) => Promise<void>>>}
 */
export const sheets = {
  survey: shown('Reflected survey'),
  'set-plan': shown('Set plan'),
  power: shown('Power'),
  compare: shown('Compare'),
  choosing: shown('Choosing'),
  hire: shown('Hire'),
  match: shown('Match'),
  package: shown('Package'),
  log: shown('Set-up log'),
  'out-and-back': shown('Out and back'),
  'running-order': added('Running order'),
  'address-book': added('Address book'),
  colours,
  rebuild: fromRecord('Make a rebuild sheet', /^Rebuild of/),
  'match-report': fromRecord('Make a match report', /^Match report/),
};
