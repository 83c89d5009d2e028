/** The start page. */
export const scene = {
  file: 'dist/pictures/start-dark.png',
  viewport: { width: 1280, height: 800 },
  async set(page) {
    await page.waitForSelector('.card');
  },
};
