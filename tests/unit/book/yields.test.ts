import { beforeEach, describe, expect, it } from 'vitest';
import { readEntry } from '../../../functions/quantities/index.ts';
import { createBook } from '../../../src/book/book.ts';
import { cellAtSpot } from '../../../src/book/look.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { describeCells, setQuantity } from '../../../src/book/make/properties.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book, Means } from '../../../src/book/types.ts';

let count = 0;
const means: Means = {
  newId: () => `i${count++}`,
  isFunction: () => false,
  readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
};

describe('a reading cell takes the unit that is typed', () => {
  let book: Book;
  let spot: { sheet: string; row: number; column: number };
  beforeEach(() => {
    book = createBook(newDocument(means));
    spot = { sheet: book.document.sheets[0]?.id ?? '', row: 2, column: 2 };
  });
  const type = (text: string) => {
    const entered = enter(book.document, means, [{ ...spot, text }]);
    if (!entered.ok) return entered.reason;
    book.run(entered.transaction);
    const cell = cellAtSpot(book.document, spot);
    return [cell?.quantity, cell?.content.kind === 'number' ? cell.content.value : cell?.content];
  };

  it('first in f-numbers, then in lux, then in the lux the cell already has', () => {
    expect(type('f/2.8')).toEqual(['fNumber', 2 ** 1.5]);
    expect(type('85 lx')).toEqual(['illuminance', 85]);
    expect(type('90')).toEqual(['illuminance', 90]);
  });

  it('and forgets it when it is emptied', () => {
    type('85 lx');
    type('');
    expect(type('2')).toEqual([undefined, 2]);
  });

  it('and refuses what no meter says, once it is marked as a reading', () => {
    const region = { sheet: spot.sheet, top: 2, left: 2, height: 1, width: 1 };
    const made = describeCells(book.document, means, [region], { role: 'reading' });
    if (!made.ok) throw new Error(made.reason);
    book.run(made.transaction);
    expect(type('3 m')).toMatch(/^A reading is an f-number, lux/);
    expect(type('rather dark')).toMatch(/^A reading is an f-number, lux/);
    expect(type('9.5 EV')).toEqual(['ev', 9.5]);
    expect(type('2.8')).toEqual(['ev', 2.8]);
  });

  it('but one whose quantity was chosen refuses another', () => {
    const region = { sheet: spot.sheet, top: 2, left: 2, height: 1, width: 1 };
    const made = setQuantity(book.document, means, [region], 'illuminance');
    if (!made.ok) throw new Error(made.reason);
    book.run(made.transaction);
    expect(type('f/2.8')).toMatch(/illuminance/);
    expect(type('85 lx')).toEqual(['illuminance', 85]);
    expect(type('f/2.8')).toMatch(/illuminance/);
  });
});
