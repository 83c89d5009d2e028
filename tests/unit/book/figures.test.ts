import { describe, expect, test } from 'vitest';
import { figuresOn } from '../../../src/book/figures.ts';
import { readBase, writeBase } from '../../../src/book/form/remains.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { layoutOf } from '../../../src/book/look.ts';
import {
  addFigure,
  changeFigure,
  moveFigure,
  removeFigure,
} from '../../../src/book/make/figures.ts';
import { insertLines, moveLines, removeLines } from '../../../src/book/make/lines.ts';
import { duplicateSheet, removeSheet } from '../../../src/book/make/sheets.ts';
import type { Document } from '../../../src/book/types.ts';
import { writeReference } from '../../../src/formula/write.ts';
import { prove } from './prove.ts';
import { stage, type Stage } from './stage.ts';

const ladder = { kind: 'ladder', title: 'Points', cells: { points: 'A2:A5', read: 'B2:B5' } };

const script = {
  Walk: { A1: 'Point', A2: 'Key', B2: '1', A5: 'Bench', B5: '2' },
  Plan: { A1: 'Lamp' },
};

function withLadder(): Stage {
  const on = stage(script);
  on.run(addFigure(on.document, on.means, on.sheet('Walk'), ladder));
  return on;
}

const first = ({ document, sheet }: Stage) => figuresOn(document, sheet('Walk'))[0]?.id ?? '';

/** Where the input of the first figure of a sheet lies now, as one would write it. */
function range(document: Document, name = 'Walk', input = 'read'): string | undefined {
  const sheet = document.sheetNamed(name)?.id ?? '';
  const reference = figuresOn(document, sheet)[0]?.ranges[input];
  return reference && writeReference(reference, sheet, layoutOf(document));
}

const titles = ({ document, sheet }: Stage) =>
  figuresOn(document, sheet('Walk')).map(({ title }) => title);

describe('figures are in the history', () => {
  test('one is added under the others', () => {
    prove(
      withLadder,
      (on) => addFigure(on.document, on.means, on.sheet('Walk'), { ...ladder, title: 'Again' }),
      (on) => expect(titles(on)).toEqual(['Points', 'Again']),
    );
  });

  test('it is given other cells and another title', () => {
    prove(
      withLadder,
      (on) =>
        changeFigure(on.document, on.means, first(on), {
          ...ladder,
          title: 'Spots',
          cells: { read: 'Plan!C2:C9' },
          values: { level: 2 },
        }),
      (on) => {
        expect(titles(on)).toEqual(['Spots']);
        expect(range(on.document)).toBe('Plan!C2:C9');
      },
    );
  });

  test('it is moved before the other', () => {
    const two = () => {
      const on = withLadder();
      on.run(addFigure(on.document, on.means, on.sheet('Walk'), { ...ladder, title: 'Again' }));
      return on;
    };
    prove(
      two,
      (on) => moveFigure(on.document, first(on), 1),
      (on) => expect(titles(on)).toEqual(['Again', 'Points']),
    );
    expect(moveFigure(two().document, first(two()), -1)).toEqual({
      ok: false,
      reason: 'It is the first.',
    });
  });

  test('it is removed', () => {
    prove(
      withLadder,
      (on) => removeFigure(on.document, first(on)),
      (on) => expect(titles(on)).toEqual([]),
    );
  });

  test('what is no address is refused with a sentence', () => {
    const on = withLadder();
    for (const read of ['B2:', 'SUM(B2:B5)', 'B2+1', 'Nowhere!B2', 'some words'])
      expect(
        addFigure(on.document, on.means, on.sheet('Walk'), { ...ladder, cells: { read } }),
      ).toEqual({
        ok: false,
        reason: `“${read}” is no cell or range: C12 or C12:C17 would be one.`,
      });
  });
});

