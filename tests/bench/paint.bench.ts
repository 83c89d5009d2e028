import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { writeBook } from '../../src/book/form/write.ts';
import { enter } from '../../src/book/make/enter.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { buildIfStale } from '../../src/tools/build.mjs';
import { launchChromium } from '../../src/tools/chromium.mjs';
import { dist } from '../../src/tools/root.mjs';
import { serve } from '../../src/tools/serve.mjs';
import { bookOf, countingMeans, firstSheet, median, must } from './books.ts';
import type { Row } from './bench.ts';

export const name = 'From typing to the painted cell, in Chromium on the built app';

const dependants = 10_000;
const turns = 7;

/** A key in A1 and formulas that all look at it. */
const book = () =>
  bookOf(countingMeans(), dependants, (row) =>
    row === 0 ? ['100 lx', '', '=STOPS(200,$A$1)'] : ['', '', `=STOPS(${row + 1},$A$1)`],
  );

/** Milliseconds that the same edit takes without a screen: the book changes, the engine recalculates. */
function engineTime(): number {
  const means = countingMeans();
  const edited = book();
  const engine = connectEngine(edited);
  const place = { sheet: firstSheet(edited), row: 0, column: 0 };
  const times = Array.from({ length: turns + 1 }, (_, turn) => {
    const made = enter(edited.document, means, [{ ...place, text: `${turn + 1} lx` }]);
    const begun = performance.now();
    must(edited, made);
    engine.valueOf({ ...place, column: 2 });
    return performance.now() - begun;
  });
  engine.dispose();
  return median(times.slice(1));
}

/** Milliseconds from the Enter key to the first frame after C1 shows its new value. */
async function paintTime(page: Page, turn: number): Promise<number> {
  const box = page.getByRole('textbox', { name: 'Go to an address or a name' });
  await box.click();
  await box.fill('A1');
  await box.press('Enter');
  await page.keyboard.type(`${turn + 1} lx`);
  const painted = page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        // The last one: those before it are copies of headings.
        const cell = [...document.querySelectorAll('[aria-rowindex="2"] [aria-colindex="4"]')].at(
          -1,
        );
        if (!cell) throw new Error('C1 is not in view.');
        let begun = 0;
        addEventListener('keydown', () => (begun = performance.now()), {
          capture: true,
          once: true,
        });
        // Callbacks only: a named function here would be given a helper that the page does not have.
        new MutationObserver((_, observer) => {
          observer.disconnect();
          requestAnimationFrame(() => resolve(performance.now() - begun));
        }).observe(cell, { childList: true, subtree: true, characterData: true });
      }),
  );
  await page.keyboard.press('Enter');
  return painted;
}

async function appTime(): Promise<number> {
  if (!(await buildIfStale())) throw new Error('The app does not build.');
  const path = join(mkdtempSync(join(tmpdir(), 'halfstop-bench-')), 'book.json');
  writeFileSync(path, writeBook(book().document));
  const { url, close } = await serve({ folder: dist });
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    await page.goto(url);
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open a file' }).click();
    await (await chooser).setFiles(path);
    await page.locator('.grid[data-ready]').waitFor();
    const times: number[] = [];
    for (let turn = 0; turn <= turns; turn += 1) times.push(await paintTime(page, turn));
    return median(times.slice(1));
  } finally {
    await browser.close();
    await close();
  }
}

export async function run(): Promise<Row[]> {
  const tookAgainst = engineTime();
  return [
    {
      what: `type a key with ${dependants.toLocaleString('en')} dependants, until a visible one is painted`,
      took: await appTime(),
      against: 'the same edit in the engine alone',
      tookAgainst,
      atMost: 2,
    },
  ];
}
