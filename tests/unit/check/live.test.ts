import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insertLines } from '../../../src/book/make/lines.ts';
import { setColumnQuantity, setQuantity } from '../../../src/book/make/properties.ts';
import { describeSheet } from '../../../src/book/make/sheets.ts';
import { checkBook, remarkLine, marksAt } from '../../../src/check/book.ts';
import { createChecker } from '../../../src/check/checker.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { runs } from '../../support/runs.ts';
import { edit } from '../engine/support/edits.ts';
import { openBook } from '../engine/support/openBook.ts';

/** How often a cell was looked at since it was last asked. */
let looks = 0;
const looked = () => {
  const found = looks;
  looks = 0;
  return found;
};
const counted: typeof marksAt = (...of) => {
  looks += 1;
  return marksAt(...of);
};

const metered = (receptor: string) => `=READINGF("f/4","${receptor}",800,1/50)`;
const walk = [
  ['Point', 'lx', 'stops', 'sum', '3 m', 'dome'],
  ['Bench', '400 lx', '=STOPS(B2,B$2)', '=SUM(B2:B4)', '=B2+E1', '=READINGF(B2,F1,800,1/50)'],
  ['Rope', '200 lx', '=STOPS(B3,B$2)', '=SUM(B:B)', '=IF(C3>1,B2,E1)', metered('flat')],
  ['Window', '', '=STOPS(B4,B$2)', '=FSTOPS(F2,F3)', '=AVERAGE(B2:B4)', '14'],
  ['', '3', '=C4+1', '=Door!A1', '=SPOTF(100,100,1/50,F4)'],
];
const door = [['2 lx', '=A1*2', '=Walk!B2'], ['=SUM(Walk!B2:B5)']];

describe('after any edits the live check', () => {
  const dice = fc.array(fc.nat(999), { minLength: 14, maxLength: 14 });

  it('says the same where it was read a few cells at a time, between the edits', () => {
    fc.assert(
      fc.property(fc.array(dice, { minLength: 1, maxLength: 12 }), fc.nat(9), (edits, few) => {
        const opened = openBook({ Walk: walk, Door: door });
        const { document, book, engine } = opened;
        const checker = createChecker(book, engine, counted);
        for (const each of edits) {
          edit(opened, each);
          let left = few;
          checker.readOn(() => left-- > 0);
        }
        expect(checker.readOn(() => true)).toBe(true);
        looked();
        const lines = checker.remarks().map((remark) => remarkLine(document, remark));
        expect(looked()).toBe(0);
        const anew = connectEngine(book);
        expect(lines).toEqual(
          checkBook(document, anew).map((remark) => remarkLine(document, remark)),
        );
        anew.dispose();
        engine.dispose();
      }),
      { numRuns: runs(25) },
    );
  });

  it('says what a check of the whole book says, read anew', () => {
    fc.assert(
      fc.property(fc.array(dice, { minLength: 1, maxLength: 12 }), (edits) => {
        const opened = openBook({ Walk: walk, Door: door });
        const { document, book, engine } = opened;
        const checker = createChecker(book, engine, counted);
        checker.remarks();
        for (const each of edits) {
          edit(opened, each);
          const lines = checker.remarks().map((remark) => remarkLine(document, remark));
          const anew = connectEngine(book);
          expect(lines).toEqual(
            checkBook(document, anew).map((remark) => remarkLine(document, remark)),
          );
          for (const remark of checker.remarks())
            expect(checker.at(remark.place)).toContainEqual(remark);
          anew.dispose();
        }
        engine.dispose();
      }),
      { numRuns: runs(25) },
    );
  });
});

describe('the live check reads anew only what an edit can have changed', () => {
  const rows = 400;
  const many = () =>
    openBook({
      Walk: Array.from({ length: rows }, (_, row) => [
        `${String(100 + row)} lx`,
        `=STOPS(A${String(row + 1)},A$1)`,
        `=B${String(row + 1)}*1`,
      ]),
    });

  it('after a number nothing, after a formula it and who reads it', () => {
    const { book, engine, type } = many();
    looked();
    const checker = createChecker(book, engine, counted);
    expect(checker.remarks()).toEqual([]);
    expect(looked()).toBe(2 * rows);
    type('A1', '250 lx');
    expect(checker.remarks()).toEqual([]);
    expect(looked()).toBe(0);
    type('B7', '=A7*2');
    expect(checker.remarks()).toEqual([]);
    expect(looked()).toBe(2);
    type('B7', '=A7+C8');
    expect(checker.remarks()).toMatchObject([{ place: { row: 6, column: 1 } }]);
    expect(looked()).toBe(2);
  });

  it('of one cell only that cell', () => {
    const { book, engine, spot } = many();
    looked();
    const checker = createChecker(book, engine, counted);
    expect(checker.at(spot('B9'))).toEqual([]);
    expect(looked()).toBe(1);
  });

  it('all cells that read a cell which measures something else now', () => {
    const { book, engine, type } = many();
    const checker = createChecker(book, engine, counted);
    checker.remarks();
    type('A1', '3 m');
    // The first row holds the cell against itself: two sentences.
    expect(checker.remarks()).toHaveLength(rows + 1);
    book.undo();
    expect(checker.remarks()).toEqual([]);
  });
});

describe('the live check follows', () => {
  it('a meter that is another one now', () => {
    const { book, engine, type } = openBook({ Walk: walk, Door: door });
    const checker = createChecker(book, engine, counted);
    const about = () => checker.remarks().map(({ about: what }) => what);
    expect(about()).toContain('meter');
    type('F1', 'flat');
    expect(about()).not.toContain('meter');
    type('F1', 'dome');
    expect(about()).toContain('meter');
  });

  it('a constant that is usual now', () => {
    const { book, engine, type } = openBook({ Walk: walk, Door: door });
    const checker = createChecker(book, engine, counted);
    const about = () => checker.remarks().map(({ about: what }) => what);
    expect(about()).toContain('standard');
    type('F4', '12.5');
    expect(about()).not.toContain('standard');
  });

  it('what a column or a cell says it measures, new names of sheets, lines above', () => {
    const { book, engine, document, means, must, idOf } = openBook({
      Walk: [['400', '=A1+C1', '3 lx']],
    });
    const checker = createChecker(book, engine, counted);
    const lines = () => checker.remarks().map((remark) => remarkLine(document, remark));
    expect(lines()).toEqual([]);
    must(setColumnQuantity(document, means, idOf('Walk'), [0], 'length'));
    expect(lines()).toEqual([expect.stringMatching(/^Walk!B1: A1 is a distance and C1/)]);
    must(describeSheet(document, idOf('Walk'), { name: 'Loft' }));
    must(insertLines(document, means, idOf('Loft'), 'rows', 0, 2));
    expect(lines()).toEqual([expect.stringMatching(/^Loft!B3: A3 is a distance and C3/)]);
    const region = { sheet: idOf('Loft'), top: 2, left: 0, height: 1, width: 1 };
    must(setQuantity(document, means, [region], 'illuminance'));
    expect(lines()).toEqual([]);
  });

  it('each change with a call, until told to stop', () => {
    const { book, engine, type } = openBook({ Walk: [['400 lx', '=A1+3']] });
    const checker = createChecker(book, engine, counted);
    let heard = 0;
    const stop = checker.listen(() => (heard += 1));
    type('A1', '3 m');
    expect(heard).toBeGreaterThan(0);
    heard = 0;
    stop();
    type('A1', '4 lx');
    expect(heard).toBe(0);
    checker.dispose();
  });
});
