import { openSample } from './support/sample.mjs';

export const scene = {
  file: 'templates/harbour-hours/pictures/loft-phone.png',
  viewport: { width: 390, height: 844 },
  touch: true,
  scale: 2,
  set: (/** @type {import('playwright-core').Page} */ page) => openSample(page, 'C13'),
};
