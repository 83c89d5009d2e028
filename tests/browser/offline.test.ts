import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { offlineList } from '../../src/tools/offline.mjs';
import { dist } from '../../src/tools/root.mjs';
import { serve } from '../../src/tools/serve.mjs';
import { openApp } from '../support/browser.ts';
import {
  bookFile,
  eventually,
  firstColumn,
  forbidKeeping,
  typeDown,
  waitForSaved,
  waitForState,
} from '../support/kept.ts';
import { begin, handOn, ready } from '../support/sheet.ts';

type Server = Awaited<ReturnType<typeof serve>>;

let folder: string;
let server: Server;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'halfstop-offline-'));
  cpSync(dist, folder, { recursive: true, filter: (path) => !path.includes(`${dist}/cli`) });
  server = await serve({ folder });
});

afterEach(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

/** The next build of the app: other words in one of its files, and the worker that goes with it. */
function newBuild(title: string): void {
  const page = join(folder, 'index.html');
  writeFileSync(
    page,
    readFileSync(page, 'utf8').replace(
      /name="description"\s+content="[^"]*"/,
      `name="description" content="${title}"`,
    ),
  );
  const script = readFileSync(join(folder, 'sw.js'), 'utf8');
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.') && entry.name !== 'sw.js')
    .map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1));
  const contents = Object.fromEntries(
    names.map((name) => [name, readFileSync(join(folder, name))] as const),
  );
  writeFileSync(join(folder, 'sw.js'), offlineList(contents) + script.replace(/^.*\n/, ''));
}

const start = (page: Page) => page.getByRole('heading', { name: 'A lighting workbook' });
const line = (page: Page) => page.getByText('A new version is ready. Reload when it suits you.');
const build = (page: Page) => page.locator('meta[name=description]').getAttribute('content');

const keptForOffline = (page: Page) =>
  page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });

async function opened(): Promise<Awaited<ReturnType<typeof openApp>>> {
  const app = await openApp({ worker: true, at: server.url });
  await keptForOffline(app.page);
  return app;
}

test('from the second visit it works with no server: sheets, functions, typefaces, licences', async () => {
  const { page, faults } = await opened();
  await server.close();
  await page.reload();
  await start(page).waitFor();
  expect(await page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  const sheet = await begin(page, 'Blank book');
  await sheet.type('A1', '=FSTOPS(1.4,2.8)');
  expect(await sheet.read('A1')).toContain('2');
  await waitForSaved(page);
  expect(await page.evaluate(() => document.fonts.check('16px "Source Sans 3 Variable"'))).toBe(
    true,
  );
  await page.reload();
  await ready(page);
  expect(await handOn(page).entry('A1')).toBe('=FSTOPS(1.4,2.8)');

  const licences = await page.evaluate(async () => (await fetch('THIRD-PARTY.txt')).text());
  expect(licences).toContain('hyperformula');
  faults.take(/sw\.js/);
});

test('the server has the worker and the manifest looked for anew each time, as what they are', async () => {
  const headers = async (path: string) => (await fetch(server.url + path)).headers;
  const script = await headers('sw.js');
  expect(script.get('cache-control')).toBe('no-cache');
  expect(script.get('content-type')).toMatch(/^text\/javascript/);
  expect(script.get('content-security-policy')).toContain("worker-src 'self'");
  const manifest = await headers('manifest.webmanifest');
  expect(manifest.get('content-type')).toMatch(/^application\/manifest\+json/);
});

test('each file of the build is kept, and nothing else', async () => {
  const { page } = await opened();
  const kept = await page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    const requests = await (await caches.open(name)).keys();
    return requests.map(({ url }) => decodeURIComponent(new URL(url).pathname).slice(1)).sort();
  });
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.') && entry.name !== 'sw.js')
    .map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1));
  expect(kept).toEqual(files.sort());
});

