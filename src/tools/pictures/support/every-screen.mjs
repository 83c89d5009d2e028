import { screens } from './screens.mjs';

const sizes = {
  phone: { width: 360, height: 760 },
  tablet: { width: 820, height: 1180 },
  laptop: { width: 1440, height: 900 },
  desk: { width: 1280, height: 800 },
  wall: { width: 3840, height: 2160 },
};

/** @typedef {keyof typeof sizes} Size */

/** @param {string} screen @returns {readonly Size[]} the sizes at which a screen is looked at */
const sizesOf = (screen) => {
  if (screen === 'big-sheet') return ['phone', 'tablet', 'desk', 'wall'];
  return onWall.has(screen) ? ['phone', 'tablet', 'laptop', 'wall'] : ['phone', 'tablet', 'laptop'];
};

/** Looked at on the largest screen too. */
const onWall = new Set(['start', 'sheet', 'survey', 'figures']);

/** @param {string} screen @returns {readonly ('dark' | 'light' | 'metering')[]} */
const themesOf = (screen) =>
  screen.startsWith('walk') ? ['metering', 'dark', 'light'] : ['dark', 'light'];

/** Every screen as a scene of its own, named like `walk@phone-metering`. */
export function everyScreen() {
  return Object.entries(screens).flatMap(([screen, set]) =>
    sizesOf(screen).flatMap((size) =>
      themesOf(screen).map((theme) => ({
        name: `${screen}@${size}-${theme}`,
        file: `dist/pictures/${screen}@${size}-${theme}.png`,
        viewport: sizes[size],
        theme,
        touch: size === 'phone' || size === 'tablet',
        set,
      })),
    ),
  );
}
