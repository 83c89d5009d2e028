/** On a small laptop. */
export const scene = {
  file: 'dist/pictures/laptop-dark.png',
  viewport: { width: 1280, height: 800 },
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await page.click('.card >> text=Harbour Hours');
    await page.waitForSelector('.grid[data-ready]');
    await page.click('.strip button[aria-label^="Fill side"]');
  },
};
