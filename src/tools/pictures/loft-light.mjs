import { openSample } from './support/sample.mjs';

export const scene = {
  file: 'templates/harbour-hours/pictures/loft-light.png',
  viewport: { width: 1440, height: 900 },
  theme: 'light',
  set: (/** @type {import('playwright-core').Page} */ page) => openSample(page, 'E17'),
};
