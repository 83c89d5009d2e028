import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { readEntry } from '../../../functions/quantities/index.ts';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { readAddress } from '../../../src/book/look.ts';
import { addFigure } from '../../../src/book/make/figures.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { insertLines, removeLines } from '../../../src/book/make/lines.ts';
import type { Made } from '../../../src/book/make/made.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book, Means } from '../../../src/book/types.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { figuresView } from '../../../src/panels/figures/gather.ts';
import { formOf, newForm, plannedForm } from '../../../src/panels/figures/form.ts';
import type { Look } from '../../../src/panels/views/look.ts';
import { at, over } from '../../../src/session/session.ts';

const path = new URL('../../../templates/harbour-hours/book.json', import.meta.url);

let book: Book;
let look: Look;
let sheet = '';

const means: Means = {
  newId: (() => {
    let count = 0;
    return () => `n${(count += 1)}`;
  })(),
  isFunction: () => false,
  readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
};

function run(made: Made | ReturnType<typeof enter>): void {
  if (!made.ok) throw new Error(made.reason);
  book.run(made.transaction);
}

const spot = (address: string) => readAddress(address) ?? { row: -1, column: -1 };
const type = (address: string, text: string) =>
  run(enter(book.document, means, [{ sheet, ...spot(address), text }]));
const said = () =>
  figuresView(look, sheet).map(({ made }) => ('reason' in made ? made.reason : made.sentences[0]));

beforeAll(() => {
  const read = readBook(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  book = createBook(read.document);
  sheet = book.document.sheets[0]?.id ?? '';
  const { document } = book;
  look = {
    document,
    engine: connectEngine(book),
    writing: writingSettings(document.settings),
    remarksAt: () => [],
  };
});

describe('the figures of the sail loft', () => {
  test('say what its cells say', () => {
    // Verdicts as templates/harbour-hours/expected.ts works them out by hand.
    expect(said().slice(0, 2)).toEqual([
      '3 of 6 agree; Fill side of face 1/3 stop over, Canvas right 0.4 stop over and Rope bench 0.4 stop over.',
      '2 of 2 agree; Window gap clips by 1.1 stops.',
    ]);
  });

  test('follow a reading that is typed, and undo', () => {
    const before = said();
    type('C13', 'f/1.4');
    expect(said()[0]).toBe(
      '4 of 6 agree; Canvas right 0.4 stop over and Rope bench 0.4 stop over.',
    );
    book.undo();
    expect(said()).toEqual(before);
  });

  test('take in a point that is put in between, and lose one that is deleted', () => {
    run(insertLines(book.document, means, sheet, 'rows', 13, 1));
    type('A14', 'Door');
    type('E14', '=-1/3');
    type('B14', '0');
    expect(said()[0]).toMatch(/^3 of 7 agree; .*Door 1\/3 stop under/);
    run(removeLines(book.document, sheet, 'rows', [13]));
    expect(said()[0]).toMatch(/^3 of 6 agree/);
    for (let i = 0; i < 5; i += 1) book.undo();
  });

  test('say so when their cells are gone', () => {
    run(removeLines(book.document, sheet, 'columns', [4]));
    expect(said()[0]).toBe('The cells of “Read” are gone. Choose others, or undo.');
    book.undo();
  });

  test('a figure of a kind that this version does not know is kept and said', () => {
    run(addFigure(book.document, means, sheet, { kind: 'orrery', title: 'Sky', cells: {} }));
    expect(said().at(-1)).toBe('This version draws no figure of the kind “orrery”. It is kept.');
    book.undo();
  });
});

describe('a new figure', () => {
  test('is drawn from the table around the selected cell, by headings and quantities', () => {
    const { fields } = newForm(look, 'ladder', sheet, at(spot('F14').row, spot('F14').column));
    expect(fields).toMatchObject({
      points: 'A12:A17',
      read: 'E12:E17',
      wanted: 'B12:B17',
      level: 'D4',
      above: 'B6',
      below: 'D6',
      greySits: 'F6',
    });
  });

  test('is drawn from the selected rows where several are selected', () => {
    const block = over({ from: spot('A13'), to: spot('F15') });
    expect(newForm(look, 'ladder', sheet, block).fields).toMatchObject({
      points: 'A13:A15',
      read: 'E13:E15',
    });
  });

  test('of one source takes its own light and where it stands', () => {
    const { row, column } = spot('A13');
    expect(newForm(look, 'falloff', sheet, at(row, column)).fields).toMatchObject({
      lux: 'U13',
      mark: 'N13',
    });
  });

  test('takes a value where one is written, else cells', () => {
    const planned = plannedForm(look, {
      kind: 'falloff',
      title: ' Throw ',
      fields: { lux: 'U13', mark: '=N13', width: '120 cm', height: '4 ft' },
      options: {},
    });
    expect(planned.title).toBe('Throw');
    expect(planned.cells).toEqual({ lux: 'U13', mark: 'N13' });
    expect(planned.values['width']).toBeCloseTo(1.2, 12);
    expect(planned.values['height']).toBeCloseTo(4 * 0.3048, 12);
  });

  test('shows in its dialog what it was made from', () => {
    const fill = figuresView(look, sheet).find(({ kind }) => kind === 'falloff');
    const form = formOf(look, fill?.id ?? '');
    expect(form?.fields).toEqual({ lux: 'U13', mark: 'N13', width: '1.2 m', height: '1.2 m' });
    expect(form && plannedForm(look, form).values).toEqual({ width: 1.2, height: 1.2 });
  });
});
