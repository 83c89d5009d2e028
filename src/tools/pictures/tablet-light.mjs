/** On a tablet, upright. */
export const scene = {
  file: 'dist/pictures/tablet-light.png',
  viewport: { width: 820, height: 1180 },
  theme: 'light',
  touch: true,
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await page.click('.card >> text=Harbour Hours');
    await page.waitForSelector('.grid[data-ready]');
    await page.click('.strip button[aria-label^="Fill side"]');
  },
};
