import { mkdirSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildIfStale } from './build.mjs';
import { launchChromium } from './chromium.mjs';
import { dist, root } from './root.mjs';
import { serve } from './serve.mjs';

/**
 * A picture of the app, taken from the real thing. Each src/tools/pictures/NAME.mjs exports one as
 * `scene`.
 * @typedef {object} Scene
 * @property {string} file where the picture goes, from the top of the project
 * @property {{ width: number, height: number }} [viewport] 1280 × 800 when not said
 * @property {'dark' | 'light'} [theme] dark when not said
 * @property {boolean} [touch]
 * @property {number} [scale] device pixels a CSS pixel; 1 when not said
 * @property {(page: import('playwright-core').Page) => Promise<void>} set works the app, which is
 *   open and empty, until the picture can be taken
 */

const folder = join(root, 'src/tools/pictures');

/** @returns {Promise<(Scene & { name: string })[]>} */
async function scenes() {
  const files = readdirSync(folder).filter((file) => file.endsWith('.mjs'));
  const read = async (/** @type {string} */ file) => {
    const { scene } = await import(pathToFileURL(join(folder, file)).href);
    return { ...scene, name: file.slice(0, -4) };
  };
  return Promise.all(files.sort().map(read));
}

/** @param {import('playwright-core').Browser} browser @param {string} url @param {Scene} scene */
async function take(browser, url, scene) {
  const context = await browser.newContext({
    viewport: scene.viewport ?? { width: 1280, height: 800 },
    colorScheme: scene.theme ?? 'dark',
    hasTouch: scene.touch ?? false,
    deviceScaleFactor: scene.scale ?? 1,
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  await page.goto(url);
  await scene.set(page);
  await page.evaluate(() => document.fonts.ready);
  const path = join(root, scene.file);
  mkdirSync(dirname(path), { recursive: true });
  await page.screenshot({ path, caret: 'hide', animations: 'disabled' });
  await context.close();
}

const wanted = process.argv.slice(2);
const all = await scenes();
const chosen = all.filter(({ name }) => wanted.length === 0 || wanted.includes(name));
if (chosen.length === 0) {
  console.error(`No such picture. There are ${all.map(({ name }) => name).join(', ')}.`);
  process.exit(2);
}
if (!(await buildIfStale())) process.exit(1);
const { url, close } = await serve({ folder: dist });
const browser = await launchChromium();
try {
  for (const scene of chosen) {
    await take(browser, url, scene);
    console.log(scene.file);
  }
} finally {
  await browser.close();
  await close();
}
