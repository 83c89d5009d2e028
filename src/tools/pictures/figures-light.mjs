import { openSample } from './support/sample.mjs';

/** The figures of the loft over the whole page. */
export const scene = {
  file: 'dist/pictures/figures-light.png',
  viewport: { width: 1280, height: 1250 },
  theme: 'light',
  /** @param {import('playwright-core').Page} page */
  async set(page) {
    await openSample(page, 'A13');
    await page.getByRole('button', { name: 'Figures over the whole page' }).click();
    await page.locator('.figure svg[role=img]').nth(2).waitFor();
  },
};