test('an update is offered and never forced; taken, every tab has kept its work first', async () => {
  const { page, context, faults } = await opened();
  await page.reload();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  const other = await context.newPage();
  await other.goto(server.url);
  await begin(other, 'Blank book');
  const before = await build(page);

  newBuild('the next build');
  await lookForUpdate(page);
  await line(page).waitFor();
  await typeDown(other, ['34 lx']);
  await page.reload();
  await ready(page);
  expect(await build(page), 'a reload alone does not bring it').toBe(before);

  await line(page).waitFor();
  await typeDown(other, ['56 lx']);
  await page.getByRole('button', { name: 'Reload', exact: true }).click();
  await page.waitForFunction(() =>
    document.querySelector('meta[name=description]')?.outerHTML.includes('the next build'),
  );
  await ready(page);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx']);

  expect(await build(other), 'the other tab goes on as it is').toBe(before);
  await line(other).waitFor();
  expect(firstColumn(await bookFile(other))).toEqual(['34 lx', '56 lx']);
  await other.getByRole('button', { name: 'Reload', exact: true }).click();
  await ready(other);
  expect(await build(other)).toBe('the next build');
  expect(firstColumn(await bookFile(other))).toEqual(['34 lx', '56 lx']);
  expect(await page.evaluate(() => caches.keys())).toHaveLength(2);
  expect(faults.all).toEqual([]);
});

test('work that cannot be kept holds an update back, with a sentence', async () => {
  const app = await openApp({ worker: true, at: server.url, before: forbidKeeping });
  const { page } = app;
  await keptForOffline(page);
  await page.reload();
  await begin(page, 'Blank book');
  await typeDown(page, ['12 lx']);
  await waitForState(page, /^\s*Not saved/);
  const before = await build(page);
  newBuild('the next build');
  await lookForUpdate(page);
  await page.getByRole('button', { name: 'Reload', exact: true }).click();
  await page.getByText(/there are changes that are not kept on this device/).waitFor();
  expect(await build(page)).toBe(before);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx']);
  await page.evaluate(() => dispatchEvent(new Event('allow-keeping')));
  await waitForSaved(page);
});

test('“Later” takes the line away', async () => {
  const { page } = await opened();
  await page.reload();
  await start(page).waitFor();
  newBuild('the next build');
  await lookForUpdate(page);
  await page.getByRole('button', { name: 'Later' }).click();
  await line(page).waitFor({ state: 'detached' });
});

test('a file that is not the one of this build is refused, and what was kept goes on', async () => {
  const { page, faults } = await opened();
  await page.reload();
  await start(page).waitFor();
  const before = await build(page);
  newBuild('the next build');
  writeFileSync(join(folder, 'theme.js'), 'broken()');
  await lookForUpdate(page).catch(() => undefined);
  await eventually(() =>
    page.evaluate(async () => {
      const { installing, waiting } = await navigator.serviceWorker.ready;
      return installing === null && waiting === null;
    }),
  ).toBe(true);
  await page.reload();
  await start(page).waitFor();
  expect(await build(page)).toBe(before);
  faults.take(/integrity|theme\.js/);
});

test('it can be installed: name, icons, colours of ours, and our files open with it', async () => {
  const { page, context } = await opened();
  const devtools = await context.newCDPSession(page);
  const { data, errors } = await devtools.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const manifest = JSON.parse(data ?? '{}') as Record<string, unknown>;
  expect(manifest).toMatchObject({ name: 'Halfstop', display: 'standalone' });
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // The browser of the tests stands in for a private window, where nothing is installed.
  expect(
    installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito'),
  ).toEqual([]);
  const tokens = readFileSync('src/app/tokens.css', 'utf8');
  const dark = (token: string) =>
    new RegExp(`--${token}: light-dark\\(#\\w+, (#\\w+)\\)`).exec(tokens)?.[1];
  expect(manifest['background_color']).toBe(dark('sheet'));
  expect(manifest['theme_color']).toBe(dark('rail'));
  expect(manifest['file_handlers']).toEqual([
    { action: './', accept: { 'application/x-halfstop': ['.halfstop'] } },
  ]);
});
