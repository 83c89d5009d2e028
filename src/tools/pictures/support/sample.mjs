/**
 * Opens the sample book at a cell and waits until it calculates.
 * @param {import('playwright-core').Page} page
 * @param {string} address
 */
export async function openSample(page, address) {
  await page.getByRole('button', { name: 'Harbour Hours' }).first().click();
  await page.locator('.grid[data-ready]').waitFor();
  const box = page.getByRole('textbox', { name: 'Go to an address or a name' });
  await box.click();
  await box.fill(address);
  await box.press('Enter');
  await page.locator('aside.slip').getByText(address).waitFor({ state: 'attached' });
  await page.getByText(/agree/).filter({ visible: true }).first().waitFor();
}
