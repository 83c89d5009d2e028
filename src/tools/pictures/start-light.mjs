/** The start page in the light theme. */
export const scene = {
  file: 'dist/pictures/start-light.png',
  viewport: { width: 1280, height: 800 },
  theme: 'light',
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await page.waitForSelector('.card');
  },
};
