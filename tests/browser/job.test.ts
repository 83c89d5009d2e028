import { readFile } from 'node:fs/promises';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { loft, shed } from '../../templates/harbour-hours/walks.ts';
import { openApp } from '../support/browser.ts';
import { begin, handOn, ready, type SheetHand } from '../support/sheet.ts';

// The job from meter readings to a verdict, by clicks and keys on the production build. The numbers
// are those worked out by hand in templates/harbour-hours/expected.ts.

const card = 'Key, fill and background';

const eventually = (read: () => Promise<string>) => expect.poll(read);

async function loftOnScreen(page: Page): Promise<SheetHand> {
  const sheet = await begin(page, card);
  await sheet.paste('A1', loft);
  await eventually(() => sheet.read('C13')).toBe('f/1.4 1/3');
  return sheet;
}

describe('from readings to a verdict', () => {
  it('a walk that is pasted as it was written fills the points, and the verdicts follow', async () => {
    const { page } = await openApp();
    const sheet = await loftOnScreen(page);
    await sheet.type('B17', '-2');
    await sheet.type('B18', '-2');
    await sheet.type('B19', '-1');
    await eventually(() => sheet.read('F18')).toBe('0.4 stop over');
    expect(await sheet.read('E13')).toBe('−1 2/3 stops');
    expect(await sheet.read('B8')).toBe('3.17:1');
    expect(await sheet.read('E17')).toBe('−2 stops');
    expect(await sheet.read('E18')).toBe('−1.6 stops');
    expect(await sheet.read('E19')).toBe('−0.56 stop');
    expect(await sheet.read('F19')).toBe('0.4 stop over');
    expect(await sheet.read('D5')).toBe('6.25 cd/m²');
    expect(await sheet.read('F4')).toBe('clean');
  });

  it('a smaller tolerance is set in one place and the verdicts follow', async () => {
    const { page } = await openApp();
    const sheet = await loftOnScreen(page);
    expect(await sheet.read('F13')).toBe('agrees');
    await page.getByRole('button', { name: /tolerance/ }).click();
    const field = page.getByRole('textbox', { name: 'Another tolerance, in stops' });
    await field.fill('1/4');
    await field.press('Enter');
    await eventually(() => sheet.read('F13')).toBe('1/3 stop over');
  });

  it('says what closes the gap, and never nearer than the lamp may stand', async () => {
    const { page } = await openApp();
    const sheet = await loftOnScreen(page);
    await sheet.type('B13', '-2 1/2');
    await sheet.type('N13', '2.1 m');
    await sheet.type('P13', '7 %');
    // Wanted 340 · 2^(1/2) / 16 = 30.05 lx; of 53.55 lx 39.83 are its own: 1 + (30.05 − 53.55) / 39.83.
    await eventually(() => sheet.read('G13')).toBe('× 0.41');
    expect(await sheet.read('H13')).toBe('3.28 m');
    expect(await sheet.read('I13')).toBe('3 %');
    await sheet.type('B13', '-1');
    await sheet.type('O13', '1.9 m');
    await eventually(() => sheet.read('H13')).toBe('nearer than this lamp may stand');
  });

  it('a walk with decimal commas and a missing reading comes in, and the gap is named', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, card);
    await sheet.paste('A1', shed);
    await eventually(() => sheet.read('K13')).toBe('41.5 lx');
    expect(await sheet.read('D3')).toBe('1/50 s');
    expect(await page.getByRole('status').allInnerTexts()).toContainEqual(
      expect.stringContaining('Still without a reading: Rope bench.'),
    );
  });

  it('typing one reading changes the verdicts that hang on it, and undo takes it back', async () => {
    const { page } = await openApp();
    const sheet = await loftOnScreen(page);
    await sheet.type('C12', 'f/4');
    await eventually(() => sheet.read('F12')).toBe('1 stop over');
    expect(await sheet.read('E13')).toBe('−2 2/3 stops');
    await page.keyboard.press('Control+z');
    await eventually(() => sheet.read('F12')).toBe('agrees');
    await page.keyboard.press('Control+Shift+Z');
    await eventually(() => sheet.read('F12')).toBe('1 stop over');
  });

  it('a switch of units changes how readings are said and no reading', async () => {
    const { page } = await openApp();
    const sheet = await loftOnScreen(page);
    await page.getByText('fc', { exact: true }).first().click();
    await eventually(() => sheet.read('C19')).toBe('7.897 fc');
    expect(await sheet.entry('C19')).toBe('85 lx');
    await page.getByText('lux', { exact: true }).first().click();
    await eventually(() => sheet.read('C19')).toBe('85 lx');
  });
});

