import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axeFaults } from '../support/axe.ts';
import { openApp, type OpenOptions } from '../support/browser.ts';
import { handOn } from '../support/sheet.ts';

/** Opens a blank book, ready to be typed in. */
async function openBlank(options: OpenOptions = {}): Promise<Page> {
  const { page } = await openApp(options);
  await page.click('.card >> text=Blank book');
  await page.waitForSelector('.grid[data-ready]');
  return page;
}

const search = (page: Page) => page.getByLabel('Find a function by what you want to know');
const nameOpen = (page: Page) => page.locator('.reference-page h3.name').innerText();
const focused = (page: Page) => page.evaluate(() => document.activeElement?.className ?? '');

describe('the function reference', () => {
  test('“how far” finds DISTANCEFOR; its example goes into the cell, and undo takes it out', async () => {
    const page = await openBlank();
    const sheet = handOn(page);
    await sheet.go('B2');
    await page.click('[aria-label="Book menu"]');
    await page.getByRole('menuitem', { name: 'Function reference' }).click();
    await search(page).fill('how far');
    await page.getByRole('option', { name: 'DISTANCEFOR' }).click();
    expect(await nameOpen(page)).toBe('DISTANCEFOR');
    // By the inverse square: a quarter of 800 lx at 2 m stands at 4 m.
    const put = page.getByRole('button', { name: 'Put =DISTANCEFOR(800, 2, 200) into B2' });
    await put.click();
    await page.locator('dialog').waitFor({ state: 'detached' });
    expect(await page.locator('aside.slip .big').innerText()).toMatch(/^4\s*m$/);
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() =>
      document.querySelector('.slip .where')?.textContent?.includes('blank'),
    );
  });

  test('every function stands in it, under its family', async () => {
    const page = await openBlank();
    await page.keyboard.press('F1');
    await page.waitForSelector('.reference-body');
    const count = await page.getByRole('option').count();
    expect(count).toBeGreaterThanOrEqual(130);
    expect(await page.locator('.reference-list [role=group]').count()).toBeGreaterThanOrEqual(7);
    expect(await page.locator('.reference-page .lead').innerText()).toContain('words of the trade');
  });

  test('F1 in a cell opens the function that it is made of, and Escape leads back to the cell', async () => {
    const page = await openBlank();
    const sheet = handOn(page);
    await sheet.type('C3', '=ROUND(FSTOPS("f/2.8","f/5.6"),1)');
    await sheet.go('C3');
    await page.keyboard.press('F1');
    await page.waitForSelector('.reference-page h3.name');
    expect(await nameOpen(page)).toBe('FSTOPS');
    await page.keyboard.press('Escape');
    await page.locator('dialog').waitFor({ state: 'detached' });
    await page.keyboard.type('9');
    await page.keyboard.press('Enter');
    expect(await sheet.read('C3')).toBe('9');
  });

  test('F1 while a formula is typed opens the function at the caret, and the formula is still there', async () => {
    const page = await openBlank();
    await page.click('.entry-text');
    await page.keyboard.type('=2*STOPS(4,');
    await page.keyboard.press('F1');
    await page.waitForSelector('.reference-page h3.name');
    expect(await nameOpen(page)).toBe('STOPS');
    await page.keyboard.press('Escape');
    await page.locator('dialog').waitFor({ state: 'detached' });
    expect(await page.inputValue('.entry-text')).toBe('=2*STOPS(4,');
    await page.keyboard.type('1)');
    await page.keyboard.press('Enter');
    expect(await handOn(page).read('A1')).toBe('+4 stops');
  });

  test('the slip, the hint under the entry line and the finder lead to it', async () => {
    const page = await openBlank();
    const sheet = handOn(page);
    await sheet.type('A1', '=STOPS(4,1)');
    await sheet.go('A1');
    await page.locator('aside.slip .link', { hasText: 'STOPS' }).click();
    await page.waitForSelector('.reference-page h3.name');
    expect(await nameOpen(page)).toBe('STOPS');
    await page.keyboard.press('Escape');
    await page.fill('.entry-text', '=FALLOFF(');
    await page.locator('.signature .link').click();
    await page.waitForFunction(
      () => document.querySelector('.reference-page h3.name')?.textContent === 'FALLOFF',
    );
    await page.keyboard.press('Escape');
    await page.locator('dialog').waitFor({ state: 'detached' });
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+k');
    await page.keyboard.type('how far');
    await page.locator('#found li', { hasText: 'DISTANCEFOR' }).click();
    await page.waitForFunction(
      () => document.querySelector('.reference-page h3.name')?.textContent === 'DISTANCEFOR',
    );
  });

  test('arrow keys go through the list, Enter reads, / and letters search again, links lead on and back', async () => {
    const page = await openBlank();
    await page.keyboard.press('F1');
    await page.waitForSelector('.reference-body');
    await page.keyboard.type('how far');
    await page.keyboard.press('ArrowDown');
    const first = await nameOpen(page);
    await page.keyboard.press('ArrowDown');
    expect(await nameOpen(page)).not.toBe(first);
    await page.keyboard.press('ArrowUp');
    expect(await nameOpen(page)).toBe(first);
    const chosen = await search(page).getAttribute('aria-activedescendant');
    expect(await page.locator(`#${chosen}[aria-selected=true]`).count()).toBe(1);
    await page.keyboard.press('Enter');
    expect(await focused(page)).toContain('reference-page');
    await page.locator('.reference-page .chip').first().click();
    await page.getByRole('button', { name: `Back to ${first}` }).click();
    expect(await nameOpen(page)).toBe(first);
    await page.keyboard.press('/');
    await page.keyboard.type('mired');
    expect(await search(page).inputValue()).toBe('mired');
    await page.locator('.reference-page').focus();
    await page.keyboard.type('amps');
    expect(await search(page).inputValue()).toBe('amps');
    await page.keyboard.press('Enter');
    expect(await nameOpen(page)).toBe('AMPS');
  });

  test('the first screen does without it', async () => {
    const { page } = await openApp();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.click('.card >> text=Blank book');
    await page.waitForSelector('.grid[data-ready]');
    const isReference = (url: string) => /\/reference-[\w-]+\.js$/.test(url);
    expect(asked.filter(isReference)).toEqual([]);
    await page.keyboard.press('F1');
    await page.waitForSelector('.reference-body');
    expect(asked.filter(isReference)).toHaveLength(1);
  });
});

