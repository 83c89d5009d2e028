import type { Browser, Page } from 'playwright-core';
import { afterAll, expect, inject, test } from 'vitest';
import { readBook } from '../../src/book/form/read.ts';
import { Random } from '../fuzz/book/random.ts';
import { acts, backToSheet, drawn } from '../support/acts.ts';
import { launchChromium } from '../../src/tools/chromium.mjs';
import { watchFaults } from '../support/faults.ts';
import { bookFile, waitForSaved } from '../support/kept.ts';
import { runs } from '../support/runs.ts';
import { begin, handOn } from '../support/sheet.ts';

/** In two hours, an act every three seconds; on a busy machine `ACTS` may ask for fewer, further apart. */
const count = Number(process.env['ACTS'] ?? runs(120, 2_400));
const seconds = 7_200 / count;
const looks = 24;
const most = 0.05;
const seed = Number(process.env['SEED'] ?? 1_307);

let browser: Browser | undefined;

afterAll(() => browser?.close());

test('two hours of random editing leave the heap as it was half way', async ({ task }) => {
  const page = await open();
  const faults = await watchFaults(page.context(), new URL(inject('app')).origin);
  await page.goto(inject('app'));
  const heap = await heapOf(page);
  await begin(page, 'sample book');
  const sheets = await bookFile(page);
  const random = new Random(seed);
  const done = new Set<string>();
  const found: number[] = [];
  for (let at = 1; at <= count; at += 1) {
    const act = drawn(random);
    done.add(act.name);
    await act.run(page, random);
    await backToSheet(page);
    await page.clock.fastForward(seconds * 1_000);
    if (at % Math.ceil(count / looks) > 0) continue;
    found.push(await heap());
    console.log(`${String(at)} acts: ${inMegabytes(found.slice(-1))} MB`);
  }
  await waitForSaved(page);
  const after = await bookFile(page);
  expect(after).not.toBe(sheets);
  expect(readBook(after).ok).toBe(true);
  if (count >= 1_000) expect(acts.filter(({ name }) => !done.has(name))).toEqual([]);
  expect(await faults.settle()).toEqual([]);
  const grown = growth(found.slice(found.length / 2));
  task.meta.measured = `${String(count)} acts; heap ${inMegabytes(found)} MB: ${(100 * grown).toFixed(1)} % over the last half`;
  expect(grown).toBeLessThan(most);
});

const inMegabytes = (sizes: readonly number[]) =>
  sizes.map((bytes) => (bytes / 1e6).toFixed(1)).join(', ');

/** A browser as people have it, in which code that runs for long is made fast; its clock can be put on. */
async function open(): Promise<Page> {
  browser = await launchChromium();
  const context = await browser.newContext({ locale: 'en-GB', serviceWorkers: 'block' });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  context.setDefaultTimeout(0);
  await context.clock.install();
  return context.newPage();
}

/** What the page holds on to, in the same state each time: nothing open over the sheet, at its first cell. */
async function heapOf(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.enable');
  return async () => {
    await handOn(page).go('A1');
    await waitForSaved(page);
    for (let times = 0; times < 3; times += 1) await session.send('HeapProfiler.collectGarbage');
    const { usedSize } = await session.send('Runtime.getHeapUsage');
    return usedSize;
  };
}

/** By how much of itself the straight line through them rises, from the first to the last. */
function growth(values: readonly number[]): number {
  const middle = (values.length - 1) / 2;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const rise = values.reduce((sum, value, at) => sum + (at - middle) * (value - mean), 0);
  const run = values.reduce((sum, _, at) => sum + (at - middle) ** 2, 0);
  const slope = rise / run;
  return (slope * (values.length - 1)) / (mean - slope * middle);
}
