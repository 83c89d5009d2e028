/** On a phone: the slip as the card of a point. */
export const scene = {
  file: 'dist/pictures/phone-slip-dark.png',
  viewport: { width: 390, height: 844 },
  touch: true,
  scale: 2,
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await page.click('.card >> text=Harbour Hours');
    await page.waitForSelector('.grid[data-ready]');
    await page.click('.strip button[aria-label^="Fill side"]');
    await page.click('.open-slip');
  },
};
