import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin, ready, type SheetHand } from '../support/sheet.ts';

interface Printed {
  /** Words and units of each cell by its row number and column letter; of the first run that has it. */
  readonly cells: Readonly<Record<string, string>>;
  /** Column letters of each run of pages. */
  readonly runs: readonly (readonly string[])[];
  /** All that paper shows, in the order of the page. */
  readonly text: string;
  readonly scale: number;
  /** Shapes of verdicts beside their words. */
  readonly shapes: number;
  /** Colours of words and marks, each once. */
  readonly colours: readonly string[];
  readonly grounds: readonly string[];
  /** Cells whose words reach under the next written cell, over their own edge if it is to hold them, or off the paper. */
  readonly cut: readonly string[];
}

const painterLoaded = (page: Page) =>
  expect
    .poll(() =>
      page.evaluate(() => {
        dispatchEvent(new Event('beforeprint'));
        const found = document.querySelector('.printed') !== null;
        dispatchEvent(new Event('afterprint'));
        return found;
      }),
    )
    .toBe(true);

async function showSheet(page: Page, name: string): Promise<void> {
  await page.locator('.sheet-link', { hasText: name }).click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** The room between the margins of A4, in CSS pixels: 210 or 297 mm less twice 12 mm. */
const upright = 703;
const lying = 1032;

/** What is on paper when the browser itself prints, read while it would be printing. */
async function printed(page: Page, width = lying): Promise<Printed> {
  await painterLoaded(page);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.setViewportSize({ width, height: 703 });
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const found = await page.evaluate(() => {
    const cells: Record<string, string> = {};
    const cut: string[] = [];
    const colours = new Set<string>();
    const grounds = new Set<string>([getComputedStyle(document.documentElement).backgroundColor]);
    const runs = Array.from(document.querySelectorAll('.printed table')).flatMap((table) => {
      const letters = Array.from(
        table.querySelectorAll('thead tr:first-child th'),
        (th) => th.textContent,
      );
      for (const row of table.querySelectorAll('tbody tr')) {
        const number = row.querySelector('th')?.textContent ?? '';
        row.querySelectorAll<HTMLElement>('td').forEach((td, index) => {
          const pieces = Array.from(td.querySelectorAll<HTMLElement>('.words, small'));
          const words = pieces.map((piece) => piece.innerText).join(' ');
          cells[`${letters[index + 1]}${number}`] ??= words.replace(/\s+/g, ' ').trim();
          const style = getComputedStyle(td);
          colours.add(style.color);
          colours.add(getComputedStyle(td, '::before').borderTopColor);
          grounds.add(style.backgroundColor);
          const right = Math.max(0, ...pieces.map((one) => one.getBoundingClientRect().right));
          let next = td.nextElementSibling;
          while (next && !next.matches('.filled')) next = next.nextElementSibling;
          const bound = td.matches('.left') ? next?.getBoundingClientRect().left : undefined;
          const own = td.matches('.left') ? innerWidth : td.getBoundingClientRect().right;
          if (right > Math.min(bound ?? own, innerWidth) + 0.5) cut.push(words);
          if (style.overflowX === 'hidden' && td.scrollWidth > td.clientWidth) cut.push(words);
          // Cut within its own box, with an ellipsis.
          const isCut = pieces.some(
            (one) =>
              getComputedStyle(one).overflowX !== 'visible' && one.scrollWidth > one.clientWidth,
          );
          if (isCut) cut.push(words);
        });
      }
      // A table that goes on to another page is no run of its own.
      return table.closest('.cells.new-page') ? [] : [letters.filter((letter) => letter !== '')];
    });
    const part = document.querySelector('.printed .cells');
    return {
      cells,
      runs,
      cut,
      text: document.body.innerText,
      scale: part ? Number(getComputedStyle(part).zoom) : 0,
      shapes: document.querySelectorAll('.printed td.verdict svg.shape').length,
      colours: [...colours],
      grounds: [...grounds],
    };
  });
  await page.emulateMedia({ media: null, colorScheme: 'dark' });
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  return found;
}

const sailLoft = async (page: Page): Promise<SheetHand> => {
  const sheet = await begin(page, 'sample book');
  await showSheet(page, 'Sail loft');
  return sheet;
};

// Points and verdicts of the sail loft as templates/harbour-hours/expected.ts works them out.
const verdicts = {
  'Key side of face': ['F12', 'agrees'],
  'Fill side of face': ['F13', '1/3 stop over'],
  'Back light on shoulder': ['F14', 'agrees'],
  'Canvas left': ['F15', 'agrees'],
  'Canvas right': ['F16', '0.4 stop over'],
  'Rope bench': ['F17', '0.4 stop over'],
  'Window gap': ['F20', 'clips by 1.1 stops'],
} as const;

describe('a printed sheet', () => {
  it('holds every point with its verdict and shape, from the first column to the last', async () => {
    const { page } = await openApp();
    await sailLoft(page);
    const { cells, runs, text, shapes } = await printed(page);
    for (const [point, [address, words]] of Object.entries(verdicts)) {
      expect(cells[`A${address.slice(1)}`]).toBe(point);
      expect(cells[address], point).toBe(words);
    }
    expect(shapes).toBe(11);
    expect(cells['U11']).toBe('Its own');
    expect(cells['U13']).toBe('39.83 lx');
    expect(cells['A31']).toMatch(/^Bright sources and the sun can hurt eyes\./);
    expect(runs.map((letters) => letters[0])).toEqual(['A', 'A']);
    expect(runs.flat().filter((letter) => letter !== 'A')).toEqual([...'BCDEFGHIJKLMNOPQRSTU']);
    expect(text).toContain('Sail loft');
    expect(text).toContain('How far each reading is from what was planned');
    expect(text).toContain('7 of 11 points agree');
    expect(text).toMatch(/tolerance 1\/4\s+stop/);
  });

  it('shows nothing of the bar, the contents, the slip and the entry line', async () => {
    const { page } = await openApp();
    const sheet = await sailLoft(page);
    await sheet.go('F13');
    // Of the bar, the contents and the slip, each seen on the screen before.
    const around = ['Find a command', 'nothing leaves this device', 'Boat shed', 'F13 ·'];
    const screen = page.locator('body');
    for (const words of around) await expect.poll(() => screen.innerText()).toContain(words);
    const { text } = await printed(page);
    for (const words of around) expect(text).not.toContain(words);
    // In each of two runs of pages, and in the ladder under them with its words.
    expect(text.match(/Rope bench/g)?.length).toBeGreaterThanOrEqual(4);
    expect(text).not.toContain('Walk');
  });

  it('is dark ink on white in the dark theme, and no cell is cut', async () => {
    const { page } = await openApp({ theme: 'dark' });
    await begin(page, 'sample book');
    for (const [name, width] of [
      ['Sail loft', lying],
      ['Sun', upright],
      ['Camera', upright],
    ] as const) {
      await showSheet(page, name);
      const { colours, grounds, cut } = await printed(page, width);
      expect(grounds, name).toEqual(['rgb(255, 255, 255)']);
      for (const colour of colours) {
        const [red = 255, green, blue] = (colour.match(/\d+/g) ?? []).map(Number);
        expect([green, blue], colour).toEqual([red, red]);
        expect(red, colour).toBeLessThan(0x60);
      }
      expect(cut, name).toEqual([]);
    }
  });

  it('stays one run of pages down to 60 %, and is split rather than smaller', async () => {
    const { page } = await openApp();
    await begin(page, 'sample book');
    await showSheet(page, 'Camera');
    const narrow = await printed(page);
    expect(narrow.runs).toHaveLength(1);
    expect(narrow.scale).toBeGreaterThanOrEqual(0.8);
    await showSheet(page, 'Sail loft');
    const wide = await printed(page);
    expect(wide.runs).toHaveLength(2);
    expect(wide.scale).toBeGreaterThanOrEqual(0.6);
    expect(wide.scale).toBeLessThan(1);
  });

  it('is laid for Ctrl P as well, and afterwards the screen is as it was', async () => {
    const { page } = await openApp({
      before: () => {
        window.print = () => {
          dispatchEvent(new Event('beforeprint'));
          const table = document.querySelector<HTMLElement>('.printed');
          document.documentElement.dataset['printed'] = table?.textContent ?? 'nothing';
          dispatchEvent(new Event('afterprint'));
        };
      },
    });
    const sheet = await sailLoft(page);
    await sheet.go('F13');
    await page.keyboard.press('Control+P');
    await page.locator('html[data-printed]').waitFor();
    expect(await page.locator('html').getAttribute('data-printed')).toContain('Window colour');
    expect(await page.locator('.printed').count()).toBe(0);
    expect(await page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0);
    expect(await sheet.read('F13')).toBe('1/3 stop over');
  });

  it('follows the paper of the book: upright A4 for a narrow sheet, lying for a wide one', async () => {
    const { page } = await openApp();
    await sailLoft(page);
    expect(await boxOf(page)).toEqual([842, 595]);
    await showSheet(page, 'Camera');
    expect(await boxOf(page)).toEqual([595, 842]);
  });

  it('of a book in Letter is on Letter, and one with nothing in it prints its head', async () => {
    const { page } = await openApp({ locale: 'en-US' });
    await page
      .getByRole('button', { name: /New book|Blank|Empty/i })
      .first()
      .click();
    await ready(page);
    expect(await boxOf(page)).toEqual([612, 792]);
    expect((await printed(page)).runs).toEqual([]);
  });
});

/** Width and height of the first page of the sheet as a PDF, in points. */
async function boxOf(page: Page): Promise<readonly number[]> {
  await painterLoaded(page);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString('latin1'));
  return [Math.round(Number(box?.[1])), Math.round(Number(box?.[2]))];
}

