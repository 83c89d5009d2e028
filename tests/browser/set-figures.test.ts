import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axeFaults } from '../support/axe.ts';
import { openApp } from '../support/browser.ts';
import { printedFigures, savedFigure } from '../support/figures.ts';
import { addFigure, openSet, rigWithFrame } from '../support/set.ts';

const hand = (page: Page, name: string): Locator => page.getByRole('slider', { name, exact: true });

const lead = async (page: Page): Promise<string> =>
  (await page.locator('.figure figcaption p').innerText()).replace(/\s+/g, ' ');

/** Pixels for a metre, from two points whose places the sheet says: 2 m and −2 m across. */
async function metreOn(page: Page): Promise<number> {
  const [left, right] = await Promise.all(
    ['Canvas left', 'Canvas right'].map(async (name) => middleOf(hand(page, name))),
  );
  return ((right?.x ?? 0) - (left?.x ?? 0)) / 4;
}

async function middleOf(one: Locator): Promise<{ x: number; y: number }> {
  const box = await one.locator('circle').boundingBox();
  if (!box) throw new Error('It is not on the page.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function dragBy(page: Page, name: string, across: number, up: number): Promise<void> {
  const metre = await metreOn(page);
  const { x, y } = await middleOf(hand(page, name));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + (across * metre) / 2, y - (up * metre) / 2, { steps: 4 });
  await page.mouse.move(x + across * metre, y - up * metre, { steps: 4 });
  await page.mouse.up();
}

/** What stands in cells, read with the figures folded to half the page. */
async function cells(
  page: Page,
  sheet: { entry(address: string): Promise<string> },
  addresses: readonly string[],
) {
  await page.getByRole('button', { name: 'Figures over the whole page' }).click();
  const found: string[] = [];
  for (const address of addresses) found.push(await sheet.entry(address));
  await page.getByRole('button', { name: 'Figures over the whole page' }).click();
  return found;
}

describe('the plan of the set', () => {
  test('a fixture that is dragged takes its cells along, and one undo brings it back', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 1000 } });
    const sheet = await openSet(page, /Plan of the set/);
    const before = await lead(page);
    expect(before).toMatch(/^Key side of face reads \d+ lx; Fill side of face/);
    await dragBy(page, 'Tube 120', -1, 0.5);
    await expect.poll(() => lead(page)).not.toBe(before);
    // 2.9 − 1 and −0.6 + 0.5, on steps of five centimetres.
    expect(await cells(page, sheet, ['B5', 'C5', 'D5'])).toEqual(['1.9', '-0.1', '1.4']);
    expect(await page.locator('[aria-label^="Undo"]').getAttribute('aria-label')).toContain(
      'Move Tube 120',
    );
    await page.locator('[aria-label^="Undo"]').click();
    await expect.poll(() => lead(page)).toBe(before);
    expect(await cells(page, sheet, ['B5', 'C5'])).toEqual(['2.9', '-0.6']);
  });

  test('an aim and what a frame faces are dragged as well, each with an undo of its own', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 1000 } });
    const sheet = await openSet(page, /Plan of the set/, rigWithFrame);
    const before = await lead(page);
    await dragBy(page, 'Aim of Tube 120', -0.5, 0.25);
    await dragBy(page, 'Frame or board of Frame 120 × 120 faces', -0.5, 0.8);
    await expect.poll(() => lead(page)).not.toBe(before);
    // 1.8 − 0.5, −1.2 + 0.25; 0.8 − 0.5, −0.9 + 0.8.
    const moved = ['1.3', '-0.95', '1.5', '0.3', '-0.1', '1.6'];
    const at = ['E5', 'F5', 'G5', 'P2', 'Q2', 'R2'];
    expect(await cells(page, sheet, at)).toEqual(moved);
    await page.locator('[aria-label^="Undo"]').click();
    await expect
      .poll(() => cells(page, sheet, at))
      .toEqual([...moved.slice(0, 3), '0.8', '-0.9', '1.6']);
    await page.locator('[aria-label^="Undo"]').click();
    await expect.poll(() => lead(page)).toBe(before);
  });

  test('arrow keys move what has the focus, a step a press, and say what the points read then', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 1000 } });
    const sheet = await openSet(page, /Plan of the set/);
    const point = hand(page, 'Key side of face');
    await point.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowUp');
    await expect.poll(() => point.getAttribute('aria-valuetext')).toBe('x 0.1 m, y 0.41 m');
    await expect
      .poll(() => page.locator('.figure-list [role=status]').innerText())
      .toMatch(/^x 0\.1 m, y 0\.41 m\. Key side of face reads \d+ lx/);
    // The picture is drawn anew meanwhile; the focus stays.
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'Key side of face',
    );
    expect(await cells(page, sheet, ['B9', 'C9'])).toEqual(['0.1', '0.41']);
    await page.locator('[aria-label^="Undo"]').click();
    await expect.poll(() => point.getAttribute('aria-valuetext')).toBe('x 0.1 m, y 0.4 m');
  });

  test('what a formula works out stays, and it is said', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 1000 } });
    const sheet = await openSet(page, /Plan of the set/);
    await hand(page, 'Aim of Small profile 19°').focus();
    await page.keyboard.press('ArrowRight');
    await page.getByText('A formula works out aim x (E6) of Aim of Small profile 19°.').waitFor();
    await page.keyboard.press('ArrowDown');
    await expect
      .poll(() => hand(page, 'Aim of Small profile 19°').getAttribute('aria-valuetext'))
      .toBe('aim x 1.8 m, aim y 4.15 m');
    expect(await cells(page, sheet, ['E6', 'F6'])).toEqual(['=0.9*B13', '4.15']);
  });

  test('Escape while dragging leaves everything as it was', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 1000 } });
    const sheet = await openSet(page, /Plan of the set/);
    const before = await lead(page);
    const { x, y } = await middleOf(hand(page, 'Canvas left'));
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 60, y + 60, { steps: 3 });
    await expect.poll(() => lead(page)).not.toBe(before);
    await page.keyboard.press('Escape');
    await expect.poll(() => lead(page)).toBe(before);
    await page.mouse.up();
    expect(await cells(page, sheet, ['B12', 'C12'])).toEqual(['-2', '4.3']);
  });

  test.each([
    ['dark', 1280],
    ['light', 390],
  ] as const)('axe finds nothing, %s, %i wide', async (theme, width) => {
    const { page } = await openApp({ theme, viewport: { width, height: 900 } });
    await openSet(page, /Plan of the set/);
    expect(await axeFaults(page, '.figures')).toEqual([]);
  });
});