describe('on a narrow screen', () => {
  test('first the list, then the function, and nothing is wider than 360 pixels', async () => {
    const page = await openBlank({ viewport: { width: 360, height: 740 }, touch: true });
    await page.tap('[aria-label="Book menu"]');
    await page.getByRole('menuitem', { name: 'Function reference' }).tap();
    await search(page).fill('panel');
    await page.getByRole('option', { name: 'PANELLUX' }).tap();
    expect(await search(page).isVisible()).toBe(false);
    const wide = await page.evaluate(() => {
      const list = document.querySelector('.reference-page');
      return [list?.scrollWidth === list?.clientWidth, document.documentElement.scrollWidth];
    });
    expect(wide).toEqual([true, 360]);
    await page.getByRole('button', { name: 'All functions' }).tap();
    expect(await search(page).isVisible()).toBe(true);
    expect(await search(page).inputValue()).toBe('panel');
  });
});

describe('axe finds nothing', () => {
  test.each(['dark', 'light'] as const)('in the %s theme', async (theme) => {
    const page = await openBlank({ theme });
    await page.keyboard.press('F1');
    await page.waitForSelector('.reference-body');
    await page.keyboard.type('INCIDENTF');
    await page.keyboard.press('Enter');
    expect(await axeFaults(page, 'dialog')).toEqual([]);
  });
});
