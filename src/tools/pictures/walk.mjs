import { screens } from './support/screens.mjs';

/** One point at a time, dimmed for metering. */
export const scene = {
  file: 'templates/harbour-hours/pictures/walk-metering.png',
  viewport: { width: 390, height: 800 },
  theme: 'metering',
  touch: true,
  scale: 2,
  set: screens['walk'],
};
