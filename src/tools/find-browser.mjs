import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { spawnSync } from 'node:child_process';
import { root } from './root.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** Where they live on systems that do not put them on the path. */
const elsewhere = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** A Chromium that is here already: the one named by CHROMIUM_PATH, installed, or downloaded before. */
async function browserHere() {
  const named = process.env['CHROMIUM_PATH'];
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`CHROMIUM_PATH names ${named}, and there is no such file.`);
  }
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const installed = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  const { chromium } = await import('playwright-core');
  return [...installed, ...elsewhere, chromium.executablePath()].find((path) => existsSync(path));
}

/** @param {string} command @param {readonly string[]} args */
const attempt = (command, args) =>
  spawnSync(command, args, { cwd: root, stdio: ['ignore', process.stderr.fd, process.stderr.fd] });

/** Ways to get one, tried in order. */
const ways = [
  () => {
    console.error('No Chromium found here; downloading one (playwright-core install chromium).');
    const cli = join(root, 'node_modules/playwright-core/cli.js');
    attempt(process.execPath, [cli, 'install', 'chromium']);
  },
  () => {
    if (process.getuid?.() !== 0) return;
    console.error('Installing the Chromium of this system (apt-get install chromium).');
    attempt('apt-get', ['update', '-q']);
    attempt('apt-get', ['install', '-q', '-y', '--no-install-recommends', 'chromium']);
  },
];

/** The path of a Chromium, which is fetched if there is none. @returns {Promise<string>} */
export async function findBrowser() {
  const here = await browserHere();
  if (here) return here;
  for (const way of ways) {
    way();
    const found = await browserHere();
    if (found) return found;
  }
  throw new Error('The browser tests need Chromium. Install it, or name it in CHROMIUM_PATH.');
}
