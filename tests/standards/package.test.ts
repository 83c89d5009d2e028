import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../src/book/form/read.ts';
import { createBook } from '../../src/book/book.ts';
import { readAddress } from '../../src/book/look.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { fixturesIn } from '../../src/files/photometric/shelf.ts';
import { expected } from '../../templates/package/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// The order is invented; what an order is (the most out on one day, and spares) and how hire is charged are
// common practice. What the cells come to is worked out by hand in templates/package/expected.ts.

const rowsFrom = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);
const dayColumns = [...'EFGHIJKL'];

/** All sums once more, from the rows as they stand, by loops and not by the formulas of the sheet. */
function recounted(valueOf: (cell: string) => unknown) {
  const text = (cell: string) => String(valueOf(cell) ?? '');
  const number = (cell: string) => Number(valueOf(cell));
  const needs = rowsFrom(15, 34).filter((row) => text(`A${row}`) !== '');
  const places = rowsFrom(8, 11);
  const worksAt = (place: string, day: string) =>
    places.some((row) => text(`A${row}`) === place && text(`${day}${row}`) !== '');
  const shares: Record<string, number> = {
    preparation: number('B2'),
    shoot: number('D2'),
    travel: number('F2'),
    return: number('H2'),
  };
  const charged = dayColumns.map((day) =>
    Math.max(0, ...places.map((row) => shares[text(`${day}${row}`)] ?? 0)),
  );
  return rowsFrom(37, 56)
    .filter((row) => text(`A${row}`) !== '')
    .map((row) => {
      const out = dayColumns.map((day) =>
        needs
          .filter((need) => text(`A${need}`) === text(`A${row}`))
          .filter((need) => worksAt(text(`B${need}`), day))
          .reduce((sum, need) => sum + number(`D${need}`), 0),
      );
      const order = Math.max(...out) + (Number(valueOf(`M${row}`)) || 0);
      const days = out.reduce((sum, pieces, at) => sum + (pieces > 0 ? charged[at]! : 0), 0);
      // None of it is out for a week: days over what a week is charged as cost nothing more.
      const cost = order * number(`S${row}`) * Math.min(days, number('B1'));
      return { row, out, order, days, cost, weight: order * number(`O${row}`) };
    });
}

function sumsAgree(valueOf: (cell: string) => unknown): void {
  const again = recounted(valueOf);
  expect(again.length).toBe(11);
  for (const { row, out, order, days, cost, weight } of again) {
    expect(dayColumns.map((day) => Number(valueOf(`${day}${row}`)))).toEqual(out);
    expect(valueOf(`D${row}`)).toBe(Math.max(...out));
    expect(valueOf(`N${row}`)).toBe(order);
    expect(Number(valueOf(`T${row}`))).toBeCloseTo(days, 9);
    expect(Number(valueOf(`U${row}`))).toBeCloseTo(cost, 9);
    expect(Number(valueOf(`Q${row}`))).toBeCloseTo(weight, 9);
  }
  const sum = (of: (one: (typeof again)[number]) => number) =>
    again.reduce((total, one) => total + of(one), 0);
  expect(Number(valueOf('B3'))).toBeCloseTo(
    sum(({ cost }) => cost),
    9,
  );
  expect(Number(valueOf('Q57'))).toBeCloseTo(
    sum(({ weight }) => weight),
    9,
  );
  for (const [at, day] of dayColumns.entries())
    expect(valueOf(`${day}57`)).toBe(sum(({ out }) => out[at] ?? 0));
  const bought = rowsFrom(61, 66).reduce(
    (total, row) => total + (Number(valueOf(`U${row}`)) || 0),
    0,
  );
  expect(Number(valueOf('H3'))).toBeCloseTo(
    sum(({ cost }) => cost) * (1 + Number(valueOf('D1'))) + bought,
    9,
  );
}

describe('one order out of three places and four days', () => {
  const sheet = openFilled('package');
  comesToWhatItSays(sheet, expected);

  it('every total is what its rows come to, counted once more', () => {
    sumsAgree(sheet.valueOf);
  });

  it('with the shed on the days of the loft all of it is out at once', () => {
    const { type, valueOf } = openFilled('package');
    type('F9', 'shoot');
    type('I8', 'shoot');
    sumsAgree(valueOf);
    expect(valueOf('D40')).toBe(7);
  });

  it('what is needed and not ordered is said', () => {
    const { type, valueOf } = openFilled('package');
    type('A15', 'Wind machine');
    expect(valueOf('M15')).toBe('not ordered');
    expect(valueOf('B5')).toBe('1 of what is needed not on the order, or twice');
  });

  it('too much for the van and over the budget are said', () => {
    const { type, valueOf } = openFilled('package');
    type('H1', '300 kg');
    type('F1', '700');
    expect(valueOf('F4')).toBe('too much for one load: 325 kg, 1.1 m³');
    expect(valueOf('B4')).toBe('94.20 over the budget');
    type('O47', '');
    expect(valueOf('F4')).toBe('goes in one load: 280 kg, 1.1 m³, 1 without a weight');
  });
});

describe('the order of the sample book', () => {
  const file = new URL('../../templates/harbour-hours/book.json', import.meta.url);
  const read = readBook(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  const book = createBook(read.document);
  const engine = connectEngine(book, { fixtures: fixturesIn });
  const on = (sheet: string) => (cell: string) => {
    const at = readAddress(cell);
    const id = book.document.sheetNamed(sheet)?.id;
    if (!at || id === undefined) throw new Error(`${sheet}!${cell}`);
    return engine.valueOf({ sheet: id, ...at });
  };

  it('counts what hangs on the set plan and what is hired, and sums as its rows do', () => {
    sumsAgree(on('Package'));
    const plan = on('Set plan');
    for (const row of rowsFrom(15, 18)) {
      const name = on('Package')(`A${row}`);
      const hung = rowsFrom(3, 8).filter((at) => plan(`B${at}`) === name).length;
      expect(hung).toBeGreaterThan(0);
      expect(on('Package')(`D${row}`)).toBe(hung);
    }
    expect(on('Package')('D24')).toBe(on('Hire')('C11'));
    expect(on('Package')('S37')).toBe(on('Hire')('G10'));
  });

  it('what goes out is what was ordered', () => {
    for (const row of rowsFrom(0, 10)) {
      expect(on('Out and back')(`A${7 + row}`)).toBe(on('Package')(`A${37 + row}`));
      expect(on('Out and back')(`C${7 + row}`)).toBe(on('Package')(`N${37 + row}`));
    }
  });
});
