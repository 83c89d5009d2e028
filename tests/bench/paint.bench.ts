import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { writeBook } from '../../src/book/form/write.ts';
import { buildIfStale } from '../../src/tools/build.mjs';
import { launchChromium } from '../../src/tools/chromium.mjs';
import { dist } from '../../src/tools/root.mjs';
import { serve } from '../../src/tools/serve.mjs';
import { begin, handOn, ready, type SheetHand } from '../support/sheet.ts';
import { bookOf, countingMeans } from './books.ts';
import type { Row } from './bench.ts';

export const name = 'From the key to the painted cell, in Chromium on the built app';

const dependants = 10_000;
const turns = 25;
/** Of a screen that shows sixty pictures a second, in milliseconds. */
const frame = 1000 / 60;

/** A key in A1, and formulas in C that all look at it. */
const wide = () =>
  writeBook(
    bookOf(countingMeans(), dependants, (row) =>
      row === 0 ? ['100 lx', '', '=STOPS(200,$A$1)'] : ['', '', `=STOPS(${row + 1},$A$1)`],
    ).document,
  );

/**
 * A script for the page: `painted` becomes the milliseconds from the next key to the end of the frame
 * in which that cell shows another text. A text, because the compiler of this file would leave its own
 * helpers in a function.
 */
const watch = (row: number, column: number) => `
  window.painted = new Promise((resolve) => {
    const cell = '[aria-rowindex="${row + 2}"] [role=gridcell][aria-colindex="${column + 2}"]';
    const text = () => [...document.querySelectorAll(cell)].at(-1).textContent;
    const before = text();
    let pressed = Infinity;
    const key = ({ timeStamp }) => { pressed = timeStamp; };
    addEventListener('keydown', key, { capture: true, once: true });
    const look = () => {
      if (pressed === Infinity || text() === before) requestAnimationFrame(look);
      else setTimeout(() => resolve(performance.now() - pressed));
    };
    requestAnimationFrame(look);
  });
  undefined`;

/** Milliseconds from Enter on this text until the cell that watches it is painted. */
async function typed(
  page: Page,
  { go }: SheetHand,
  address: string,
  text: string,
  seen: { row: number; column: number },
): Promise<number> {
  await go(address);
  await page.keyboard.type(text);
  await page.evaluate(watch(seen.row, seen.column));
  await page.keyboard.press('Enter');
  return page.evaluate<number>('window.painted');
}

async function openFile(browser: Browser, url: string, text: string): Promise<Page> {
  const folder = mkdtempSync(join(tmpdir(), 'halfstop-bench-'));
  const path = join(folder, 'book.json');
  writeFileSync(path, text);
  const page = await browser.newPage();
  // The browser’s own picker cannot be worked from outside, a file field can.
  await page.addInitScript('window.showOpenFilePicker = undefined');
  await page.goto(url);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  await (await chooser).setFiles(path);
  await ready(page);
  rmSync(folder, { recursive: true });
  return page;
}

/**
 * Takes the two in turn and gives their means over the quickest fifth of the turns. A browser is
 * several processes, so that other work on the machine delays it more than a loop: the quick turns
 * are those that it left alone.
 */
async function inTurn(
  one: (turn: number) => Promise<number>,
  other: (turn: number) => Promise<number>,
): Promise<[number, number]> {
  const times: [number, number][] = [];
  // The first turn warms up.
  for (let turn = 0; turn <= turns; turn += 1) {
    const both: [number, number] = [await one(turn), await other(turn)];
    if (turn > 0) times.push(both);
  }
  const quick = times.toSorted(([a, b], [c, d]) => a + b - c - d).slice(0, Math.ceil(turns / 5));
  const mean = (of: 0 | 1) => quick.reduce((sum, both) => sum + both[of], 0) / quick.length;
  return [mean(0), mean(1)];
}

const inFrames = (time: number): string => `${(time / frame).toFixed(1)} frames`;

/** Milliseconds that the engine took of what was typed last. */
const engineTime = (page: Page): Promise<number> =>
  page.evaluate<number>("performance.getEntriesByName('recalculate').at(-1).duration");

async function manyDependants(browser: Browser, app: string): Promise<Row> {
  const page = await openFile(browser, app, wide());
  const hand = handOn(page);
  const [took, tookAgainst] = await inTurn(
    (turn) => typed(page, hand, 'A1', `${turn + 1} lx`, { row: 0, column: 2 }),
    () => engineTime(page),
  );
  return {
    what: `type a key that ${dependants.toLocaleString('en')} formulas look at, ${inFrames(took)}`,
    took,
    against: 'the engine’s own part of it',
    tookAgainst,
    atMost: 2,
  };
}

async function sampleBook(browser: Browser, app: string): Promise<Row> {
  const open = async (card: string) => {
    const page = await browser.newPage();
    await page.goto(app);
    return { page, hand: await begin(page, card) };
  };
  const sample = await open('Harbour Hours');
  const empty = await open('Blank book');
  const [took, tookAgainst] = await inTurn(
    async (turn) => {
      await sample.page.bringToFront();
      return typed(sample.page, sample.hand, 'C13', turn % 2 ? 'f/2' : 'f/4', {
        row: 12,
        column: 5,
      });
    },
    async (turn) => {
      await empty.page.bringToFront();
      return typed(empty.page, empty.hand, 'C13', turn % 2 ? 'f/2' : 'f/4', { row: 12, column: 2 });
    },
  );
  return {
    what: `type a reading of the sample book until its verdict is there, ${inFrames(took)}`,
    took,
    against: `the same entry in an empty grid of the same size, ${inFrames(tookAgainst)}`,
    tookAgainst,
  };
}

export async function run(): Promise<Row[]> {
  if (!(await buildIfStale())) throw new Error('The app does not build.');
  const app = await serve({ folder: dist });
  const browser = await launchChromium();
  try {
    return [await manyDependants(browser, app.url), await sampleBook(browser, app.url)];
  } finally {
    await browser.close();
    await app.close();
  }
}
