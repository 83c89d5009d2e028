import { describe, expect, test } from 'vitest';
import { journalLine, replay } from '../../../src/book/form/journal.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { insertLines, moveLines, removeLines } from '../../../src/book/make/lines.ts';
import { describeCells } from '../../../src/book/make/properties.ts';
import { addSheet } from '../../../src/book/make/sheets.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import type { Change, Step } from '../../../src/book/types.ts';
import { countingMeans, stage } from './stage.ts';

function readBack(text: string) {
  const read = readBook(text);
  if (!read.ok) throw new Error(read.reason);
  return read.document;
}

describe('one history', () => {
  test('undo and redo go through it, a new change ends what was undone', () => {
    const s = stage();
    const { book } = s;
    const labels = () =>
      [book.history.done, book.history.undone].map((list) => list.map(({ label }) => label));
    s.type({ A1: '1' });
    s.type({ A2: '2' });
    book.undo();
    expect(labels()).toEqual([['Rename the sheet', 'Enter A1'], ['Enter A2']]);
    book.redo();
    book.undo();
    s.type({ A3: '3' });
    expect(labels()).toEqual([['Rename the sheet', 'Enter A1', 'Enter A3'], []]);
    expect(book.redo()).toBeNull();
    while (book.undo());
    expect(book.undo()).toBeNull();
  });

  test('a transaction that cannot finish has changed nothing, and what was undone can still be redone', () => {
    const s = stage({ Walk: { A1: '1' } });
    s.type({ A1: '2' });
    s.book.undo();
    const before = writeBook(s.document);
    const heard: Change[] = [];
    s.book.listen((change) => heard.push(change));
    const { sheet, row, column } = s.place('A1');
    const steps: Step[] = [
      { kind: 'setTitle', title: 'x' },
      { kind: 'setCells', sheet, cells: [{ row, column, cell: null }] },
      { kind: 'insertLines', sheet, axis: 'rows', ids: ['n'], after: null },
      { kind: 'removeLines', sheet, axis: 'rows', ids: ['unknown'] },
    ];
    expect(s.book.run({ label: 'x', steps })).toEqual({
      ok: false,
      reason: 'The rows are no longer on the sheet.',
    });
    expect(writeBook(s.document)).toBe(before);
    expect(heard).toEqual([]);
    s.book.redo();
    expect(s.text('A1')).toBe('2');
  });

  test('what follows by itself belongs to the last change: one undo takes both back', () => {
    const s = stage({ Walk: { A1: '1', B1: '1' } });
    const { sheet, row, column } = s.place('B1');
    const follow = (value: number) =>
      s.book.follow([
        {
          kind: 'setCells',
          sheet,
          cells: [{ row, column, cell: { content: { kind: 'number', value }, typed: `${value}` } }],
        },
      ]);
    const before = writeBook(s.document);
    const lines: string[] = [];
    const depth = s.book.history.done.length;
    s.book.listen((change) => lines.push(journalLine(change)));
    s.type({ A1: '2' });
    expect(follow(2).ok).toBe(true);
    expect([s.text('A1'), s.text('B1')]).toEqual(['2', '2']);
    expect(s.book.history.done).toHaveLength(depth + 1);
    s.book.undo();
    expect(writeBook(s.document)).toBe(before);
    // What was taken back can still be done again after something followed.
    follow(5);
    s.book.redo();
    expect([s.text('A1'), s.text('B1')]).toEqual(['2', '2']);
    const again = replay(readBack(before), lines);
    if (!again.ok) throw new Error(again.reason);
    expect(writeBook(again.book.document)).toBe(writeBook(s.document));
  });

  test('what cannot follow leaves the book as it was', () => {
    const s = stage({ Walk: { A1: '1' } });
    const before = writeBook(s.document);
    const refused = s.book.follow([
      { kind: 'setTitle', title: 'x' },
      { kind: 'removeLines', sheet: s.place('A1').sheet, axis: 'rows', ids: ['unknown'] },
    ]);
    expect(refused.ok).toBe(false);
    expect(writeBook(s.document)).toBe(before);
    expect(s.book.follow([])).toEqual({ ok: true, change: null });
  });

  test('nothing to do is nothing done', () => {
    const s = stage();
    expect(s.book.run({ label: 'x', steps: [] })).toEqual({ ok: true, change: null });
  });
});

