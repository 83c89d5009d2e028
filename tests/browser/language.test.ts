import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openTestPage } from '../support/browser.ts';

/**
 * What stands on a screen and is no sentence of the catalogue, each with its reason. Everything else
 * on the screens below comes out of the catalogue, which is in brackets here.
 */
const exceptions: readonly (readonly [selector: string, why: string])[] = [
  ['[role=grid]', 'the book’s own text, addresses, values'],
  ['kbd', 'names of keys'],
  ['code', 'formulas'],
  ['.sign', 'the name of the product'],
  ['[role=option] > span', 'keys of commands, summaries of functions, meanings of names'],
  ['.big, .entry-result, .amounts b', 'a value with its unit'],
  ['.entry-field', 'a formula as it is typed'],
  ['.walk .how label', 'units of meters'],
  ['.worked', 'a function: its name, its summary, its parameters'],
  ['[role=option], .reference [role=group] > h3', 'names of functions and of their families'],
  ['.reference .name, .reference .lead, .reference .lead + p', 'what a function says of itself'],
  ['.reference .parameters, .reference .equation, .reference .cited', 'the same'],
  ['.reference .examples p, .reference .limits, .reference .chips', 'the same'],
  ['.offered .card', 'exercises of ours, which say what they are themselves, as templates do'],
  ['.box-body .chip', 'names of quantities, which stand with them in functions/'],
];

/** Texts that are the same in every language, each with its reason. */
const kept = [
  'Harbour Hours', // the title of the sample book
  'key_side', // a name in a book, as an example
  'FIXTURELUX("Key", 3)', // a formula, as an example
  'SPECTRUMCRI("Key")', // the same
  'FSTOPS', // a function, as the reference names its page
  'xlsx', // a form of files, and so the next three
  'ods',
  'csv',
  'tsv',
];

/** Texts and names on the screen outside brackets. */
async function unbracketed(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    ({ skipped, kept }) => {
      const names = ['aria-label', 'title', 'placeholder', 'alt', 'aria-description'];
      const wordy = (text: string) => /\p{L}{2,}/u.test(text);
      const outside = (text: string) => {
        let depth = 0;
        let rest = '';
        for (const sign of text) {
          if (sign === '[') depth += 1;
          else if (sign === ']') depth -= 1;
          else if (depth === 0) rest += sign;
        }
        return kept.reduce((left, known) => left.replace(known, ''), rest);
      };
      const found = new Set<string>();
      const seen = (element: Element) =>
        !element.closest(skipped) && element.checkVisibility({ visibilityProperty: true });
      for (const element of document.querySelectorAll('body *')) {
        if (!seen(element)) continue;
        for (const name of names) {
          const text = element.getAttribute(name) ?? '';
          if (wordy(outside(text))) found.add(`${name}: ${text}`);
        }
      }
      // A sentence may go over several elements, so brackets are counted over a whole block of text.
      const blocks =
        'button, li, p, td, th, dt, dd, h1, h2, h3, h4, label, option, legend, output, small, text, i, b, span';
      const texts = new Map<Element, string>();
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        const parent = node.parentElement;
        if (!parent || /^(SCRIPT|STYLE)$/.test(parent.tagName) || !seen(parent)) continue;
        let block: Element = parent.closest(blocks) ?? parent;
        for (
          let up = block.parentElement?.closest(blocks);
          up;
          up = up.parentElement?.closest(blocks)
        )
          block = up;
        texts.set(block, (texts.get(block) ?? '') + (node.textContent ?? ''));
      }
      for (const text of texts.values()) if (wordy(outside(text))) found.add(text.trim());
      return [...found];
    },
    { skipped: exceptions.map(([selector]) => selector).join(', '), kept },
  );
}

/** Opens what a command opens, by its name in English, which stands in the brackets. */
async function choose(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.fill('.finder-text', name);
  await page.keyboard.press('Enter');
}

async function openBlank(): Promise<Page> {
  const { page } = await openTestPage('language', { locale: 'ja-JP' });
  await page.waitForSelector('.welcome .card');
  expect(await unbracketed(page)).toEqual([]);
  await page.click('.card >> text=[Blank book]');
  await page.waitForSelector('.grid[data-ready]');
  for (const text of ['f/2.8', 'f/4', '=FSTOPS(A1, A2)']) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('ArrowUp');
  await page.waitForSelector('.saved.saved');
  return page;
}

const dialogs = [
  'Settings of the book',
  'Names of the book',
  'Find and replace',
  'Keyboard',
  'About Halfstop',
  'Remarks on the book',
  'What a cell should come to',
  'What a cell measures',
  'How it is written',
  'Versions of this book',
  'Add a figure',
  'Fixtures',
  'Spectra',
  'Export',
  'Exercises',
];

