import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp, type OpenOptions } from '../support/browser.ts';
import { begin, type SheetHand } from '../support/sheet.ts';

interface Opened {
  readonly page: Page;
  readonly sheet: SheetHand;
}

async function open(card: string, options: OpenOptions = {}): Promise<Opened> {
  const { page } = await openApp(options);
  return { page, sheet: await begin(page, card) };
}

/** A blank book with these entries, typed one after the other. */
async function typed(entries: Readonly<Record<string, string>>): Promise<Opened> {
  const opened = await open('Blank book');
  for (const [address, text] of Object.entries(entries)) await opened.sheet.type(address, text);
  return opened;
}

/** Runs a command by what it is called, with the keyboard alone. */
async function find(page: Page, command: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.keyboard.type(command);
  await page.keyboard.press('Enter');
}

describe('what is typed', () => {
  test('a written unit gives the cell its quantity, and what was typed stays', async () => {
    const { page, sheet } = await typed({
      A1: '250 fc',
      A2: `10'6"`,
      A3: 'f/2.8 1/3',
      A4: '1/48 s',
    });
    // 250 fc × 10.7639 and 10.5 ft × 0.3048.
    expect(await sheet.read('A1')).toBe('2691 lx');
    expect(await sheet.entry('A1')).toBe('250 fc');
    expect(await sheet.read('A2')).toBe('3.2004 m');
    expect(await sheet.entry('A2')).toBe(`10'6"`);
    expect(await sheet.read('A3')).toMatch(/^f\/2\.8 (⅓|1\/3)$/);
    expect(await sheet.read('A4')).toBe('1/48 s');
    expect(await page.locator('.remark-count').count()).toBe(0);
  });

  test('what cannot be read as the cell’s quantity is refused with a sentence and stays', async () => {
    const { page, sheet } = await open('Harbour Hours');
    await sheet.go('C13');
    await page.keyboard.type('3 m');
    await page.keyboard.press('Enter');
    const sentence = page.locator('.grid-shell .sentence.shown');
    await sentence.waitFor();
    expect(await sentence.innerText()).toMatch(/3 m/);
    expect(await page.locator('.grid-shell .entry.open').inputValue()).toBe('3 m');
    await page.keyboard.press('Escape');
    expect(await sheet.entry('C13')).not.toContain('3 m');
  });
});

