import { screens } from './support/screens.mjs';

/** The tones of a frame on the ladder, with the user’s own signal levels. */
export const scene = {
  file: 'templates/harbour-hours/pictures/tones-dark.png',
  viewport: { width: 1440, height: 800 },
  set: screens['signal-ladder'],
};