describe('keeping', () => {
  it('a reload loses nothing, and undo goes on where it was', async () => {
    const { page } = await openApp();
    const sheet = await loftOnScreen(page);
    await sheet.type('C12', 'f/4');
    await page.getByText(/^Saved/).waitFor();
    await page.reload();
    await ready(page);
    const again = handOn(page);
    await eventually(() => again.read('F12')).toBe('1 stop over');
    await page.keyboard.press('Control+z');
    await eventually(() => again.read('F12')).toBe('agrees');
  });

  it('a book saved to a file opens elsewhere, and saved again has the same bytes', async () => {
    const first = await openApp();
    const sheet = await loftOnScreen(first.page);
    await sheet.type('U40', 'from the loft');
    const saved = await saveFile(first.page);
    await first.close();
    const second = await openApp();
    await openFile(second.page, writeTemporary('loft.halfstop.json', saved));
    const there = handOn(second.page);
    await eventually(() => there.read('E13')).toBe('−1 2/3 stops');
    expect(await there.read('U40')).toBe('from the loft');
    expect(await saveFile(second.page)).toBe(saved);
  });

  it('a truncated, foreign or newer file is refused in a sentence and opens nothing', async () => {
    const { page } = await openApp();
    await begin(page, card);
    const whole = await saveFile(page);
    for (const [name, text] of [
      ['cut.json', whole.slice(0, whole.length / 2)],
      ['foreign.json', '{"hello": "there"}'],
      ['newer.json', whole.replace(/"version": 1/, '"version": 999')],
    ] as const) {
      const notice = await refusal(page, writeTemporary(name, text));
      expect(notice, name).toMatch(/^[A-Z“"].*\.$/s);
    }
  });
});

describe('bad input', () => {
  it('what no meter says is refused at once and stays in the editor', async () => {
    const { page } = await openApp();
    const sheet = await begin(page, card);
    await sheet.type('C12', '3 m');
    await page
      .getByRole('alert')
      .getByText(/A reading is an f-number, lux/)
      .waitFor();
    await page.keyboard.press('Escape');
    expect(await sheet.read('C12')).toBe('');
  });

  it.each([
    ['=FSTOPS(B40,2.8)', /waiting for reading/],
    ['=INVERSESQUARE(800,0,4)', /distance must be more than zero/],
    ['=INVERSESQUARE(800,"250 fc",4)', /distance/],
    ['=SHUTTERTIME(400,25)', /angle must be more than 0 and at most 360/],
    ['=A40+1', /circular|itself/i],
    ['=STOPS(0,100)', /no light at level/],
  ])('%s says in words what is wrong', async (formula, words) => {
    const { page } = await openApp();
    const sheet = await begin(page, 'Blank book');
    await sheet.type('A40', formula);
    await sheet.go('A40');
    await eventually(() => page.locator('aside.slip').innerText()).toMatch(words);
  });
});

async function saveFile(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  return readFile(await (await download).path(), 'utf8');
}

async function openFile(page: Page, path: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  await (await chooser).setFiles(path);
  await ready(page);
}

async function refusal(page: Page, path: string): Promise<string> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Book menu' }).click();
  await page.getByRole('menuitem', { name: /Open a file/ }).click();
  await (await chooser).setFiles(path);
  const notice = page.locator('.notices');
  await expect.poll(() => notice.innerText()).not.toBe('');
  const said = (await notice.innerText()).trim();
  await page.reload();
  await ready(page);
  return said;
}

const folder = mkdtempSync(join(tmpdir(), 'halfstop-job-'));

function writeTemporary(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}
