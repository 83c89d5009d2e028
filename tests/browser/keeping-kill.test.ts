import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, inject, test } from 'vitest';
import { Random } from '../fuzz/book/random.ts';
import { bookFile, firstColumn, openId, typeDown, waitForSaved } from '../support/kept.ts';
import { startMortal, type Mortal } from '../support/mortal.ts';
import { runs } from '../support/runs.ts';
import { begin, handOn, ready } from '../support/sheet.ts';

const kills = runs(10, 50);
const seed = Number(process.env['SEED'] ?? 1_402);

let profile: string;
let running: Mortal | undefined;

beforeEach(() => {
  profile = mkdtempSync(join(tmpdir(), 'halfstop-profile-'));
});

afterEach(async () => {
  await running?.kill();
  running = undefined;
  rmSync(profile, { recursive: true, force: true, maxRetries: 10 });
});

const start = async (hash = ''): Promise<Page> => {
  running = await startMortal(profile, inject('app') + hash);
  return running.page;
};
const kill = async (): Promise<void> => {
  await running?.kill();
  running = undefined;
};

test('a browser killed right after “Saved” has kept everything, and undo', async () => {
  let page = await start();
  await begin(page, 'Blank book');
  await waitForSaved(page);
  await page.evaluate(noteStates);
  await typeDown(page, ['12 lx', '34 lx', '56 lx']);
  await page.waitForFunction(() => {
    const states = Reflect.get(window, 'states') as string[];
    return states.includes('saving') && states.at(-1) === 'saved';
  });
  const id = await openId(page);
  await kill();

  page = await start(`#${id}`);
  await ready(page);
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx', '56 lx']);
  await page.keyboard.press('Control+z');
  expect(firstColumn(await bookFile(page))).toEqual(['12 lx', '34 lx']);
});

test(`${String(kills)} kills at random moments lose at most the last second, and undo goes on`, async () => {
  const random = new Random(seed);
  let page = await start();
  await begin(page, 'Blank book');
  await waitForSaved(page);
  const id = await openId(page);
  let there: string[] = [];
  for (let round = 1; round <= kills; round++) {
    await handOn(page).go(`A${String(there.length + 1)}`);
    const typing = typeUntilKilled(page, round);
    await new Promise((resolve) => setTimeout(resolve, 300 + random.below(2_500)));
    const killedAt = performance.now();
    await kill();
    const typed = await typing;

    page = await start(`#${id}`);
    await ready(page);
    const found = firstColumn(await bookFile(page));
    const before = typed.filter(({ at }) => at <= killedAt - 1_000).map(({ text }) => text);
    const all = [...there, ...typed.map(({ text }) => text)];
    expect(found, `round ${String(round)}: in order, nothing foreign`).toEqual(
      all.slice(0, found.length),
    );
    expect(found.length, `round ${String(round)}`).toBeGreaterThanOrEqual(
      there.length + before.length,
    );
    if (found.length > there.length) {
      await page.keyboard.press('Control+z');
      expect(firstColumn(await bookFile(page))).toEqual(found.slice(0, -1));
      await page.keyboard.press('Control+Shift+z');
      expect(firstColumn(await bookFile(page))).toEqual(found);
    }
    there = found;
  }
  expect(there.length, 'something was typed between the kills').toBeGreaterThan(kills);
});

interface Typed {
  readonly text: string;
  /** When the page had taken the Enter behind it. */
  readonly at: number;
}

async function typeUntilKilled(page: Page, round: number): Promise<Typed[]> {
  const typed: Typed[] = [];
  try {
    for (let count = 1; ; count++) {
      const text = `${String(round)}.${String(count)} lx`;
      await page.keyboard.type(text);
      // The key may be taken although the browser dies before it says so.
      typed.push({ text, at: Infinity });
      await page.keyboard.press('Enter');
      typed[typed.length - 1] = { text, at: performance.now() };
    }
  } catch {
    return typed;
  }
}

/** Runs in the page. */
function noteStates(): void {
  const lamp = document.querySelector('[role=status].saved');
  const states: string[] = [];
  Reflect.set(window, 'states', states);
  new MutationObserver(() => {
    states.push(
      lamp?.classList.contains('saving')
        ? 'saving'
        : (lamp?.className.trim().split(' ').at(-1) ?? ''),
    );
  }).observe(lamp ?? document, { attributes: true });
}
