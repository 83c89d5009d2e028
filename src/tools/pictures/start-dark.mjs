/** The start page. */
export const scene = {
  file: 'dist/pictures/start-dark.png',
  viewport: { width: 1280, height: 800 },
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await page.waitForSelector('.card');
  },
};