describe('figures follow their cells', () => {
  test('rows put in between make the range longer', () => {
    prove(
      withLadder,
      (on) => insertLines(on.document, on.means, on.sheet('Walk'), 'rows', 3, 2),
      (on) => expect(range(on.document)).toBe('B2:B7'),
    );
  });

  test('a column put before it moves it to the right', () => {
    prove(
      withLadder,
      (on) => insertLines(on.document, on.means, on.sheet('Walk'), 'columns', 0, 1),
      (on) => expect(range(on.document)).toBe('C2:C5'),
    );
  });

  test('its first and last rows deleted leave the rows between', () => {
    prove(
      withLadder,
      (on) => removeLines(on.document, on.sheet('Walk'), 'rows', [1, 4]),
      (on) => expect(range(on.document)).toBe('B2:B3'),
    );
  });

  test('all its rows deleted leave nothing, and undo brings them back', () => {
    const on = withLadder();
    on.run(removeLines(on.document, on.sheet('Walk'), 'rows', [1, 2, 3, 4]));
    expect(range(on.document)).toBe('#REF!');
    on.book.undo();
    expect(range(on.document)).toBe('B2:B5');
  });

  test('its last row moved to the top keeps to the rows that stayed', () => {
    prove(
      withLadder,
      (on) => moveLines(on.document, on.means, on.sheet('Walk'), 'rows', [4], 0),
      (on) => expect(range(on.document)).toBe('B3:B5'),
    );
  });

  test('cut and pasted cells take it along to another sheet', () => {
    const block = (on: Stage, address: string) => {
      const { sheet, top, left, height, width } = on.region(address);
      const lines = on.document.sheet(sheet);
      return {
        sheet,
        rows: (lines?.rows.ids ?? []).slice(top, top + height),
        columns: (lines?.columns.ids ?? []).slice(left, left + width),
      };
    };
    const build = () => {
      const on = withLadder();
      on.type({ 'Plan!D9': 'far' });
      return on;
    };
    prove(
      build,
      (on) => ({
        ok: true,
        transaction: {
          label: 'Cut',
          steps: [{ kind: 'moveCells', from: block(on, 'B2:B5'), to: block(on, 'Plan!C3:C6') }],
        },
      }),
      (on) => expect(range(on.document)).toBe('Plan!C3:C6'),
    );
  });
});

describe('figures go with their sheet', () => {
  test('a copy of the sheet has its own, of its own cells', () => {
    prove(
      withLadder,
      (on) => duplicateSheet(on.document, on.means, on.sheet('Walk')),
      (on) => {
        expect(range(on.document, 'Walk 2')).toBe('B2:B5');
        expect(on.document.shelf('figures').items).toHaveLength(2);
      },
    );
  });

  test('they are deleted with it', () => {
    prove(
      withLadder,
      (on) => removeSheet(on.document, on.sheet('Walk')),
      (on) => expect(on.document.shelf('figures').items).toEqual([]),
    );
  });
});

describe('figures in a file', () => {
  test('name living lines only, and read back the same', () => {
    const on = withLadder();
    on.run(removeLines(on.document, on.sheet('Walk'), 'rows', [4]));
    const text = writeBook(on.document);
    const read = readBook(text);
    if (!read.ok) throw new Error(read.reason);
    expect(range(read.document)).toBe('B2:B4');
    expect(writeBook(read.document)).toBe(text);
  });

  test('with what is kept beside the file, an undo finds the old end of the range', () => {
    const on = withLadder();
    const change = on.run(removeLines(on.document, on.sheet('Walk'), 'rows', [4]));
    const base = writeBase(on.document);
    const read = base && readBase(base);
    if (!read?.ok) throw new Error('It does not read back.');
    expect(read.document.shelf('figures')).toEqual(on.document.shelf('figures'));
    expect(change?.kind).toBe('do');
  });

  test('an item that is no figure is kept as it is', () => {
    const on = withLadder();
    const item = { id: 'odd', of: ['A1'] };
    on.book.run({
      label: 'Odd',
      steps: [{ kind: 'setShelf', shelf: 'figures', items: [{ id: 'odd', item }] }],
    });
    const read = readBook(writeBook(on.document));
    if (!read.ok) throw new Error(read.reason);
    expect(read.document.shelf('figures').items).toContainEqual(item);
    expect(figuresOn(read.document, on.sheet('Walk'))).toHaveLength(1);
  });
});
