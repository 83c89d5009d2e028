/** @typedef {import('playwright-core').Page} Page */

/** Runs a command by its name, as a person does who does not know where it stands. */
export const command = async (/** @type {Page} */ page, /** @type {string} */ name) => {
  await page.keyboard.press('Control+k');
  await page.locator('.finder-text').fill(name);
  await page.locator('#found [role=option]').first().waitFor();
  await page.keyboard.press('Enter');
};

/** Goes to a cell and types there, if there is something to type. @param {Page} page @param {string} at @param {string} [text] */
export async function go(page, at, text) {
  const name = page.getByRole('textbox', { name: 'Go to an address or a name' });
  await name.click();
  await name.fill(at);
  await name.press('Enter');
  if (text === undefined) return;
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}
