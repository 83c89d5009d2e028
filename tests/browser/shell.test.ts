import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axeFaults } from '../support/axe.ts';
import { openTestPage, type OpenOptions } from '../support/browser.ts';

/** The shell with fixed content: what it shows, and what it asks of the book behind it. */
async function openShellPage(options: OpenOptions = {}): Promise<Page> {
  const { page } = await openTestPage('shell', options);
  await page.waitForSelector('body[data-ready]');
  return page;
}

const asked = (page: Page) => page.evaluate(() => window.shellBench.workbook.asked);
const widths = [360, 768, 1280, 2560] as const;
const themes = ['dark', 'light'] as const;

describe('what is in view', () => {
  test('the contents stand in the order of the work, with their counts', async () => {
    const page = await openShellPage();
    const phases = await page.locator('nav h3').allTextContents();
    expect(phases).toEqual(['recce', 'plan', 'rig', 'order', 'meter', 'match', 'log']);
    const shown = page.locator('nav [aria-current=page]');
    expect((await shown.textContent())?.replace(/\s+/g, ' ').trim()).toBe(
      'Key, fill and background4 off',
    );
  });

  test('the head counts the verdicts and shows each as a shape in the sheet’s order', async () => {
    const page = await openShellPage();
    expect(await page.locator('.sum p').first().innerText()).toBe(
      '4 of 9 points agree, 4 are off, 1 waits',
    );
    const names = await page
      .locator('.strip button')
      .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
    expect(names.slice(0, 2)).toEqual([
      'Key side of face: taking stop',
      'Fill side of face: 1/3 stop over',
    ]);
    await page.locator('.strip button').nth(1).click();
    expect(await asked(page)).toContainEqual([
      'jump',
      { sheet: 'key', from: { row: 5, column: 5 } },
    ]);
  });

  test.each(widths)('nothing is wider than a window of %i pixels', async (width) => {
    const page = await openShellPage({ viewport: { width, height: 800 } });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
  });

  test('text at twice its size still fits the window', async () => {
    const page = await openShellPage({ viewport: { width: 1280, height: 900 } });
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
  });
});

describe('axe finds nothing serious', () => {
  test.each(
    themes.flatMap((theme) => [
      [theme, '#book'],
      [theme, '#start'],
    ]),
  )('%s, %s', async (theme, hash) => {
    const page = await openShellPage({ theme: theme as 'dark' | 'light', hash: hash as string });
    expect(await axeFaults(page, undefined, 'serious')).toEqual([]);
  });
});

describe('theme', () => {
  test.each([
    ['dark', 'rgb(25, 22, 19)'],
    ['light', 'rgb(250, 247, 240)'],
  ] as const)('follows a system that asks for %s', async (theme, ground) => {
    const page = await openShellPage({ theme });
    expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(ground);
  });

  test('a chosen theme beats the system and is kept', async () => {
    const page = await openShellPage({ theme: 'light' });
    await page.click('.theme');
    const now = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    expect(await now()).toBe('rgb(25, 22, 19)');
    expect(await page.evaluate(() => localStorage.getItem('halfstop-theme'))).toBe('dark');
  });
});