describe('one switch for each pair', () => {
  const entries = {
    A1: '250 fc',
    A2: '10.5 ft',
    A3: 'f/2.8 1/3',
    A4: '=SUNSET("2026-06-21",38.7,-9.1,1)',
    A5: '2.5 m',
    A6: '=A3',
  };

  test.each<[command: string, address: string, before: RegExp, after: RegExp]>([
    ['Switch lux and footcandles', 'A1', /^2691 lx$/, /^250 fc$/],
    ['Switch metres and feet', 'A2', /^3\.2004 m$/, /^10'6"$/],
    [
      'Switch the 24-hour and the 12-hour clock',
      'A4',
      / 2[01]:\d\d(:\d\d)?$/,
      / [89]:\d\d(:\d\d)? pm$/,
    ],
    ['Switch decimal point and comma', 'A5', /^2\.5 m$/, /^2,5 m$/],
    // A third over f/2.8 is nearest to the half mark when said in halves.
    [
      'Say f-numbers in thirds, halves, tenths or decimals',
      'A6',
      /^f\/2\.8 (⅓|1\/3)$/,
      /^f\/2\.8 (½|1\/2)$|^f\/2\.8 \+ 0\.3$/,
    ],
  ])('%s is one step, and one step back', async (command, address, before, after) => {
    const { page, sheet } = await typed(entries);
    expect(await sheet.read(address)).toMatch(before);
    await find(page, command);
    expect(await sheet.read(address)).toMatch(after);
    await page.keyboard.press('Control+z');
    expect(await sheet.read(address)).toMatch(before);
  });

  test('the menu of units holds them all, and each acts at once', async () => {
    const { page, sheet } = await typed({ ...entries, A1: '2.5 lx' });
    await page.locator('.units').focus();
    await page.keyboard.press('Enter');
    const groups = page.locator('#units-menu [role=radiogroup]');
    expect(await groups.count()).toBe(6);
    // The first group takes the focus: an arrow key chooses its neighbour.
    await page.locator('#units-menu :focus').waitFor();
    await page.keyboard.press('ArrowRight');
    await page.waitForSelector('#units-menu [aria-label=footcandles]:checked');
    await page.keyboard.press('Escape');
    expect(await sheet.read('A1')).toBe('0.2323 fc');
  });

  test('a setting that cannot be is refused in words, and stays to be put right', async () => {
    const { page } = await open('Blank book');
    await find(page, 'Settings of the book');
    const volts = page.getByRole('textbox', { name: 'Mains voltage' });
    await volts.fill('0');
    await volts.press('Tab');
    expect(await volts.getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('#setting-mainsVolts-help').innerText()).toBe(
      'A mains voltage is above 0 and up to 1000 V, such as 230.',
    );
    expect(await volts.inputValue()).toBe('0');
    await volts.fill('120');
    await volts.press('Tab');
    expect(await volts.inputValue()).toBe('120 V');
    expect(await volts.getAttribute('aria-invalid')).toBe('false');
    const zone = page.getByRole('textbox', { name: 'Time zone' });
    await zone.fill('Lisbon');
    await zone.press('Tab');
    expect(await zone.getAttribute('aria-invalid')).toBe('true');
    await zone.fill('Europe/Lisbon');
    await zone.press('Tab');
    expect(await zone.getAttribute('aria-invalid')).toBe('false');
  });
});

describe('the check', () => {
  const mixed = {
    A1: '400 lx',
    A2: '3 m',
    A3: 'f/2.8',
    A4: 'f/4',
    B1: '=A1+A2',
    B2: '=SUM(A3:A4)',
  };

  test('marks the cell, lists the book, leads to each place and is quiet once it is right', async () => {
    const { page, sheet } = await typed(mixed);
    const count = page.locator('.remark-count');
    await page.getByRole('button', { name: '2 remarks: show them' }).waitFor();
    expect(await page.locator('.sheet-link small').innerText()).toBe('2 remarks');
    expect(await sheet.cell('B1').getAttribute('class')).toContain('remark');

    await sheet.go('D9');
    await page.keyboard.press('F7');
    const list = page.getByRole('dialog', { name: 'Remarks' });
    expect(await list.innerText()).toContain('A1 is an illuminance and A2 is a distance');
    // The key and Enter lead from one to the next.
    await page.keyboard.press('Enter');
    await page.waitForFunction(() =>
      /^B1/.test(document.querySelector('.slip .where')?.textContent ?? ''),
    );
    await page.keyboard.press('F7');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() =>
      /^B2/.test(document.querySelector('.slip .where')?.textContent ?? ''),
    );
    expect(await page.locator('.slip .remark').innerText()).toContain('FCOMBINE');

    await page.keyboard.type('=FCOMBINE(A3:A4)');
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      () => document.querySelector('.remark-count b')?.textContent === '1',
    );
    await sheet.type('B1', '=A1*2');
    await count.waitFor({ state: 'detached' });
    expect(await list.innerText()).toContain('What cells measure goes together');
    expect(await page.locator('.sheet-link small').count()).toBe(0);
  });

  test('the sample book is right, and says nothing', async () => {
    const { page } = await open('Harbour Hours');
    await page.keyboard.press('F7');
    const list = page.getByRole('dialog', { name: 'Remarks' });
    // The readings by different receptors are noted and not counted: the check has read the book.
    await list.getByText('Worth a look').waitFor();
    expect(await list.innerText()).toContain('What cells measure goes together');
    expect(await page.locator('.remark-count').count()).toBe(0);
  });
});

describe('verdicts', () => {
  test('a reading with a target says how far off it is, and the sheet counts it', async () => {
    const { page, sheet } = await typed({ A1: 'Fill side', B1: '200 lx' });
    await sheet.go('B1');
    await find(page, 'What a cell should come to');
    await page.keyboard.type('400 lx');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() =>
      document.querySelector('aside.slip')?.textContent?.includes('1 stop under'),
    );
    await page.getByText('0 of 1 point agree, 1 is off').waitFor();
    await page.keyboard.press('Escape');
    await sheet.type('B1', '400 lx');
    await page.getByText('1 of 1 point agrees').waitFor();
  });
});

describe('what a selection amounts to', () => {
  const amounts = (page: Page) =>
    page
      .locator('.amounts')
      .innerText()
      .then((text) => text.replace(/\s+/g, ' '));

  test.each<[string, Record<string, string>, RegExp[]]>([
    [
      'light',
      { A1: '100 lx', A2: '400 lx' },
      [/sum 500 lx/, /average in light 250 lx/, /spread 2 stops/, /lowest over mean 0\.4:1/],
    ],
    // √(2.8² + 2.8²) is f/4: two equal lights are one stop more.
    [
      'f-numbers',
      { A1: 'f/2.8', A2: 'f/2.8' },
      [/combined f\/4/, /average in light f\/2\.8/, /spread 0 stops/],
    ],
    [
      'loads',
      { A1: '650 W', A2: '500 W' },
      [/sum 1150 W/, /at 230 V, power factor 1 \(tungsten only\) 5 A/],
    ],
    ['money', { A1: '100 EUR', A2: '25.50 EUR' }, [/sum 125\.50 EUR/]],
  ])('%s', async (_, entries, wanted) => {
    const { page, sheet } = await typed(entries);
    await sheet.go('A1');
    await page.keyboard.press('Shift+ArrowDown');
    await page.locator('.amounts b').first().waitFor();
    const said = await amounts(page);
    for (const words of wanted) expect(said).toMatch(words);
  });
});
