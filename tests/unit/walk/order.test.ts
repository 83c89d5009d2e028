import { beforeEach, describe, expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { describeCells, setQuantity } from '../../../src/book/make/properties.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import type { Book, Means } from '../../../src/book/types.ts';
import { passesOf } from '../../../src/walk/order.ts';
import { buildBook, planMeans, run } from '../../../templates/build.ts';
import { pointsSheet } from '../../../templates/key-fill-background/plan.ts';

let means: Means;

beforeEach(() => {
  means = planMeans();
});

const inOrder = (book: Book) => {
  const sheet = book.document.sheets[0]?.id ?? '';
  return passesOf(book.document, sheet).map(({ name, readings }) => [
    name,
    readings.map(({ label, caption }) => `${label}: ${caption}`),
  ]);
};

/** A sheet of its own making: texts by row, and which block holds readings. */
function written(rows: readonly (readonly string[])[], from: number): Book {
  const book = createBook(newDocument(means));
  const sheet = book.document.sheets[0]?.id ?? '';
  const entries = rows.flatMap((texts, row) =>
    texts.map((text, column) => ({ sheet, row, column, text })),
  );
  const entered = enter(book.document, means, entries);
  run(book, entered);
  const width = (rows[0]?.length ?? 0) - from;
  const region = { sheet, top: 1, left: from, height: rows.length - 1, width };
  run(book, describeCells(book.document, means, [region], { role: 'reading' }));
  return book;
}

describe('the order of a walk', () => {
  it('takes the points first, then each round that needs other lamps', () => {
    const sheet = pointsSheet({
      name: 'Ice house',
      purpose: '',
      points: [
        { point: 'Key side of face', meter: 'dome' },
        { point: 'Fill side of face', wanted: '-2', meter: 'dome' },
      ],
      spots: [{ point: 'Grey card' }],
      colours: ['Key colour'],
    });
    expect(inOrder(buildBook({ title: 'Walk', sheets: [sheet] }, means))).toEqual([
      [
        '',
        [
          'Key side of face: Reading',
          'Fill side of face: Reading',
          'Grey card: Reading',
          'Key colour: Reading',
          'Key colour: Tint',
        ],
      ],
      ['Alone', ['Key side of face: Alone', 'Fill side of face: Alone']],
      ['Lamps off', ['Key side of face: Lamps off', 'Fill side of face: Lamps off']],
    ]);
  });

  it('goes across a sheet where no reading of a row is its own', () => {
    const book = written(
      [
        ['Backdrop', 'Left', 'Right'],
        ['Top', '', ''],
        ['Bottom', '', ''],
      ],
      1,
    );
    expect(inOrder(book)).toEqual([
      ['', ['Top: Left', 'Top: Right', 'Bottom: Left', 'Bottom: Right']],
    ]);
  });

  it('leaves out captions and formulas that stand among the readings', () => {
    const book = written(
      [
        ['Point', 'Reading'],
        ['Key', '85 lx'],
        ['Mean', '=AVERAGE(B2)'],
        ['Fill', ''],
      ],
      1,
    );
    expect(inOrder(book)).toEqual([['', ['Key: Reading', 'Fill: Reading']]]);
  });

  it('keeps two readings of one point together where both say what they measure', () => {
    const book = written(
      [
        ['Source', 'Reading', 'Tint'],
        ['Window', '', ''],
      ],
      1,
    );
    const sheet = book.document.sheets[0]?.id ?? '';
    const column = (left: number) => [{ sheet, top: 1, left, height: 1, width: 1 }];
    run(book, setQuantity(book.document, means, column(1), 'colourTemperature'));
    run(book, setQuantity(book.document, means, column(2), 'duv'));
    expect(inOrder(book)).toEqual([['', ['Window: Reading', 'Window: Tint']]]);
  });

  it('is empty on a sheet without readings', () => {
    expect(inOrder(createBook(newDocument(means)))).toEqual([]);
  });
});
