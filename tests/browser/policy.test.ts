import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { headerPolicy, metaPolicy } from '../../src/tools/policy.mjs';
import { dist, root } from '../../src/tools/root.mjs';
import { openApp } from '../support/browser.ts';

const builtPage = readFileSync(join(dist, 'index.html'), 'utf8');

/** Words that survive bundling and stand in no other library. */
const leftOut = [
  { library: 'moment', word: '_isAMomentObject', source: 'moment/moment.js' },
  { library: 'numbro', word: 'spaceSeparatedAbbreviation', source: 'numbro/dist/es/numbro.js' },
  { library: 'pikaday', word: 'pika-lendar', source: 'pikaday/pikaday.js' },
];

const script = /\.m?js$/;
const bundle = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((name) => script.test(name) && !name.startsWith('cli'))
  .map((name) => ({ name, text: readFileSync(join(dist, name), 'utf8') }));

test('the page opens, asks nothing of anyone else and nothing is refused', async () => {
  const { page, faults } = await openApp({ worker: true });
  await page.waitForLoadState('networkidle');
  expect(await page.title()).toContain('Halfstop');
  expect(await faults.settle()).toEqual([]);
});

test('the policy is in the page and in the answer of the server', async () => {
  const { page } = await openApp();
  const meta = page.locator('meta[http-equiv="Content-Security-Policy"]');
  expect(await meta.getAttribute('content')).toBe(metaPolicy);
  const { headers } = await fetch(inject('app'));
  expect(headers.get('content-security-policy')).toBe(headerPolicy);
});

test('the built page has no script, style or handler of its own', () => {
  const { scripts, styles, attributes } = inlined(builtPage);
  expect({ scripts, styles, attributes }).toEqual({ scripts: [], styles: [], attributes: [] });
});

test('the look for inlined code finds it', () => {
  const found = inlined('<style>p{}</style><script>x()</script><p style="a" onclick="b">');
  expect(found.scripts).toHaveLength(1);
  expect(found.styles).toHaveLength(1);
  expect(found.attributes).toHaveLength(2);
});

test.each(leftOut)('$library is not in the bundle', ({ word, source }) => {
  // The word must be one that the library really has, or the search would prove nothing.
  expect(readFileSync(join(root, 'node_modules', source), 'utf8')).toContain(word);
  expect(bundle.length).toBeGreaterThan(0);
  expect(bundle.filter(({ text }) => text.includes(word)).map(({ name }) => name)).toEqual([]);
});

test('nothing in the bundle evaluates text as code', () => {
  const evaluating = /\beval\(|\bnew Function\(/;
  expect(bundle.filter(({ text }) => evaluating.test(text)).map(({ name }) => name)).toEqual([]);
});

test('an inline style is refused and noticed', async () => {
  const { page, faults } = await openApp();
  await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
  expect(await faults.settle()).toContainEqual(expect.stringMatching(/^policy: style-src-attr/));
  expect(faults.take(/style/)).toBeGreaterThan(0);
});

test('a request to elsewhere is refused and noticed', async () => {
  const { page, faults } = await openApp();
  await page.evaluate(() => fetch('https://elsewhere.invalid/').catch(() => undefined));
  expect(await faults.settle()).toContainEqual(expect.stringMatching(/^policy: connect-src/));
  expect(faults.take(/elsewhere|connect/)).toBeGreaterThan(0);
});

test('an error in the console and an uncaught one are noticed', async () => {
  const { page, faults } = await openApp();
  await page.evaluate(() => {
    console.error('the lamp is out');
    setTimeout(() => {
      throw new Error('the breaker went');
    });
  });
  await page.waitForTimeout(50);
  expect(await faults.settle()).toEqual([
    'console: the lamp is out',
    expect.stringContaining('the breaker went'),
  ]);
  expect(faults.take(/./)).toBe(2);
});

function inlined(html: string): { scripts: string[]; styles: string[]; attributes: string[] } {
  return {
    scripts: html.match(/<script(?![^>]*\ssrc=)[^>]*>/gi) ?? [],
    styles: html.match(/<style[^>]*>/gi) ?? [],
    attributes: html.match(/\s(?:style|on\w+)\s*=/gi) ?? [],
  };
}
