import type { Locator, Page } from 'playwright-core';
import { readAddress } from '../../src/book/look.ts';

/** What a person does with the open book, and what they read off it. */
export interface SheetHand {
  /** Goes to a cell by writing its address in the name box. */
  go(address: string): Promise<void>;
  /** Goes to a cell, types and presses Enter. */
  type(address: string, text: string): Promise<void>;
  /** The words and number in a cell as they are painted. */
  read(address: string): Promise<string>;
  cell(address: string): Locator;
  /** What the entry line holds for a cell: the formula, or what was typed. */
  entry(address: string): Promise<string>;
  /** Pastes a text at a cell, as another program would have left it on the clipboard. */
  paste(address: string, text: string): Promise<void>;
}

export function handOn(page: Page): SheetHand {
  const hand: SheetHand = {
    async go(address) {
      const box = page.getByRole('textbox', { name: 'Go to an address or a name' });
      await box.click();
      await box.fill(address);
      await box.press('Enter');
      await hand.cell(address).waitFor();
    },
    async type(address, text) {
      await hand.go(address);
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    },
    cell(address) {
      const at = readAddress(address);
      if (!at) throw new Error(`${address} is no address.`);
      // Row 1 and column 1 of the grid are its headings.
      const row = `[role=row][aria-rowindex="${at.row + 2}"]`;
      return page.locator(`${row} [role=gridcell][aria-colindex="${at.column + 2}"]`).last();
    },
    read: async (address) => {
      await hand.go(address);
      const pieces = await hand.cell(address).locator('.words, small').allInnerTexts();
      return pieces.join(' ').replace(/\s+/g, ' ').trim();
    },
    async entry(address) {
      await hand.go(address);
      return page.locator('.entry-text').inputValue();
    },
    async paste(address, text) {
      await hand.go(address);
      await page.evaluate((pasted) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', pasted);
        const event = new ClipboardEvent('paste', {
          clipboardData,
          bubbles: true,
          cancelable: true,
        });
        (document.activeElement ?? document.body).dispatchEvent(event);
      }, text);
    },
  };
  return hand;
}

/** Opens a book from the start page by the words on its card, and waits until it calculates. */
export async function begin(page: Page, card: string): Promise<SheetHand> {
  const speaking = page.getByRole('button', { name: card });
  await speaking.first().waitFor();
  // One card may speak of what another one is called.
  const called = speaking.filter({ has: page.getByText(card, { exact: true }) });
  await ((await called.count()) > 0 ? called : speaking).first().click();
  await ready(page);
  return handOn(page);
}

/** Waits until the grid is there and formulas are worked out. */
export async function ready(page: Page): Promise<void> {
  await page.locator('.grid[data-ready]').waitFor();
}
