import { expect, it } from 'vitest';
import { removeLines } from '../../../src/book/make/lines.ts';
import { openBook } from './support/openBook.ts';

it('a formula whose cell was deleted says so, and undo brings its value back', () => {
  const opened = openBook({
    Walk: [['400'], ['100', '=STOPS(A1,A2)'], ['', '=B2+1', '=SUM(A1:A2)']],
  });
  opened.must(removeLines(opened.document, opened.idOf('Walk'), 'rows', [0]));
  const said = 'The formula points to a cell that was deleted';
  expect(opened.value('B1')).toEqual({ code: '#REF!', message: `${said}.` });
  expect(opened.value('B2')).toEqual({ code: '#REF!', message: `${said} (in B1).` });
  expect(opened.value('C2')).toBe(100);
  opened.book.undo();
  expect(['B2', 'B3', 'C3'].map((address) => opened.value(address))).toEqual([2, 3, 500]);
});
