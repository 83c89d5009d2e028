import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

// The days of the sample book, from the recce to the strike. What its cells come to is worked out by
// hand in the expected.ts of each template and held in tests/standards.

async function menu(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Book menu' }).click();
  await page.getByRole('menuitem', { name }).click();
}

async function showSheet(page: Page, name: string): Promise<void> {
  await page.locator('.sheet-link', { hasText: name }).click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

it('the recce decides the order, the order what goes out, and a set-up is logged on the way', async () => {
  const { page } = await openApp({ locale: 'en-GB' });
  const hand = await begin(page, 'Harbour Hours');

  await showSheet(page, 'Recce');
  await expect.poll(() => hand.read('C11')).toBe('Sun in window 2 from 14:58 to 17:23');
  expect(await hand.read('C20')).toBe('10.8 A free on the blue circuit');
  // A day later, and the boiler is found to be on the circuit too.
  await hand.type('B4', '2026-09-22');
  await hand.type('F20', '1.4 kW');
  await expect.poll(() => hand.read('C20')).toBe('6.0 A free on the blue circuit');
  await showSheet(page, 'Power');
  await expect.poll(() => hand.read('B5')).toBe('3.3 A free');

  // A lamp of the plan is another than was ordered.
  await showSheet(page, 'Set plan');
  await hand.type('B8', 'Tube 60');
  await showSheet(page, 'Package');
  await expect.poll(() => hand.read('B6')).toBe('1 item of the rigs is not in this order: Tube 60');
  await menu(page, 'Collect the rigs');
  await expect.poll(() => hand.read('B6')).toBe('every fixture of the rigs is in this order');
  await expect.poll(() => hand.read('N48')).toBe('1');
  await expect.poll(() => hand.read('D42')).toBe('10');
  await hand.type('F9', 'shoot');
  await hand.type('D26', '5');
  await expect.poll(() => hand.read('N42')).toBe('13');

  await showSheet(page, 'Sail loft');
  await menu(page, 'Log this set-up');
  await expect
    .poll(() => page.locator('.notices').innerText())
    .toMatch(/12D is logged: 6 lights, 6 readings/);
  await showSheet(page, 'Set-up log');
  await expect.poll(() => hand.read('B3')).toBe('12 of 15 rows');
  await page.keyboard.press('Control+z');
  await expect.poll(() => hand.read('B3')).toBe('6 of 9 rows');

  await showSheet(page, 'Running order');
  await hand.type('C9', '2');
  await hand.type('C8', '5');
  await menu(page, 'Order the set-ups by their light');
  await expect.poll(() => page.locator('.notices').innerText()).toMatch(/no order takes less/);
  await expect.poll(() => hand.read('B3')).toMatch(/^22 moves, 10\.5 h to rig, strike and travel/);

  await showSheet(page, 'Out and back');
  await expect.poll(() => hand.read('A18')).toBe('Tube 60');
  await expect.poll(() => hand.read('C12')).toBe('13');
  expect(await hand.read('B12')).toBe('3 missing');
  await hand.type('D17', '1');
  await hand.type('D18', '1');
  // Three stands, two bonds, and of the sandbags 7 + 2 · 5 less the 13 that came back.
  await expect.poll(() => hand.read('B4')).toBe('9 missing, 3 damaged');
});

it('new books start from the address book', async () => {
  const { page } = await openApp({ locale: 'en-GB' });
  const hand = await begin(page, 'Address book');
  await hand.type('A5', 'Lantern 40');
  await hand.type('C5', '40 W');
  await menu(page, 'Start page');
  await begin(page, 'Blank book');
  await expect
    .poll(() => page.locator('.notices').innerText())
    .toBe('It begins with your address book.');
  await showSheet(page, 'Address book');
  expect(await hand.read('A5')).toBe('Lantern 40');
  expect(await hand.read('C5')).toBe('40 W');
  // It is opened, and not made anew, where it is kept.
  await menu(page, 'Address book');
  await expect.poll(() => page.locator('.sheet-link').count()).toBe(1);
  expect(await hand.read('A5')).toBe('Lantern 40');
});
