import { openSample } from './support/sample.mjs';

/** The first picture of the README: the sail loft, the fill side selected, the Slip beside it. */
export const scene = {
  file: 'templates/harbour-hours/pictures/loft-dark.png',
  viewport: { width: 1440, height: 900 },
  set: (/** @type {import('playwright-core').Page} */ page) => openSample(page, 'F13'),
};
