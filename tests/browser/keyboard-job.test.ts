import { readFile } from 'node:fs/promises';
import type { Download, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin, handOn, ready } from '../support/sheet.ts';

// Readings as in templates/harbour-hours/walks.ts; verdicts as worked out by hand in its expected.ts,
// where a third of a stop is allowed instead of a quarter.

const eventually = <Read>(read: () => Promise<Read>) => expect.poll(read);

/** Name of what has the focus, as it is written or said. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement;
    return element?.getAttribute('aria-label') ?? element?.textContent.trim() ?? '';
  });

/** Tab after Tab until something of that name has the focus; fails when it never comes. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < 80; presses += 1) {
    await page.keyboard.press('Tab');
    const now = await focused(page);
    if (name.test(now)) return;
    passed.push(now);
  }
  throw new Error(`No Tab came to ${String(name)}, only to ${passed.join(' | ')}`);
}

async function choose(page: Page, command: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.locator('.finder-text').waitFor();
  await page.keyboard.type(command);
  await page.locator('#found [role=option]').first().waitFor();
  await page.keyboard.press('Enter');
}

async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

/** The cell that a screen reader is on. */
const cellInFocus = (page: Page) =>
  page.evaluate(() => {
    const id = document.activeElement?.getAttribute('aria-activedescendant') ?? '';
    return document.getElementById(id)?.innerText.replace(/\s+/g, ' ').trim() ?? 'not in the grid';
  });

const address = (page: Page) => page.locator('.name-box input').inputValue();

async function typeAll(page: Page, texts: readonly string[], then: string): Promise<void> {
  for (const text of texts) {
    await page.keyboard.type(text);
    await page.keyboard.press(then);
  }
}

/** In the page: pointers that were used, so that a run by keyboard alone can prove that it was one. */
function countPointers(): void {
  const count = { value: 0 };
  Reflect.set(window, 'pointersUsed', count);
  addEventListener('pointerdown', () => (count.value += 1), true);
}

describe('the whole job by keyboard alone', () => {
  it('start page, camera, readings, verdict, figure, files, undo', async () => {
    const { page } = await openApp({ before: countPointers });
    await page.locator('.card').first().waitFor();
    await tabTo(page, /^Key, fill and background/);
    await press(page, 'Enter');
    await ready(page);

    await press(page, 'ArrowDown', 'ArrowRight');
    expect(await address(page)).toBe('B2');
    await page.keyboard.type('800');
    await press(page, 'Tab', 'Tab');
    await page.keyboard.type('25');
    await press(page, 'Tab', 'Tab');
    await page.keyboard.type('180°');
    // After a run of Tabs, Enter goes back to where it began: B3.
    await press(page, 'Enter', 'ArrowDown', 'ArrowRight', 'ArrowRight');
    expect(await address(page)).toBe('D4');
    await page.keyboard.type('f/2.8');
    await press(page, 'Enter');

    await choose(page, 'Tab and Enter through readings');
    await press(page, 'Enter');
    await eventually(() => address(page)).toBe('C12');
    await typeAll(page, ['f/2.8', 'f/1.4 1/3', 'f/4', 'f/1.4', 'f/1.4+0.4'], 'Enter');
    expect(await address(page)).toBe('C19');
    await press(page, 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowRight', 'ArrowRight', 'ArrowRight');
    expect(await address(page)).toBe('F16');
    await eventually(() => cellInFocus(page)).toContain('0.4 stop over');
    expect(await page.locator('aside.slip').innerText()).toContain('0.4 stop over');

    await press(page, 'Control+Alt+f');
    await eventually(() => focused(page)).toBe('Figures of this sheet');
    await tabTo(page, /^Menu of Points against the key side$/);
    const ladder = page.locator('.figure').first();
    expect(await ladder.innerText()).toMatch(/Background right 0\.4 stop over/);
    await press(page, 'Enter');
    await page.getByRole('menu').waitFor();
    const svg = page.waitForEvent('download');
    for (let line = 0; line < 6 && !/SVG/.test(await focused(page)); line += 1)
      await press(page, 'ArrowDown');
    await press(page, 'Enter');
    expect(await textOf(await svg)).toContain('0.4 stop over');

    await choose(page, 'Export');
    await page.getByRole('dialog', { name: 'Export' }).waitFor();
    await tabTo(page, /^Export$/);
    const file = page.waitForEvent('download');
    await press(page, 'Enter');
    expect((await file).suggestedFilename()).toMatch(/\.xlsx$/);
    await page.getByRole('dialog').waitFor({ state: 'detached' });

    await press(page, 'Control+z');
    await eventually(() => address(page)).toBe('C16');
    await press(page, 'Control+Alt+g');
    await eventually(() => cellInFocus(page)).toBe('');
    await press(page, 'ArrowRight', 'ArrowRight', 'ArrowRight');
    await eventually(() => cellInFocus(page)).not.toContain('stop over');
    expect(await page.evaluate(() => Reflect.get(window, 'pointersUsed') as object)).toEqual({
      value: 0,
    });
  });
});

const textOf = async (download: Download) => readFile(await download.path(), 'utf8');

describe('Tab and Enter through readings only', () => {
  it('go over what is no reading, back too, from the entry line too, and arrows go everywhere', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Key, fill and background');
    await sheet.go('C12');
    await choose(page, 'Tab and Enter through readings');
    await page.getByText('Tab and Enter go from reading to reading').waitFor();
    await typeAll(page, ['f/2.8', 'f/2'], 'Tab');
    expect(await address(page)).toBe('C14');
    await press(page, 'Shift+Enter');
    expect(await address(page)).toBe('C13');
    await page.keyboard.type('f/2');
    await press(page, 'ArrowRight');
    expect(await address(page)).toBe('D13');
    await sheet.go('C16');
    await page.locator('.entry-text').focus();
    await page.keyboard.type('f/1.4');
    await press(page, 'Enter');
    await eventually(() => address(page)).toBe('C19');
  });

  it('is shown at the mark of readings, kept for the next time and no part of the book', async () => {
    const { page } = await openApp();
    await begin(page, 'Key, fill and background');
    const switched = page.getByRole('button', { name: 'Tab and Enter through readings only' });
    expect(await switched.getAttribute('aria-pressed')).toBe('false');
    await switched.click();
    await eventually(() => switched.innerText()).toBe('readings only');
    await page.getByText(/^Saved/).waitFor();
    await page.reload();
    await ready(page);
    expect(await switched.getAttribute('aria-pressed')).toBe('true');
    await choose(page, 'Settings of the book');
    const choice = page.getByRole('radio', { name: 'to the next reading' });
    expect(await choice.isChecked()).toBe(true);
    await page.getByRole('radio', { name: 'to the next cell' }).check();
    await press(page, 'Escape');
    await eventually(() => switched.getAttribute('aria-pressed')).toBe('false');
  });

  it('undo takes back the reading and leaves the way of the keys alone', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Key, fill and background');
    await sheet.go('C12');
    await choose(page, 'Tab and Enter through readings');
    await typeAll(page, ['f/4', 'f/2'], 'Enter');
    await press(page, 'Control+z');
    expect(await sheet.read('C13')).toBe('');
    await sheet.go('C12');
    await press(page, 'Tab');
    expect(await address(page)).toBe('C13');
    expect(await handOn(page).read('C12')).toBe('f/4');
  });

  it('on a sheet without readings goes to the neighbour as ever', async () => {
    const { page } = await openApp();
    await begin(page, 'Blank book');
    await choose(page, 'Tab and Enter through readings');
    await typeAll(page, ['1', '2'], 'Tab');
    expect(await address(page)).toBe('C1');
  });
});
