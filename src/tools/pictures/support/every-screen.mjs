import { screens } from './screens.mjs';

const sizes = {
  phone: { width: 390, height: 844 },
  tablet: { width: 820, height: 1180 },
  laptop: { width: 1440, height: 900 },
  desk: { width: 1280, height: 800 },
};

/** @typedef {keyof typeof sizes} Size */

/** @param {string} screen @returns {readonly Size[]} the sizes at which a screen is looked at */
const sizesOf = (screen) =>
  screen === 'big-sheet' ? ['phone', 'tablet', 'desk'] : ['phone', 'tablet', 'laptop'];

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
        touch: size !== 'laptop' && size !== 'desk',
        set,
      })),
    ),
  );
}
