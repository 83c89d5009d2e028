import { bigBook } from './big-book.mjs';
import { command } from './command.mjs';
import { dialogs } from './dialogs.mjs';
import { exerciseScreens } from './exercises.mjs';
import { openSample } from './sample.mjs';
import { figuresOver, sheets } from './sheets.mjs';

/** @typedef {import('playwright-core').Page} Page */

/** What is opened in the sample book, from its first sheet. @param {(page: Page) => Promise<void>} open */
const inSample = (open) => async (/** @type {Page} */ page) => {
  await openSample(page, 'F13');
  await open(page);
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
  await figuresOver(page);
}

/** Spot readings, with the user's own table of signal levels. */
async function signalLadder(/** @type {Page} */ page) {
  await sheets['survey']?.(page);
  await figuresOver(page);
}

async function cellMenu(/** @type {Page} */ page) {
  await openSample(page, 'C13');
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menu').waitFor();
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
  await page.getByRole('dialog', { name: 'Import' }).waitFor();
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
  'signal-ladder': inSample(signalLadder),
  'cell-menu': cellMenu,
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
  import: importing,
  bin,
  ...Object.fromEntries(
    Object.entries({ ...dialogs, ...sheets, ...exerciseScreens }).map(([name, open]) => [
      name,
      inSample(open),
    ]),
  ),
  'big-sheet': bigSheet,
  'big-contents': bigContents,
};
