import { mkdirSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildIfStale } from './build.mjs';
import { launchChromium } from './chromium.mjs';
import { everyScreen } from './pictures/support/every-screen.mjs';
import { dist, root } from './root.mjs';
import { serve } from './serve.mjs';

/**
 * A picture of the app, taken from the real thing. Each src/tools/pictures/NAME.mjs exports one as
 * `scene`: those of the README, which are kept. Every screen at every size is made beside them in
 * dist/pictures, to be looked at.
 * @typedef {object} Scene
 * @property {string} name
 * @property {string} file where the picture goes, from the top of the project
 * @property {{ width: number, height: number }} [viewport] 1280 × 800 when not said
 * @property {'dark' | 'light' | 'metering'} [theme] dark when not said
 * @property {boolean} [touch]
 * @property {number} [scale] device pixels a CSS pixel; 1 when not said
 * @property {(page: import('playwright-core').Page) => Promise<void>} set works the app, which is
 *   open and empty, until the picture can be taken
 */

const folder = join(root, 'src/tools/pictures');

/** @returns {Promise<Scene[]>} */
async function keptScenes() {
  const files = readdirSync(folder).filter((file) => file.endsWith('.mjs'));
  const read = async (/** @type {string} */ file) => {
    const { scene } = await import(pathToFileURL(join(folder, file)).href);
    return { ...scene, name: file.slice(0, -4) };
  };
  return Promise.all(files.sort().map(read));
}

/** @param {import('playwright-core').Browser} browser @param {string} url @param {Scene} scene */
async function take(browser, url, scene) {
  const { theme = 'dark', touch = false } = scene;
  const context = await browser.newContext({
    viewport: scene.viewport ?? { width: 1280, height: 800 },
    colorScheme: theme === 'light' ? 'light' : 'dark',
    hasTouch: touch,
    isMobile: touch,
    deviceScaleFactor: scene.scale ?? 1,
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
  });
  context.setDefaultTimeout(15_000);
  await context.addInitScript((/** @type {string} */ chosen) => {
    // The browser’s own picker cannot be worked from outside, a file field can.
    Reflect.set(window, 'showOpenFilePicker', undefined);
    if (chosen === 'metering') localStorage.setItem('halfstop-theme', chosen);
  }, theme);
  try {
    const page = await context.newPage();
    await page.goto(url);
    await scene.set(page);
    await page.evaluate(() => document.fonts.ready);
    const path = join(root, scene.file);
    mkdirSync(dirname(path), { recursive: true });
    await page.screenshot({ path, caret: 'hide', animations: 'disabled' });
  } finally {
    await context.close();
  }
}

const wanted = process.argv.slice(2);
const all = [...(await keptScenes()), ...everyScreen()];
// `walk` stands for every size and theme of it.
const chosen = all.filter(
  ({ name }) =>
    wanted.length === 0 || wanted.some((one) => name === one || name.startsWith(`${one}@`)),
);
if (chosen.length === 0) {
  const names = new Set(all.map(({ name }) => name.split('@')[0]));
  console.error(`No such picture. There are ${[...names].join(', ')}.`);
  process.exit(2);
}
if (!(await buildIfStale())) process.exit(1);
const { url, close } = await serve({ folder: dist });
const browser = await launchChromium();
try {
  for (const scene of chosen) {
    try {
      await take(browser, url, scene);
      console.log(scene.file);
    } catch (reason) {
      process.exitCode = 1;
      console.error(`${scene.name}: ${reason instanceof Error ? reason.message : reason}`);
    }
  }
} finally {
  await browser.close();
  await close();
}
