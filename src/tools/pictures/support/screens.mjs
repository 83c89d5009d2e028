import { bigBook } from './big-book.mjs';
import { openSample } from './sample.mjs';

/** @typedef {import('playwright-core').Page} Page */

/** Runs a command by its name, as a person does who does not know where it stands. */
const command = async (/** @type {Page} */ page, /** @type {string} */ name) => {
  await page.keyboard.press('Control+k');
  await page.locator('.finder-text').fill(name);
  await page.locator('#found [role=option]').first().waitFor();
  await page.keyboard.press('Enter');
};

const box = (/** @type {Page} */ page, /** @type {string} */ name) =>
  page.getByRole('dialog', { name }).waitFor();

/** A dialog of the sample book. @param {string} name @param {string} title @param {string} [at] */
const dialog =
  (name, title, at = 'F13') =>
  async (/** @type {Page} */ page) => {
    await openSample(page, at);
    await command(page, name);
    await box(page, title);
  };

async function start(/** @type {Page} */ page) {
  await page.locator('.card').first().waitFor();
}

/** The start page of someone who has two books. */
async function startWithBooks(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await command(page, 'Start page');
  await page.getByRole('button', { name: 'Tungsten dimming' }).click();
  await page.locator('.grid[data-ready]').waitFor();
  await command(page, 'Start page');
  await page.locator('.kept-book').nth(1).waitFor();
}

async function slip(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  const drawer = page.locator('.open-slip');
  if (await drawer.isVisible()) await drawer.click();
}

async function contents(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  const drawer = page.locator('.open-contents');
  if (await drawer.isVisible()) await drawer.click();
}

async function figures(/** @type {Page} */ page) {
  await openSample(page, 'A13');
  await command(page, 'Go to the figures');
  const whole = page.getByRole('button', { name: 'Figures over the whole page' });
  if (await whole.isVisible()) await whole.click();
  await page.locator('.figure svg[role=img]').first().waitFor();
}