test('the shell in another language shows no sentence that is not in the catalogue', async () => {
  const page = await openBlank();
  expect(await unbracketed(page)).toEqual([]);
  await page.click('.brand');
  expect(await unbracketed(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.click('.head h1 button');
  await page.waitForSelector('dialog[open] h2');
  expect(await unbracketed(page)).toEqual([]);
  await page.keyboard.press('Escape');
});

test('its dialogs show none either', async () => {
  const page = await openBlank();
  for (const name of dialogs) {
    await choose(page, name);
    await page.waitForSelector('dialog[open] h2');
    expect(await unbracketed(page), name).toEqual([]);
    const ask = page.locator('dialog').getByText('[Ask on this sheet]', { exact: true });
    if (name === 'Exercises') {
      await ask.click();
      await page.waitForSelector('dialog fieldset');
      expect(await unbracketed(page), 'Ask on this sheet').toEqual([]);
    }
    await page.keyboard.press('Escape');
    await page.waitForSelector('dialog[open]', { state: 'detached' });
  }
});

const openMenu = '[role=menu]:popover-open';

test('the menus of a cell, of rows and of a sheet, and what adds a sheet show none either', async () => {
  const page = await openBlank();
  await page.keyboard.press('Shift+F10');
  await page.waitForSelector(openMenu);
  expect(await unbracketed(page), 'cell').toEqual([]);
  await page.keyboard.press('Escape');
  await page.locator('.ht_clone_left .label').nth(1).click({ button: 'right' });
  await page.waitForSelector(openMenu);
  expect(await unbracketed(page), 'row').toEqual([]);
  await page.keyboard.press('Escape');
  await page.click('.sheet-link', { button: 'right' });
  await page.waitForSelector(openMenu);
  expect(await unbracketed(page), 'sheet').toEqual([]);
  await page.keyboard.press('Escape');
  await choose(page, 'Add a sheet');
  await page.waitForSelector('dialog[open] h2');
  expect(await unbracketed(page), 'add').toEqual([]);
});

test('the reference shows none either but what functions say of themselves', async () => {
  const page = await openBlank();
  await page.keyboard.press('F1');
  await page.waitForSelector('.reference-page h3.name');
  expect(await unbracketed(page)).toEqual([]);
});

const asked = async (page: Page, name: string, mimeType: string, content: string) => {
  const chooser = page.waitForEvent('filechooser');
  await choose(page, 'Import');
  await (await chooser).setFiles({ name, mimeType, buffer: Buffer.from(content) });
};

test('an import shows none either but what stands in the file', async () => {
  const page = await openBlank();
  await asked(page, '[x].csv', 'text/csv', '[a];[b] (fc)\n[c];25\n[d];6,5\n[e];[f]\n');
  await page.waitForSelector('.exchange form');
  expect(await unbracketed(page)).toEqual([]);
});

test('a file that its worker refuses is refused in the language of the page', async () => {
  const page = await openBlank();
  await asked(page, '[x].xlsx', 'application/zip', 'PK\u0003\u0004 and nothing more');
  const reason = page.locator('.exchange [role=alert]');
  await expect.poll(() => reason.innerText()).toMatch(/^\[.*\]$/s);
  expect(await unbracketed(page)).toEqual([]);
});

test('Walk shows none either', async () => {
  const page = await openBlank();
  await page.keyboard.press('ArrowUp');
  await choose(page, 'Mark as a reading');
  await choose(page, 'Walk through the readings');
  await page.waitForSelector('.walk');
  expect(await unbracketed(page)).toEqual([]);
});

/** What the sample says itself, longest first: its texts, titles and names. */
const ownTexts = [
  ...new Set(
    [
      ...readFileSync(
        new URL('../../templates/harbour-hours/book.json', import.meta.url),
        'utf8',
      ).matchAll(/"(?:text|title|name|purpose)": ?"((?:[^"\\]|\\.)*)"/g),
    ].map(([, text]) => JSON.parse(`"${text ?? ''}"`) as string),
  ),
]
  .filter(Boolean)
  .toSorted((a, b) => b.length - a.length);

/** Verdicts and units stand with the functions and quantities that say them, and not in the catalogue. */
const verdicts = new RegExp(
  [
    String.raw`agrees|in range|clean|too (blue|warm)|(green|magenta) by`,
    String.raw`(clips by )?\d[\d./\s]*stops?( over| under)?`,
    String.raw`cd\/m²|\b(lx|fc|fps|ISO|mired)\b`,
  ].join('|'),
  'g',
);

/** What is left of a text once brackets and what the book says itself are taken away. */
function leftOf(text: string): string {
  const said = text.replace(/^[a-z-]+: /, '');
  const outside = (rest: string): string => {
    const less = rest.replace(/\[[^[\]]*\]/g, ' ');
    return less === rest ? rest : outside(less);
  };
  const withoutVerdicts = outside(said).replace(verdicts, ' ');
  return ownTexts.reduce((left, known) => left.replaceAll(known, ' '), withoutVerdicts).trim();
}

test('drawn figures and the hand-over sheet show none either but what the book says itself', async () => {
  const { page } = await openTestPage('language', { locale: 'ja-JP' });
  await page.click('.card >> text=Harbour Hours');
  await page.waitForSelector('.grid[data-ready]');
  await choose(page, 'Go to the figures');
  await page.locator('.figure svg[role=img]').first().waitFor();
  const left = async () => {
    const found = await unbracketed(page);
    expect(found.length).toBeGreaterThan(10);
    return found.filter((text) => /\p{L}{2,}/u.test(leftOf(text)));
  };
  expect(await left()).toEqual([]);
  await choose(page, 'Hand-over sheet');
  await page.waitForSelector('dialog .handover');
  expect(await left()).toEqual([]);
});
