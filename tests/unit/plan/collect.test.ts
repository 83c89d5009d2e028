import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { copyOf } from '../../../src/book/content.ts';
import { placeSheet, removeSheet } from '../../../src/book/make/sheets.ts';
import { insertLines } from '../../../src/book/make/lines.ts';
import { collectRigs } from '../../../src/plan/collect/collect.ts';
import { sentencesNow } from '../../../src/plan/collect/missing.ts';
import { words } from '../../../src/words/words.ts';
import { run } from '../../../templates/build.ts';
import { opened } from '../repeat/place.ts';

const bookOf = (template: string) => {
  const file = new URL(`../../../templates/${template}/book.json`, import.meta.url);
  const read = readBook(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  return read.document;
};

function sample(template = 'harbour-hours') {
  const place = opened(createBook(bookOf(template)));
  const { book, document, look, means, idOf } = place;
  return {
    ...place,
    on: (cell: string) => place.valueOf('Package', cell),
    /** What follows from the last change, as the open book does it. */
    settle() {
      for (const made of sentencesNow(look, means)) {
        if (!made.ok) throw new Error(made.reason);
        book.follow(made.transaction.steps);
      }
    },
    collect: () => collectRigs(look, means, idOf('Package')),
    /** The first sheet of a template, put at the end of the book. */
    add(template_: string) {
      const other = bookOf(template_);
      const content = copyOf(other, other.sheets[0]?.id ?? '', means.newId());
      if (!content) throw new Error(template_);
      run(book, placeSheet(document, content, document.sheets.length, 'Add'));
    },
  };
}
type Sample = ReturnType<typeof sample>;

const rows = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

/** Pieces of an item out on each day, from the plan of the days and what is needed, by loops. */
function outOn({ on }: Sample, item: string, needs: readonly number[]): readonly number[] {
  return [...'EFGHIJKL'].map((day) =>
    needs
      .filter((row) => on(`A${row}`) === item)
      .filter((row) =>
        rows(8, 11).some((at) => on(`A${at}`) === on(`B${row}`) && on(`${day}${at}`)),
      )
      .reduce((sum, row) => sum + Number(on(`D${row}`)), 0),
  );
}

function rowWith({ on }: Sample, item: string, [first, last]: readonly [number, number]): number {
  const row = rows(first, last).find((at) => on(`A${at}`) === item);
  if (row === undefined) throw new Error(`${item} has no row`);
  return row;
}

describe('the rigs of the sample book against its order', () => {
  it('are all there; a new lamp is said, collected, and ordered as it is out; one undo', () => {
    const place = sample();
    const { book, document, look, means, type, settle, collect, on } = place;
    expect(on('B6')).toBe(words.plan.allThere);
    expect(sentencesNow(look, means)).toEqual([]);
    expect(collect()).toMatchObject({ ok: true, says: words.plan.nothingToCollect });
    type('Set plan', 'B8', 'Tube 60');
    settle();
    expect(on('B6')).toBe('1 item of the rigs is not in this order: Tube 60');
    // The lamp that hung there is counted no more, so three tubes are two.
    expect(on('D18')).toBe(2);
    const before = writeBook(document);
    const made = collect();
    expect(made).toMatchObject({ ok: true, says: words.plan.collected(1) });
    run(book, made);
    expect(on('B6')).toBe(words.plan.allThere);
    const need = rowWith(place, 'Tube 60', [15, 34]);
    expect([on(`B${need}`), on(`C${need}`), on(`D${need}`)]).toEqual(['Sail loft', 'Set plan', 1]);
    const ordered = rowWith(place, 'Tube 60', [37, 56]);
    const out = outOn(place, 'Tube 60', rows(15, 34));
    expect(out).toEqual([1, 1, 1, 0, 0, 0, 0, 0]);
    expect(on(`D${ordered}`)).toBe(Math.max(...out));
    expect(on(`N${ordered}`)).toBe(1);
    expect(on('B5')).toBe('everything needed is on the order once');
    // It goes out with the rest.
    const goes = rows(7, 28).find((row) => place.valueOf('Out and back', `A${row}`) === 'Tube 60');
    expect(place.valueOf('Out and back', `C${goes}`)).toBe(1);
    expect(place.valueOf('Out and back', `B${goes}`)).toBe('not counted yet');
    // Hung once more, it is counted once more.
    type('Set plan', 'B7', 'tube 60');
    expect(on(`N${ordered}`)).toBe(2);
    book.undo();
    book.undo();
    expect(writeBook(document)).toBe(before);
  });
});

describe('an order with two plans beside it', () => {
  const place = sample('package');
  const { book, document, means, idOf, type, settle, collect, on, add } = place;

  it('says nothing of rigs before there are any', () => {
    settle();
    expect(on('B6')).toBeNull();
    expect(collect()).toEqual({ ok: false, reason: words.plan.noRigs });
  });

  it('asks for a place that nothing says, and counts there once it is typed', () => {
    add('set-plan');
    add('set-plan');
    const [, one, other] = document.sheets.map(({ properties }) => properties.name) as string[];
    for (const name of [one, other]) for (const row of rows(4, 8)) type(name!, `B${row}`, '');
    type(one!, 'B3', 'Tube 120');
    type(other!, 'B3', 'Lantern');
    type(other!, 'B5', 'Tube 120');
    settle();
    // What the order has already is not counted on these plans.
    expect(on('B6')).toBe(
      words.plan.notThere([`Tube 120 on ${one}`, `Lantern on ${other}`, `Tube 120 on ${other}`]),
    );
    const made = collect();
    expect('says' in made && made.says).toBe(
      [words.plan.collected(3), words.plan.whichPlace(one!), words.plan.whichPlace(other!)].join(
        ' ',
      ),
    );
    run(book, made);
    // Nineteen of twenty rows were taken: the needs grew by two, and the order stands lower.
    const unplaced = rows(15, 36).filter((row) => on(`M${row}`) === 'no such place');
    expect(unplaced.length).toBe(3);
    expect(on('B5')).toBe('3 of what is needed at no place of the days');
    for (const row of unplaced)
      type('Package', `B${row}`, on(`C${row}`) === one ? '=$A$8' : '=$A$9');
    expect(on('B5')).toBe('everything needed is on the order once');
    expect(on('B6')).toBe(words.plan.allThere);
  });

  it('orders the larger day, not the sum', () => {
    const needs = rows(15, 36);
    for (const item of ['Tube 120', 'Lantern']) {
      const row = rowWith(place, item, [39, 58]);
      const out = outOn(place, item, needs);
      expect([...'EFGHIJKL'].map((day) => on(`${day}${row}`))).toEqual(out);
      expect(on(`D${row}`)).toBe(Math.max(...out));
    }
    // Three and one in the loft, one in the shed, four in the ice house, on days of their own but one.
    expect(outOn(place, 'Tube 120', needs)).toEqual([4, 4, 5, 1, 4, 4, 4, 0]);
  });

  it('counts a lamp in a row put under the last', () => {
    const other = document.sheets[2]!.properties.name;
    run(book, insertLines(document, means, idOf(other), 'rows', 8, 1));
    type(other, 'B9', 'Lantern');
    expect(on(`N${rowWith(place, 'Lantern', [39, 58])}`)).toBe(2);
  });

  it('takes what the address book knows of a new item', () => {
    add('address-book');
    const [, one] = document.sheets.map(({ properties }) => properties.name) as string[];
    type(one!, 'B4', 'Soft panel');
    run(book, collect());
    const row = rowWith(place, 'Soft panel', [40, 60]);
    expect([on(`B${row}`), on(`O${row}`), on(`P${row}`), on(`S${row}`)]).toEqual([
      'our own',
      9,
      0.08,
      0,
    ]);
  });

  it('says why where the order lost its captions, or is gone', () => {
    type('Package', 'A14', 'Wanted');
    expect(collect()).toEqual({ ok: false, reason: words.plan.noColumns });
    run(book, removeSheet(document, idOf('Package')));
    expect(collect()).toEqual({ ok: false, reason: words.plan.noPackage });
  });
});
