import { command, go } from './command.mjs';

/** @typedef {import('playwright-core').Page} Page */

const box = (/** @type {Page} */ page, /** @type {string} */ name) =>
  page.getByRole('dialog', { name, exact: true });

/** What a command opens. @param {string} name @param {string} [title] */
const opened =
  (name, title = name) =>
  async (/** @type {Page} */ page) => {
    await command(page, name);
    await box(page, title).waitFor();
  };

async function remarks(/** @type {Page} */ page) {
  await go(page, 'V40', '=S12+E12');
  await go(page, 'V41', '=K12-B13');
  await opened('Remarks on the book', 'Remarks')(page);
}

async function versions(/** @type {Page} */ page) {
  await command(page, 'Keep a version');
  await page
    .getByRole('textbox', { name: 'Name of the version' })
    .fill('As rigged on the first day');
  await page.keyboard.press('Enter');
  await page.getByText('Kept a version').waitFor();
  await opened('Versions of this book')(page);
  await box(page, 'Versions of this book').getByRole('listitem').first().waitFor();
}

async function handOver(/** @type {Page} */ page) {
  await command(page, 'Hand-over sheet');
  await page.locator('dialog .handover').waitFor();
}

async function addFigure(/** @type {Page} */ page) {
  await go(page, 'A13');
  await opened('Add a figure')(page);
}

async function records(/** @type {Page} */ page) {
  await command(page, 'Record this set-up');
  await page.getByText('is recorded').waitFor();
  await opened('Records of set-ups')(page);
}

async function oneRecord(/** @type {Page} */ page) {
  await records(page);
  await page.getByRole('button', { name: 'View record Sail loft' }).first().click();
  await page.getByRole('button', { name: 'Make a rebuild sheet' }).waitFor();
}

/** Answered: the sentence under it is the longest that it says. */
async function solve(/** @type {Page} */ page) {
  await go(page, 'E13');
  await opened('Solve for a cell')(page);
  const field = (/** @type {string} */ name) =>
    box(page, 'Solve for a cell').getByRole('textbox', { name }).last();
  await field('equal to').fill('-2 stops');
  await field('by changing').fill('C13');
  await field('between').fill('f/1');
  await field('and').fill('f/22');
  await page.keyboard.press('Enter');
  await box(page, 'Solve for a cell').getByText(/E13/).last().waitFor();
}

async function spectra(/** @type {Page} */ page) {
  await opened('Spectra')(page);
  await page.getByRole('button', { name: 'Add sample spectra' }).click();
  await page.getByText('spectra added').waitFor();
}

/**
 * What stands over a sheet of the open sample book, by how a person comes to it.
 * @type {Readonly<Record<string, (page: Page) => Promise<void>>>}
 */
export const dialogs = {
  'hand-over': handOver,
  keyboard: opened('Keyboard'),
  settings: opened('Settings of the book'),
  remarks,
  export: opened('Export'),
  versions,
  fixtures: opened('Fixtures'),
  spectra,
  'add-sheet': opened('Add a sheet'),
  'add-figure': addFigure,
  names: opened('Names of the book', 'Names'),
  quantity: opened('What a cell measures', 'What it measures'),
  target: opened('What a cell should come to', 'What it should come to'),
  'number-format': opened('How it is written'),
  'sheet-properties': opened('Title, purpose and phase', 'This sheet'),
  replace: opened('Find and replace'),
  solve,
  sweep: opened('Sweep a cell over values'),
  records,
  record: oneRecord,
  about: opened('About Halfstop'),
};