describe('the section of the set', () => {
  test('a fixture that is lowered gives its height to the sheet', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 1000 } });
    const sheet = await openSet(page, /Section of the set/);
    await dragBy(page, 'Fresnel 650 at spot', 0, -0.5);
    await expect
      .poll(() => hand(page, 'Fresnel 650 at spot').getAttribute('aria-valuetext'))
      .toBe('x −3.2 m, z 2.5 m');
    expect(await cells(page, sheet, ['B4', 'C4', 'D4'])).toEqual(['-3.2', '3.4', '2.5']);
  });
});

test('polar, evenness and falloff come from cells too; each is saved both ways and printed in black', async () => {
  const { page } = await openApp({ viewport: { width: 1280, height: 1000 } });
  const sheet = await openSet(page, /Plan of the set/);
  await page.getByRole('button', { name: 'Figures over the whole page' }).click();
  await sheet.paste('L1', '84 lx\t92 lx\t88 lx\n80 lx\t90 lx\t85 lx\n71 lx\t78 lx\t74 lx');
  await sheet.type('L5', '3 m');
  await addFigure(page, /Section of the set/);
  await addFigure(page, /Polar intensity/, { Fixture: 'A4' });
  await addFigure(page, /Evenness/, { Readings: 'L1:N3' });
  await addFigure(page, /Falloff/, { 'Distance of the mark': 'L5', Fixture: 'A4' });
  await page.getByRole('button', { name: 'Figures over the whole page' }).click();
  expect(await page.locator('.figure h3').allInnerTexts()).toHaveLength(5);
  for (const [title, says] of [
    ['Plan of the set', 'Rope bench'],
    ['Section of the set', 'Rope bench'],
    ['Polar intensity of a fixture', 'beam 10°'],
    ['Evenness of an area', '92'],
    // 48,000 cd / 3² m².
    ['Falloff with distance', 'At the mark, 3 m away, it gives 5333 lx.'],
  ] as const)
    expect(await savedFigure(page, title), title).toContain(says);
  expect(await printedFigures(page)).toHaveLength(5);
});
