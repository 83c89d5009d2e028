import { expect, test } from 'vitest';
import { writeBook } from '../../../src/book/form/write.ts';
import type { CellAt, Transaction } from '../../../src/book/types.ts';
import { stage } from './stage.ts';

/** Twice as many as are kept as they came. */
const gestures = 240;

const entries = ['f/2.8 1/3', '85 lx', '=A1', '=SUM(A1:A9)*2', 'a note', '', '=IF(TRUE,"a","b")'];

test('gestures that lie far back read as they came, go to the start and to the end again', () => {
  const s = stage({ Walk: { A1: '1', B2: '=A1', C3: 'key' } });
  const { sheet, row, column } = s.place('B2');
  const content = s.document.sheet(sheet)?.cell(row, column)?.content;
  if (content?.kind !== 'formula') throw new Error('B2 is a formula');
  const wanted = content.formula;
  const start = writeBook(s.document);
  const told: Transaction[] = [];
  s.book.listen(
    ({ kind, transaction }) => kind === 'do' && told.push(structuredClone(transaction)),
  );
  for (let i = 0; i < gestures; i++) {
    s.type({ [`${'ABCD'[i % 4]!}${String(1 + (i % 9))}`]: entries[i % entries.length]! });
    const { row, column } = s.place('C3');
    const cell: CellAt['cell'] = {
      content: { kind: 'number', value: i },
      typed: String(i),
      target: i % 2 ? i : wanted,
      note: `say ${String(i)}`,
      tolerance: 0.3,
      photos: [{ hash: 'f'.repeat(64), name: 'rig.jpg', size: i }],
    };
    const steps = [{ kind: 'setCells', sheet, cells: [{ row, column, cell }] }] as const;
    s.book.run({ label: `Note ${String(i)}`, steps });
  }
  const before = s.book.history.done.length - told.length;
  const kept = s.book.history.done.slice(before);
  expect(kept.map(({ label, steps, go }) => ({ label, steps, ...(go && { go }) }))).toEqual(told);

  const end = writeBook(s.document);
  for (let i = 0; i < told.length; i++) s.book.undo();
  expect(writeBook(s.document)).toBe(start);
  while (s.book.redo());
  expect(writeBook(s.document)).toBe(end);
});

test('what follows from a gesture far back becomes a part of it', () => {
  const s = stage({ Walk: { A1: '1', B2: '0' } });
  for (let i = 0; i < gestures; i++) s.type({ A1: String(i + 2) });
  for (let i = 0; i < gestures - 1; i++) s.book.undo();
  const { sheet, row, column } = s.place('B1');
  const start = writeBook(s.document);
  const cell = { content: { kind: 'number', value: 7 } } as const;
  s.book.follow([{ kind: 'setCells', sheet, cells: [{ row, column, cell }] }]);
  const last = s.book.history.done.at(-1);
  expect(last?.steps).toHaveLength(2);
  expect(last?.go?.sheet).toBe(sheet);
  expect(writeBook(s.document)).not.toBe(start);
  s.book.undo();
  expect(s.text('A1')).toBe('1');
  expect(s.text('B1')).toBe('');
});
