import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axeFaults } from '../support/axe.ts';
import { openApp, type OpenOptions } from '../support/browser.ts';
import { choose, figureCalled, menuOf, printedFigures, savedFigure } from '../support/figures.ts';
import { begin, type SheetHand } from '../support/sheet.ts';

/** The sample book with its figures unfolded over the whole page or under the grid. */
async function openLoft(how: 'open' | 'tall', options: OpenOptions = {}) {
  const { page } = await openApp(options);
  await page.evaluate((stand) => localStorage.setItem('halfstop-figures', stand), how);
  await page.reload();
  const sheet = await begin(page, 'sample book');
  await figureCalled(page, 'Points against the key side').locator('svg[role=img]').waitFor();
  return { page, sheet };
}

const lead = (one: Locator) => one.locator('figcaption p');

/** Makes the depth of the fill light a figure of the rope bench, by keyboard. */
async function addFalloff(page: Page, sheet: SheetHand): Promise<void> {
  await sheet.go('A13');
  await page.keyboard.press('Control+k');
  await page.keyboard.type('Add a figure');
  await page.keyboard.press('Enter');
  await page.getByRole('radio', { name: /Falloff/ }).check();
  await page.getByRole('textbox', { name: 'Title', exact: true }).fill('Fill, by the law alone');
  await page.keyboard.press('Enter');
}

describe('figures of the sample book', () => {
  test('follow a reading at once, and undo', async () => {
    const { page, sheet } = await openLoft('open', { viewport: { width: 1280, height: 1000 } });
    const said = lead(figureCalled(page, 'Points against the key side'));
    expect((await said.innerText()).replace(/\s+/g, ' ')).toContain('3 of 6 agree; Fill side');
    await sheet.type('C13', 'f/1.4');
    await expect.poll(() => said.innerText()).toContain('4 of 6 agree');
    await page.keyboard.press('Control+z');
    await expect.poll(() => said.innerText()).toContain('3 of 6 agree');
  });

  test('are added from the selection, changed, moved and removed, and each can be undone', async () => {
    const { page, sheet } = await openLoft('open', { viewport: { width: 1280, height: 1000 } });
    await addFalloff(page, sheet);
    const added = figureCalled(page, 'Fill, by the law alone');
    await added.locator('svg[role=img]').waitFor();
    // 2.1 m · 2^(∓1/8): the sheet allows a quarter stop.
    expect((await lead(added).innerText()).replace(/\s+/g, ' ')).toBe(
      'From 1.93 to 2.29 m the light stays within 1/4 stop of the mark.',
    );
    await choose(page, 'Fill, by the law alone', 'Title, cells, choices');
    const distance = page.getByRole('textbox', { name: 'Distance of the mark' });
    expect(await distance.inputValue()).toBe('N13');
    await distance.fill('4 m');
    await page.getByRole('button', { name: 'Keep' }).click();
    await expect.poll(() => lead(added).innerText()).toContain('From 3.67 to 4.36 m');

    const titles = () => page.locator('.figure h3').allInnerTexts();
    await menuOf(page, 'Fill, by the law alone').press('Alt+ArrowUp');
    await expect.poll(async () => (await titles()).indexOf('Fill, by the law alone')).toBe(2);
    await menuOf(page, 'Fill, by the law alone').press('Delete');
    await expect.poll(async () => (await titles()).includes('Fill, by the law alone')).toBe(false);
    await page.locator('[aria-label^="Undo"]').click();
    await expect.poll(async () => (await titles()).indexOf('Fill, by the law alone')).toBe(2);
    await page.locator('[aria-label^="Undo"]').click();
    await expect.poll(async () => (await titles()).indexOf('Fill, by the law alone')).toBe(3);
    await page.locator('[aria-label^="Undo"]').click();
    await expect.poll(() => lead(added).innerText()).toContain('From 1.93 to 2.29 m');
    await page.locator('[aria-label^="Undo"]').click();
    await expect.poll(async () => (await titles()).length).toBe(3);
  });

  test('an address that is none is refused, and the dialog keeps what was written', async () => {
    const { page } = await openLoft('open', { viewport: { width: 1280, height: 1000 } });
    await choose(page, 'Fill light along its throw', 'Title, cells, choices');
    const light = page.getByRole('textbox', { name: 'Light at the mark' });
    await light.fill('the fill');
    await page.getByRole('button', { name: 'Keep' }).click();
    expect(await page.locator('.notices').innerText()).toContain('“the fill” is no cell or range');
    expect(await light.inputValue()).toBe('the fill');
  });

  test('are saved as a drawing and as a picture twice as fine', async () => {
    const { page } = await openLoft('tall');
    const text = await savedFigure(page, 'Points against the key side');
    expect(text).toContain('Canvas right');
    expect(text).toContain('1 2/3 stops below key');
  });

  test('are printed under the sheet in black, though they are folded away', async () => {
    const { page } = await openLoft('open');
    await page.getByRole('button', { name: 'Figures 3' }).click();
    const printed = await printedFigures(page);
    expect(printed).toHaveLength(3);
    expect(printed[0]?.shapes).toBeGreaterThan(6);
  });

  test('the keyboard reaches them, folds them away and unfolds them', async () => {
    const { page } = await openLoft('open');
    await page.keyboard.press('Control+Alt+f');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('figure-list');
    const fold = page.getByRole('button', { name: 'Figures 3' });
    await fold.focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('#figure-list').isVisible()).toBe(false);
    await page.keyboard.press('Control+Alt+f');
    expect(await page.locator('#figure-list').isVisible()).toBe(true);
  });

  test('switching units switches them', async () => {
    const { page } = await openLoft('tall');
    const throwOf = figureCalled(page, 'Fill light along its throw');
    expect(await throwOf.locator('svg[role=img]').textContent()).toContain('lx');
    await page.click('.switches label >> text=fc');
    await expect.poll(() => throwOf.locator('svg[role=img]').textContent()).toContain('fc');
  });
});

describe('axe finds nothing', () => {
  test.each([
    ['dark', 1280],
    ['light', 1280],
    ['dark', 360],
    ['light', 1920],
  ] as const)('%s, %i wide', async (theme, width) => {
    const { page } = await openLoft('tall', { theme, viewport: { width, height: 800 } });
    await page.locator('.figure summary').first().click();
    expect(await axeFaults(page, '.figures')).toEqual([]);
    await page.getByRole('button', { name: 'Add a figure' }).click();
    expect(await axeFaults(page, 'dialog')).toEqual([]);
  });

  test('at 360 nothing of a figure reaches past the page', async () => {
    const { page } = await openLoft('tall', { viewport: { width: 360, height: 740 } });
    const over = await page.evaluate(() =>
      [...document.querySelectorAll('.figure text')]
        .filter(
          (text) =>
            text.getBoundingClientRect().right > innerWidth ||
            text.getBoundingClientRect().left < 0,
        )
        .map((text) => text.textContent),
    );
    expect(over).toEqual([]);
  });
});