describe('entry line', () => {
  test('trade words find a function; Enter takes it and the parameters are named', async () => {
    const page = await openShellPage();
    await page.fill('.entry-text', '=how far');
    const options = page.locator('#entry-suggestions [role=option] b');
    const names = await options.allTextContents();
    expect(names).toContain('DISTANCEFOR');
    for (let at = 0; at < names.indexOf('DISTANCEFOR'); at += 1)
      await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    expect(await page.inputValue('.entry-text')).toBe('=DISTANCEFOR(');
    const due = page.locator('.signature .due');
    expect(await due.textContent()).toBe('lux');
    expect(await due.evaluate((one) => getComputedStyle(one).display)).toBe('inline');
    await page.keyboard.type('800,');
    expect(await page.locator('.signature .due').textContent()).toBe('distance');
  });

  test('Escape closes the suggestions first and drops the entry second', async () => {
    const page = await openShellPage();
    await page.fill('.entry-text', '=stop');
    await page.keyboard.press('Escape');
    expect(await page.locator('#entry-suggestions').count()).toBe(0);
    expect(await page.inputValue('.entry-text')).toBe('=stop');
    await page.keyboard.press('Escape');
    expect(await asked(page)).toContainEqual(['cancel']);
  });

  test('Enter keeps and goes down, Shift+Tab keeps and goes left', async () => {
    const page = await openShellPage();
    await page.fill('.entry-text', 'f/4');
    await page.keyboard.press('Enter');
    await page.fill('.entry-text', 'f/5.6');
    await page.keyboard.press('Shift+Tab');
    const entered = (await asked(page)).filter(([what]) => what === 'enter');
    expect(entered).toEqual([
      ['enter', 'f/4', 'down'],
      ['enter', 'f/5.6', 'left'],
    ]);
  });

  test('the name box goes to an address and says when there is no such place', async () => {
    const page = await openShellPage();
    await page.fill('.name-box input', 'C7');
    await page.press('.name-box input', 'Enter');
    await page.fill('.name-box input', 'nowhere at all');
    await page.press('.name-box input', 'Enter');
    expect(await asked(page)).toContainEqual(['jumpTo', 'C7']);
    expect(await asked(page)).toContainEqual(['say', 'There is no place called nowhere at all.']);
  });

  test('the colours lie exactly over what is typed', async () => {
    const page = await openShellPage();
    const texts = await page.evaluate(() => [
      document.querySelector('.entry-lit')?.textContent?.trim(),
      document.querySelector<HTMLInputElement>('.entry-text')?.value,
    ]);
    expect(texts[0]).toBe(texts[1]);
    const [lit, field] = await page.evaluate(() =>
      ['.entry-lit', '.entry-text'].map((selector) => {
        const part = document.querySelector(selector);
        if (!part) throw new Error(selector);
        const { font, paddingLeft } = getComputedStyle(part);
        return { font, paddingLeft, left: part.getBoundingClientRect().left };
      }),
    );
    expect(lit).toEqual(field);
  });
});

describe('by keyboard', () => {
  test('arrows walk through the contents, Alt and an arrow moves a sheet, Delete deletes it', async () => {
    const page = await openShellPage();
    await page.focus('nav [aria-current=page]');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.focus('nav [aria-current=page]');
    await page.keyboard.press('Alt+ArrowUp');
    await page.keyboard.press('Delete');
    expect(await asked(page)).toEqual([
      ['show', 'Reflected survey'],
      ['run', 'sheet.move', { sheet: 'key', to: 2 }],
      ['run', 'sheet.delete', { sheet: 'key' }],
    ]);
  });

  test('the finder finds by any word, says why not, and gives the focus back', async () => {
    const page = await openShellPage();
    await page.focus('.find');
    await page.keyboard.press('Enter');
    await page.keyboard.type('rows ins');
    expect(await page.locator('#found [aria-selected=true] b').textContent()).toBe(
      'Insert rows above',
    );
    await page.keyboard.press('Enter');
    expect(await asked(page)).toContainEqual(['run', 'rows.insertAbove']);
    expect(await page.locator('dialog').count()).toBe(0);
    await page.keyboard.press('Enter');
    await page.keyboard.type('redo');
    expect(await page.locator('#found [aria-disabled=true] span').textContent()).toBe(
      'Nothing to redo.',
    );
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('find');
  });

  test('every control that can be reached has a name and shows its focus', async () => {
    const page = await openShellPage();
    const nameless = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.desk button, .desk input, .desk textarea')]
        .filter((one) => one.offsetParent !== null)
        .filter(
          (one) =>
            !(
              one.getAttribute('aria-label') ??
              one.closest('label')?.textContent ??
              one.textContent
            )?.trim(),
        )
        .map((one) => one.outerHTML.slice(0, 120)),
    );
    expect(nameless).toEqual([]);
  });
});

describe('on a phone', () => {
  const phone = { viewport: { width: 390, height: 844 }, touch: true } as const;

  test('contents and slip slide over the page, and a tap beside them puts them away', async () => {
    const page = await openShellPage(phone);
    expect(await page.locator('aside.slip').isVisible()).toBe(false);
    await page.tap('.open-slip');
    await page.locator('aside.slip h2', { hasText: 'Fill side of face' }).waitFor();
    await page.touchscreen.tap(200, 60);
    await page.locator('aside.slip').waitFor({ state: 'hidden' });
    await page.tap('.open-contents');
    await page.tap('nav .sheet-link >> text=Power');
    await page.locator('nav.contents').waitFor({ state: 'hidden' });
    expect(await asked(page)).toContainEqual(['show', 'Power']);
  });

  test('what is pressed with a thumb is at least 36 px high', async () => {
    const page = await openShellPage(phone);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.desk .button, .desk .glyph, .sheet-link')]
        .filter((one) => one.offsetParent !== null && one.getBoundingClientRect().height > 0)
        .filter((one) => one.getBoundingClientRect().height < 36)
        .map((one) => one.outerHTML.slice(0, 100)),
    );
    expect(small).toEqual([]);
  });
});
