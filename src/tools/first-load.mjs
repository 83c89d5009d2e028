import { buildIfStale } from './build.mjs';
import { launchChromium } from './chromium.mjs';
import { compressing, ending } from './compressing.mjs';
import { dist } from './root.mjs';
import { serve } from './serve.mjs';

/**
 * What the first visit costs, on the production build: what travels, compressed as a server would
 * compress it, and the time to a sheet that can be typed in. Each turn is a browser that has never
 * been here.
 */

const turns = 5;

/** @type {Readonly<Record<string, string>>} */
const kinds = { '.js': 'scripts', '.css': 'styles', '.html': 'page', '.woff2': 'typefaces' };
/** @param {import('playwright-core').Browser} browser @param {string} url */
async function visit(browser, url) {
  const context = await browser.newContext({ serviceWorkers: 'block', locale: 'en-GB' });
  const page = await context.newPage();
  const begun = performance.now();
  await page.goto(url);
  await page.locator('.card').first().waitFor();
  const start = performance.now() - begun;
  const clicked = performance.now();
  await page.getByRole('button', { name: 'Harbour Hours' }).first().click();
  await page.locator('.grid[data-ready]').waitFor();
  const grid = performance.now() - clicked;
  // What it fetches once it has time counts as well.
  await page.waitForLoadState('networkidle');
  await context.close();
  return { start, grid };
}

/** @param {number[]} values */
const median = (values) => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
const kilobytes = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(0)} kB`;
const seconds = (/** @type {number} */ time) => `${(time / 1000).toFixed(2)} s`;

if (!(await buildIfStale())) process.exit(1);
const server = await serve({ folder: dist });
/** @type {Map<string, number>} */
const travelled = new Map();
const front = await compressing(server.url, (path, bytes) => travelled.set(path, bytes));
const browser = await launchChromium();
try {
  const times = [];
  for (let turn = 0; turn < turns; turn += 1) times.push(await visit(browser, front.url));
  /** @type {Map<string, number>} */
  const byKind = new Map();
  for (const [path, bytes] of travelled) {
    const kind = kinds[ending(path)] ?? 'other';
    byKind.set(kind, (byKind.get(kind) ?? 0) + bytes);
  }
  const all = [...byKind.values()].reduce((sum, bytes) => sum + bytes, 0);
  for (const [kind, bytes] of [...byKind].sort(([, a], [, b]) => b - a))
    console.log(`${kind.padEnd(10)} ${kilobytes(bytes).padStart(8)}`);
  console.log(`${'all'.padEnd(10)} ${kilobytes(all).padStart(8)}, to a sheet of the sample book`);
  const start = median(times.map((time) => time.start));
  const grid = median(times.map((time) => time.grid));
  console.log(`start page ${seconds(start)}, from there to an editable grid ${seconds(grid)}`);
  console.log(`the middle of ${turns} first visits, ${seconds(start + grid)} in all`);
} finally {
  await browser.close();
  front.close();
  await server.close();
}