/** A sheet of the sample book with its figures as tall as they are. @param {string} name */
async function sheetNamed(/** @type {Page} */ page, /** @type {string} */ name) {
  await openSample(page, 'A1');
  const drawer = page.locator('.open-contents');
  if (await drawer.isVisible()) await drawer.click();
  await page.locator('.sheet-link', { hasText: name }).click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** Spot readings, with the user's own table of signal levels. */
const survey = (/** @type {Page} */ page) => sheetNamed(page, 'Reflected survey');

async function signalLadder(/** @type {Page} */ page) {
  await survey(page);
  await command(page, 'Go to the figures');
  const whole = page.getByRole('button', { name: 'Figures over the whole page' });
  if (await whole.isVisible()) await whole.click();
  await page.locator('.figure svg[role=img]').first().waitFor();
}

async function cellMenu(/** @type {Page} */ page) {
  await openSample(page, 'C13');
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menu').waitFor();
}

async function handOver(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await command(page, 'Hand-over sheet');
  await page.locator('dialog .handover').waitFor();
}

async function walk(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await command(page, 'Walk through the readings');
  const view = page.locator('dialog.walk');
  await view.waitFor();
  await view.locator('.count').click();
  await view.locator('.readings button', { hasText: 'Fill side of face' }).first().click();
}

async function walkList(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await command(page, 'Walk through the readings');
  await page.locator('dialog.walk .count').click();
  await page.locator('dialog.walk .readings').waitFor();
}

async function finder(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await page.keyboard.press('Control+k');
  await page.locator('.finder-text').fill('how far');
  await page.locator('#found [role=option]').first().waitFor();
}

async function suggestions(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await page.locator('.entry-text').fill('=how far');
  await page.locator('[role=option]').first().waitFor();
}

async function menu(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await page.getByRole('button', { name: 'Book menu' }).click();
  await page.locator('#book-menu').waitFor();
}

/** Lux added to stops, and more that does not go together. */
async function remarks(/** @type {Page} */ page) {
  await openSample(page, 'V40');
  for (const [at, text] of [
    ['V40', '=S12+E12'],
    ['V41', '=K12-B13'],
  ]) {
    const name = page.getByRole('textbox', { name: 'Go to an address or a name' });
    await name.click();
    await name.fill(/** @type {string} */ (at));
    await name.press('Enter');
    await page.keyboard.type(/** @type {string} */ (text));
    await page.keyboard.press('Enter');
  }
  await command(page, 'Remarks on the book');
  await box(page, 'Remarks');
}

async function reference(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await page.keyboard.press('F1');
  await page.locator('.reference-body').waitFor();
}

async function referenceFunction(/** @type {Page} */ page) {
  await reference(page);
  await page.getByLabel('Find a function by what you want to know').fill('how far');
  await page.getByRole('option', { name: 'DISTANCEFOR' }).click();
  await page.locator('.reference-page h3.name').waitFor();
}

async function versions(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  await command(page, 'Keep a version');
  await page
    .getByRole('textbox', { name: 'Name of the version' })
    .fill('As rigged on the first day');
  await page.keyboard.press('Enter');
  await page.getByText('Kept a version').waitFor();
  await command(page, 'Versions of this book');
  await page
    .getByRole('dialog', { name: 'Versions of this book' })
    .getByRole('listitem')
    .first()
    .waitFor();
}

async function bin(/** @type {Page} */ page) {
  await startWithBooks(page);
  await page.locator('.kept .glyph').first().click();
  await page.getByRole('button', { name: /^Bin/ }).click();
  await page.getByRole('dialog').waitFor();
}

const levels = [
  'Point;Level (fc);Colour',
  'Key side;25;3200',
  'Fill side, metered from the far end of the slipway;6,5;3350',
  'Canvas;4,2;5600',
].join('\n');

async function importing(/** @type {Page} */ page) {
  await openSample(page, 'F13');
  const asked = page.waitForEvent('filechooser');
  await command(page, 'Import');
  const file = { name: 'Levels.csv', mimeType: 'text/csv', buffer: Buffer.from(levels) };
  await (await asked).setFiles(file);
  await box(page, 'Import');
  await page.getByRole('button', { name: 'Import', exact: true }).waitFor();
}

async function bigSheet(/** @type {Page} */ page) {
  await start(page);
  const asked = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  const buffer = Buffer.from(bigBook());
  const file = { name: 'Long day.halfstop.json', mimeType: 'application/json', buffer };
  await (await asked).setFiles(file);
  await page.locator('.grid[data-ready]').waitFor();
}

async function bigContents(/** @type {Page} */ page) {
  await bigSheet(page);
  const drawer = page.locator('.open-contents');
  if (await drawer.isVisible()) await drawer.click();
}

/**
 * Every screen and dialog, by how a person comes to it from the app as it opens, empty.
 * @type {Readonly<Record<string, (page: Page) => Promise<void>>>}
 */
export const screens = {
  start,
  'start-books': startWithBooks,
  sheet: (page) => openSample(page, 'F13'),
  survey,
  'signal-ladder': signalLadder,
  'cell-menu': cellMenu,
  'hand-over': handOver,
  contents,
  slip,
  suggestions,
  menu,
  figures,
  walk,
  'walk-list': walkList,
  finder,
  reference,
  'reference-function': referenceFunction,
  keyboard: dialog('Keyboard', 'Keyboard'),
  settings: dialog('Settings', 'Settings of the book'),
  remarks,
  export: dialog('Export', 'Export'),
  import: importing,
  versions,
  bin,
  fixtures: dialog('Fixtures', 'Fixtures'),
  'add-sheet': dialog('Add a sheet', 'Add a sheet'),
  'add-figure': dialog('Add a figure', 'Add a figure', 'A13'),
  names: dialog('Names of the book', 'Names'),
  'number-format': dialog('How it is written', 'How it is written'),
  'sheet-properties': dialog('Title, purpose and phase', 'This sheet'),
  replace: dialog('Find and replace', 'Find and replace'),
  about: dialog('About Halfstop', 'About Halfstop'),
  'big-sheet': bigSheet,
  'big-contents': bigContents,
};
