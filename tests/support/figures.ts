import { readFile } from 'node:fs/promises';
import { expect } from 'vitest';
import type { Locator, Page } from 'playwright-core';

export const figureCalled = (page: Page, title: string): Locator =>
  page.locator('.figure', { has: page.getByRole('heading', { name: title }) });

export const menuOf = (page: Page, title: string): Locator =>
  page.getByRole('button', { name: `Menu of ${title}`, exact: true });

export async function choose(page: Page, title: string, item: string): Promise<void> {
  await menuOf(page, title).click();
  await page.getByRole('menuitem', { name: item }).click();
}

/** Saves a figure by its menu both ways; the drawing’s text, and the width that the picture should have. */
export async function savedFigure(page: Page, title: string): Promise<string> {
  const save = async (item: string) => {
    const waiting = page.waitForEvent('download');
    await choose(page, title, item);
    const download = await waiting;
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  };
  const svg = await save('Save as a drawing');
  expect(svg.name).toBe(`${title}.svg`);
  const text = svg.bytes.toString('utf8');
  expect(text).not.toContain('var(');
  const root = await page.evaluate(
    (drawing) => new DOMParser().parseFromString(drawing, 'image/svg+xml').documentElement.tagName,
    text,
  );
  expect(root).toBe('svg');
  const width = Number(/ width="(\d+)"/.exec(text)?.[1]);
  const png = await save('Save as a picture');
  expect(png.name).toBe(`${title}.png`);
  // PNG: the width stands in bytes 16 to 19 of the header.
  expect(png.bytes.subarray(1, 4).toString('latin1')).toBe('PNG');
  expect(png.bytes.readUInt32BE(16)).toBe(2 * width);
  return text;
}

export interface PrintedFigure {
  readonly width: number;
  readonly letters: number;
  /** Shapes of points on a ladder. */
  readonly shapes: number;
}

/** The figures as paper has them: black, and nothing lost on it. */
export async function printedFigures(page: Page): Promise<readonly PrintedFigure[]> {
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const printed = await page.evaluate(() =>
    // Those on the screen stay behind the page that is printed.
    Array.from(document.querySelectorAll<SVGElement>('.figure > svg'))
      .filter((svg) => svg.checkVisibility())
      .map((svg) => ({
        width: svg.getBoundingClientRect().width,
        paints: [...svg.querySelectorAll('text')].map((text) => getComputedStyle(text).fill),
        letters: svg.querySelectorAll('text').length,
        shapes: svg.querySelectorAll('.point path').length,
      })),
  );
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await page.emulateMedia({ media: 'screen' });
  for (const { width, paints } of printed) {
    expect(width).toBeGreaterThan(300);
    for (const paint of paints) {
      const [r = 0, g = 0, b = 0] = (paint.match(/\d+/g) ?? []).map(Number);
      expect(Math.max(r, g, b) - Math.min(r, g, b), paint).toBe(0);
      expect(Math.max(r, g, b), paint).toBeLessThan(0x60);
    }
  }
  return printed;
}
