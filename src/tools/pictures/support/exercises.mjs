import { command } from './command.mjs';

/** @typedef {import('playwright-core').Page} Page */

const box = (/** @type {Page} */ page) => page.locator('dialog.teach-box');

async function exercises(/** @type {Page} */ page) {
  await command(page, 'Exercises');
  await box(page).waitFor();
}

/** A sheet of ours, as a teacher has just added it. @param {Page} page */
async function exercise(page) {
  await exercises(page);
  await box(page)
    .getByRole('button', { name: /^Stops and f-numbers/ })
    .click();
  await page.getByRole('heading', { level: 1, name: 'Stops and f-numbers' }).waitFor();
}

/** @param {string} tab */
const tabOf = (tab) => async (/** @type {Page} */ page) => {
  await exercise(page);
  await exercises(page);
  await box(page).getByRole('button', { name: tab, exact: true }).click();
};

const learners = 'Name\nMira Holm\nJun Park\nAurelia von Falkenried-Oosterhuis';

/** Handed out to a class. @param {Page} page */
async function handedOut(page) {
  await tabOf('Hand out to a class')(page);
  await box(page).locator('[name=names]').fill(learners);
  await box(page).locator('[name=seed]').fill('Autumn, first term');
  const zip = page.waitForEvent('download');
  await box(page).getByRole('button', { name: 'Make the hand-outs' }).click();
  return /** @type {string} */ (await (await zip).path());
}

async function handOut(/** @type {Page} */ page) {
  await handedOut(page);
  await box(page).getByRole('button', { name: 'Save the key' }).waitFor();
}

/** What came back: the hand-outs as they went out, so that every answer is wanting. @param {Page} page */
async function marks(page) {
  const zip = await handedOut(page);
  await box(page).getByRole('button', { name: 'Mark', exact: true }).click();
  const asked = page.waitForEvent('filechooser');
  await box(page).getByRole('button', { name: 'Choose files' }).click();
  await (await asked).setFiles(zip);
  await box(page).locator('.marks').waitFor();
}

/**
 * The screens of a teacher, by how a person comes to them from the open sample book.
 * @type {Readonly<Record<string, (page: Page) => Promise<void>>>}
 */
export const exerciseScreens = {
  exercises,
  exercise,
  ask: tabOf('Ask on this sheet'),
  'hand-out': handOut,
  marks,
};
