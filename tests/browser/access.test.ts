import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { dialogs } from '../../src/tools/pictures/support/dialogs.mjs';
import { exerciseScreens } from '../../src/tools/pictures/support/exercises.mjs';
import { openSample } from '../../src/tools/pictures/support/sample.mjs';
import { screens } from '../../src/tools/pictures/support/screens.mjs';
import { sheets } from '../../src/tools/pictures/support/sheets.mjs';
import { axeFaults } from '../support/axe.ts';
import { openApp, type OpenOptions } from '../support/browser.ts';

// WCAG 2.2 by axe-core 4.13, on every screen that there is a picture of.

/** What is let be, by rule and element, each with its reason. */
const exceptions: readonly { rule: string; target: RegExp; reason: string }[] = [];

/** What lies over a sheet that is looked at as a screen of its own. */
const parts: Readonly<Record<string, string>> = {
  suggestions: '.entry',
  menu: '#book-menu',
  figures: '.figures',
};

/** What axe finds serious or critical, as `rule: elements`, in what the screen adds. */
async function faultsOf(page: Page, name: string, asked: 'all' | 'colours'): Promise<string[]> {
  const part = name in sheets ? 'main' : (parts[name] ?? 'dialog[open]');
  const there = (await page.locator(part).count()) > 0;
  return (await axeFaults(page, there ? part : undefined, 'serious', asked))
    .map(({ id, target }) => [id, target] as const)
    .filter(([id, target]) => !exceptions.some((one) => one.rule === id && one.target.test(target)))
    .map(([id, target]) => `${id}: ${target}`);
}

async function show(screen: string, options: OpenOptions): Promise<Page> {
  const { page } = await openApp({ reducedMotion: true, ...options });
  const open = screens[screen];
  if (!open) throw new Error(`There is no screen ${screen}.`);
  await open(page);
  return page;
}

/** The same screen in each theme, without opening it again. */
async function inEachTheme(
  page: Page,
  screen: string,
  themes: readonly string[],
): Promise<string[]> {
  const found: string[] = [];
  for (const [index, theme] of themes.entries()) {
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    const faults = await faultsOf(page, screen, index === 0 ? 'all' : 'colours');
    found.push(...faults.map((fault) => `${theme}, ${fault}`));
  }
  return found;
}

/** On a wide screen contents and slip stand by the sheet, and the big sheet is one like others. */
const seenWithSheet = ['contents', 'slip', 'big-sheet', 'big-contents'];
const inOneGo = { ...dialogs, ...sheets, ...exerciseScreens };
const names = Object.keys(screens).filter(
  (name) => !seenWithSheet.includes(name) && !(name in inOneGo),
);

/** Opened one after another in one book, with all that can stand there. */
async function inOneBook(
  all: Readonly<Record<string, (page: Page) => Promise<void>>>,
  themes: readonly string[],
): Promise<string[]> {
  const { page } = await openApp({ reducedMotion: true });
  await openSample(page, 'F13');
  const found: string[] = [];
  for (const [name, open] of Object.entries(all)) {
    await page.locator('.sheet-link', { hasText: 'Sail loft' }).first().click();
    await open(page);
    const faults = await inEachTheme(page, name, themes);
    found.push(...faults.map((fault) => `${name}, ${fault}`));
    while ((await page.locator('dialog[open]').count()) > 0) await page.keyboard.press('Escape');
  }
  return found;
}

describe('nothing serious or critical', () => {
  it('is said of what is there: words too pale and a field without a name are found', async () => {
    const { page } = await openApp({ reducedMotion: true });
    await page.getByRole('button', { name: 'Blank book' }).waitFor();
    await page.evaluate(() => {
      const pale = document.createElement('p');
      pale.textContent = 'Key side of face';
      pale.style.cssText = 'color: #777; background: #888';
      document.querySelector('main')?.append(pale, document.createElement('input'));
    });
    const found = (await axeFaults(page, undefined, 'serious')).map(({ id }) => id);
    expect(found.toSorted()).toEqual(['color-contrast', 'label']);
    const pale = (await axeFaults(page, undefined, 'serious', 'colours')).map(({ id }) => id);
    expect(pale).toEqual(['color-contrast']);
  });

  it.each(names)('on the screen %s, dark and light', async (name) => {
    const page = await show(name, { viewport: { width: 1280, height: 800 } });
    const themes = name.startsWith('walk') ? ['dark', 'light', 'metering'] : ['dark', 'light'];
    expect(await inEachTheme(page, name, themes)).toEqual([]);
  });

  it('in any dialog, dark and light', async () => {
    expect(Object.keys(dialogs).length).toBeGreaterThan(18);
    expect(await inOneBook({ ...dialogs, ...exerciseScreens }, ['dark', 'light'])).toEqual([]);
  });

  // The same styles as the first sheet has in the light: what differs is what stands there.
  it('on any other sheet, dark', async () => {
    expect(Object.keys(sheets).length).toBeGreaterThan(8);
    expect(await inOneBook(sheets, ['dark'])).toEqual([]);
  });
});

/** Controls of the topmost layer that no scrolling brings into the window, by what they are called. */
function outOfReach(): string[] {
  const layer = [...document.querySelectorAll('dialog[open]')].at(-1) ?? document.body;
  const lost: string[] = [];
  if (document.documentElement.scrollWidth > innerWidth)
    lost.push('the page is wider than the window');
  for (const one of layer.querySelectorAll<HTMLElement>(
    'button, input, select, textarea, a[href]',
  )) {
    if (one.closest('[popover]:not(:popover-open), .grid') || !one.checkVisibility()) continue;
    if (getComputedStyle(one).visibility === 'hidden' || one.matches('[type=file], .unseen'))
      continue;
    one.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    const box = (one.closest('label') ?? one).getBoundingClientRect();
    if (box.width === 0 || box.height === 0) continue;
    if (box.left < -1 || box.right > innerWidth + 1 || box.bottom < 0 || box.top > innerHeight)
      lost.push(one.getAttribute('aria-label') ?? one.textContent.trim() ?? one.outerHTML);
  }
  return lost;
}

describe('WCAG 2.2, 1.4.4: with text at twice its size every control is in reach', () => {
  it.each(
    ['start', 'sheet', 'walk', 'settings', 'fixtures', 'export', 'versions', 'figures'].flatMap(
      (name) => [390, 1280].map((width) => [name, width] as const),
    ),
  )('on the screen %s, %i wide', async (name, width) => {
    const page = await show(name, { viewport: { width, height: 844 } });
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    expect(await page.evaluate(outOfReach)).toEqual([]);
  });
});

it('nothing moves where less motion is wanted', async () => {
  const page = await show('walk', {});
  await page.locator('dialog.walk .onwards .main').click();
  const moving = await page.evaluate(
    () =>
      document
        .getAnimations()
        .filter(({ effect }) => Number(effect?.getComputedTiming().duration ?? 0) > 1).length,
  );
  expect(moving).toBe(0);
});