/** What reaches over the page it is on, of every sheet or the page that is laid; read while it would be printed. */
async function overEdge(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const found = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.printed > section')].flatMap((section) => {
      const edge = section.getBoundingClientRect().right + 0.5;
      // A picture within a drawing is cut off at its edges, however far its lines are meant to reach.
      const boxes = section.querySelectorAll<Element>(
        '.words, small, p, li, th, dt, dd, h1, svg:not(svg svg)',
      );
      return [...boxes]
        .filter((box) => box.getBoundingClientRect().right > edge)
        .map((box) => box.textContent);
    }),
  );
  await page.emulateMedia({ media: null, colorScheme: 'dark' });
  return found;
}

const choose = async (page: Page, command: string) => {
  await page.keyboard.press('Control+K');
  await page.keyboard.type(command);
  await page.keyboard.press('Enter');
};

const silent = () => {
  window.print = () => {
    document.documentElement.dataset['asked'] = 'true';
  };
};

/** Pages of what was asked for last. */
async function pagesOf(page: Page): Promise<number> {
  const pdf = await page.pdf({ preferCSSPageSize: true });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

const asked = async (page: Page) => {
  await page.locator('html[data-asked]').waitFor();
};

/** Prints the sample book on another paper than its own. */
async function choosePaper(page: Page, paper: string): Promise<void> {
  await choose(page, 'Settings of the book');
  await page.getByLabel('Paper', { exact: true }).selectOption(paper);
  await page.keyboard.press('Escape');
}

describe.each([
  ['A4', 'en-GB', [595, 842]],
  ['Letter', 'en-US', [612, 792]],
] as const)('on %s', (paper, locale, size) => {
  it('holds the whole sample book, no text over its right edge, notes numbered at its end', async () => {
    const { page } = await openApp({ locale, before: silent });
    await begin(page, 'sample book');
    await choosePaper(page, paper);
    await painterLoaded(page);
    await choose(page, 'Print the whole book');
    await asked(page);
    expect(await overEdge(page)).toEqual([]);
    expect(await page.locator('.printed h1').allTextContents()).toEqual([
      'Sail loft',
      'Boat shed',
      'Camera',
      'Tungsten dimming',
      'Recce',
      'Sun',
      'Reflected survey',
      'Match',
      'Fixtures and distances',
      'Set plan',
      'Backdrop',
      'Marks',
      'Power',
      'Compare',
      'Choosing',
      'Hire',
      'Running order of light',
      'Package',
      'Set-up log',
      'Out and back',
    ]);
    const numbers = await page
      .locator('.printed > section:first-child .note-number')
      .allTextContents();
    const notes = page.locator('.printed > section:first-child .end-notes li');
    expect(new Set(numbers).size).toBe(await notes.count());
    expect(numbers.length).toBeGreaterThan(0);
    const planned = await page.locator('.printed > section, .printed .new-page').count();
    // A page for each of twenty sheets, more for the columns of wide ones, and for their figures.
    const pages = await pagesOf(page);
    expect(pages).toBeGreaterThanOrEqual(20);
    expect(pages).toBeLessThanOrEqual(54);
    // The browser made no others than were planned.
    expect(pages).toBe(planned);
  });

  it('hands a set-up over on one page', async () => {
    const { page } = await openApp({ locale, before: silent });
    await begin(page, 'sample book');
    await painterLoaded(page);
    await showSheet(page, 'Sail loft');
    await choose(page, 'Hand-over sheet');
    const sheet = page.locator('dialog .handover');
    await sheet.waitFor();
    const text = (await sheet.innerText()).replace(/\s+/g, ' ');
    // As templates/harbour-hours has them: camera, a point, a light, a ratio, a colour.
    for (const words of ['ISO 800', '1/50 s', 'Fill side of face', 'stop over', '2.1 m', '3.84:1'])
      expect(text).toContain(words);
    expect(text).toMatch(/3390 K/);
    expect(text).toContain('1.2 m × 1.2 m, 1 m before the lamp, loses 1/4 stop');
    expect(text).not.toContain('fixtures and diffusion of the lights');
    await page.getByRole('button', { name: 'Print', exact: true }).click();
    await asked(page);
    expect(await overEdge(page)).toEqual([]);
    expect(await pagesOf(page)).toBe(1);
  });

  it.each([
    ['Key, fill and background', 3],
    ['Reflected survey', 2],
    ['Camera', 2],
    ['Tungsten dimming', 1],
    ['Sun', 1],
  ] as const)('holds %s whole on %d pages at most', async (template, most) => {
    const { page } = await openApp({ locale, before: silent });
    await begin(page, template);
    const box = [...(await boxOf(page))].sort((a, b) => a - b);
    expect(box, 'the paper of where the book was begun').toEqual(size);
    expect(await overEdge(page)).toEqual([]);
    const pages = await pagesOf(page);
    expect(pages).toBeGreaterThanOrEqual(1);
    expect(pages).toBeLessThanOrEqual(most);
  });
});
