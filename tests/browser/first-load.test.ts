import { readFileSync } from 'node:fs';
import { expect, inject, test } from 'vitest';
import { compressing } from '../../src/tools/compressing.mjs';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

/** Builds differ a little from machine to machine; more is a change that the README must say. */
const tolerance = 0.05;

test('a first visit loads what the README says, up to a sheet of the sample book', async () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const stated = Number(
    /A first visit loads about ([\d,]+) kB/.exec(readme)?.[1]?.replace(',', ''),
  );
  expect(stated).toBeGreaterThan(0);
  const travelled = new Map<string, number>();
  const front = await compressing(inject('app'), (path, bytes) => travelled.set(path, bytes));
  try {
    const { page, close } = await openApp({ at: front.url });
    await begin(page, 'sample book');
    // What it fetches once it has time counts as well.
    await page.waitForLoadState('networkidle');
    await close();
  } finally {
    front.close();
  }
  const kilobytes = [...travelled.values()].reduce((sum, bytes) => sum + bytes, 0) / 1000;
  expect(kilobytes, `${kilobytes.toFixed(0)} kB; the README says ${String(stated)}`).toBeLessThan(
    stated * (1 + tolerance),
  );
  expect(
    kilobytes,
    `${kilobytes.toFixed(0)} kB; the README says ${String(stated)}`,
  ).toBeGreaterThan(stated * (1 - tolerance));
});
