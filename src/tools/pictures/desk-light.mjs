/** The same in the light theme. */
export const scene = {
  file: 'dist/pictures/desk-light.png',
  viewport: { width: 1440, height: 900 },
  theme: 'light',
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await page.click('.card >> text=Harbour Hours');
    await page.waitForSelector('.grid[data-ready]');
    await page.click('.strip button[aria-label^="Fill side"]');
  },
};