describe('those who listen', () => {
  test('hear what was done, which cells, and whether they have to calculate', () => {
    const s = stage({ Walk: { A1: '1' } });
    const heard: Change[] = [];
    const stop = s.book.listen((change) => heard.push(change));
    s.type({ A2: '=A1' });
    s.run(describeCells(s.document, s.means, [s.region('A1')], { format: { bold: true } }));
    s.book.undo();
    stop();
    s.book.redo();
    const { sheet, row, column } = s.place('A2');
    expect(heard.map(({ kind, structure }) => [kind, structure])).toEqual([
      ['do', false],
      ['do', false],
      ['undo', false],
    ]);
    expect(heard[0]?.effects).toEqual([
      {
        kind: 'linesInserted',
        sheet,
        axis: 'rows',
        spans: [{ at: 1, count: 1 }],
        moved: false,
        tail: true,
      },
      { kind: 'cells', sheet, cells: [{ row, column, content: true }] },
    ]);
    expect(heard[1]?.effects).toMatchObject([{ kind: 'cells', cells: [{ content: false }] }]);
  });

  test('hear where lines came, went and moved, and which formulas that rewrote', () => {
    const s = stage({ Walk: { A1: '1', A6: '=SUM(A1:A3)' } });
    const heard: Change[] = [];
    s.book.listen((change) => heard.push(change));
    const sheet = s.sheet('Walk');
    s.run(insertLines(s.document, s.means, sheet, 'rows', 1, 2));
    s.run(removeLines(s.document, sheet, 'rows', [1, 2, 4]));
    s.run(moveLines(s.document, s.means, sheet, 'rows', [0], 3));
    s.book.undo();
    const lines = heard.flatMap(({ effects }) =>
      effects.map((effect) => ('spans' in effect ? [effect.kind, effect.spans] : [effect.kind])),
    );
    expect(lines).toEqual([
      ['linesInserted', [{ at: 1, count: 2 }]],
      [
        'linesRemoved',
        [
          { at: 1, count: 2 },
          { at: 4, count: 1 },
        ],
      ],
      ['cells'],
      ['linesRemoved', [{ at: 0, count: 1 }]],
      ['linesInserted', [{ at: 2, count: 1 }]],
      ['linesRemoved', [{ at: 2, count: 1 }]],
      ['linesInserted', [{ at: 0, count: 1 }]],
      ['cells'],
    ]);
    expect(heard.every(({ structure }) => structure)).toBe(true);
  });
});

describe('the journal', () => {
  function session() {
    const s = stage();
    const lines: string[] = [];
    s.book.listen((change) => lines.push(journalLine(change)));
    s.type({ A1: '1', B2: '=A1' });
    s.run(addSheet(s.document, s.means));
    s.book.undo();
    s.type({ A1: '2' });
    s.book.undo();
    return { s, lines };
  }
  const base = () =>
    newDocument(countingMeans(), { title: 'Harbour Hours', sheet: { name: 'Walk' } });

  test('replays to the same bytes, with the same history', () => {
    const { s, lines } = session();
    const again = replay(base(), lines);
    if (!again.ok) throw new Error(again.reason);
    expect(writeBook(again.book.document)).toBe(writeBook(s.document));
    expect(again.book.history.undone.map(({ label }) => label)).toEqual(['Enter A1']);
    again.book.undo();
    expect(writeBook(again.book.document)).toBe(writeBook(base()));
  });

  test('a last line cut short by a crash is left out, wherever it was cut', () => {
    const { lines } = session();
    const whole = replay(base(), lines.slice(0, 3));
    if (!whole.ok) throw new Error(whole.reason);
    const last = lines[3] ?? '';
    for (let length = 0; length < last.length; length += 9) {
      const again = replay(base(), [...lines.slice(0, 3), last.slice(0, length)]);
      if (!again.ok) throw new Error(again.reason);
      expect(again.cutShort).toBe(true);
      expect(writeBook(again.book.document)).toBe(writeBook(whole.book.document));
    }
  });

  test.each([
    ['{"kind":"do"}', 'The journal stops at line 1: The line is damaged.'],
    ['{"kind":"undo"}', 'The journal stops at line 1: There is nothing to undo.'],
    [
      '{"kind":"do","label":"x","steps":[{"kind":"removeName","id":"q"}]}',
      'The journal stops at line 1: The name is no longer in the book.',
    ],
    [
      '{"kind":"do","label":"x","steps":[{"kind":"setCells","sheet":"i0","cells":[{"row":"a","column":"b","cell":{"formula":{"pieces":["=",""],"references":["cell"]}}}]}]}',
      'The journal stops at line 1: A formula is damaged.',
    ],
    ['[[[[', 'The journal stops at line 1: The line is cut short.'],
  ])('stops at a line that cannot be done: %s', (line, reason) => {
    expect(replay(base(), [line, '{"kind":"redo"}'])).toMatchObject({ ok: false, reason });
  });
});
