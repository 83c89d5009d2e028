/** The loft at a desk, in the dark theme: the fill side explained. */
export const scene = {
  file: 'dist/pictures/desk-dark.png',
  viewport: { width: 1440, height: 900 },
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await page.click('.card >> text=Harbour Hours');
    await page.waitForSelector('.grid[data-ready]');
    await page.click('.strip button[aria-label^="Fill side"]');
  },
};
