import { expect, test } from 'vitest';
import { journalLine, replay } from '../../../src/book/form/journal.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { redact } from '../../../src/book/form/redact.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { defineName, renameName } from '../../../src/book/make/names.ts';
import { describeCells, setTarget } from '../../../src/book/make/properties.ts';
import { addSheet, describeSheet } from '../../../src/book/make/sheets.ts';
import type { Made } from '../../../src/book/make/made.ts';
import type { Step } from '../../../src/book/types.ts';
import { stage } from './stage.ts';

/** Words that stand nowhere else, so that any that are left show. */
const words = /ana|mira|quay|lantern|secret|gable/i;

function report() {
  const s = stage({
    Lantern: { A1: 'Mira at the quay', B1: '250 fc' },
    'Ana’s loft': { A1: '=Lantern!B1' },
  });
  s.run(defineName(s.document, s.means, 'gable_light', s.region('B1')));
  const book = writeBook(s.document);
  const lines: string[] = [];
  s.book.listen((change) => lines.push(journalLine(change)));
  const steps = (...list: Step[]): Made => ({
    ok: true,
    transaction: { label: 'Secret', steps: list },
  });
  s.type({ C1: '=IF(gable_light>1,"Mira","no ""quay""")', C2: 'secret', C3: '2.5' });
  s.run(renameName(s.document, s.means, s.document.names[0]?.id ?? '', 'gable_lantern'));
  s.run(
    describeCells(s.document, s.means, [s.region('A1:B2')], { note: 'secret', pointed: 'quay' }),
  );
  s.run(setTarget(s.document, s.means, s.spot('B2'), '=gable_lantern&"ana"'));
  s.run(addSheet(s.document, s.means, { name: 'Quay', purpose: 'Mira', title: 'Ana' }));
  s.run(describeSheet(s.document, s.sheet('Quay'), { name: 'Gable', purpose: 'secret' }));
  s.run(
    steps(
      { kind: 'setTitle', title: 'Secret' },
      { kind: 'setSettings', settings: { more: { who: ['Ana'] } } },
      { kind: 'setShelf', shelf: 'records', items: [{ id: 'r', item: { id: 'r', by: 'Mira' } }] },
    ),
  );
  s.book.undo();
  s.book.redo();
  return { s, book, lines };
}

test('a report without words replays to the same cells, numbers and typed readings', () => {
  const { s, book, lines } = report();
  expect(`${book}${lines.join('\n')}`).toMatch(words);
  const blind = redact({ book, lines });
  if (!blind.ok) throw new Error(blind.reason);
  expect(`${blind.book}${blind.lines.join('\n')}`).not.toMatch(words);

  const read = readBook(blind.book);
  if (!read.ok) throw new Error(read.reason);
  const again = replay(read.document, blind.lines);
  if (!again.ok) throw new Error(again.reason);
  expect(again.book.history.done).toHaveLength(s.book.history.done.length - before(s));
  expect(again.book.document.sheets.map(({ size }) => size)).toEqual(
    s.document.sheets.map(({ size }) => size),
  );
  const text = writeBook(again.book.document);
  expect(text).toContain('"typed":"250 fc"');
  expect(text).toContain('=IF(name_2>1,\\"xxxx\\",\\"xxxxxxxxxxx\\")');
  expect(text).not.toMatch(words);
});

/** What was done before the report begins. */
function before({ book }: ReturnType<typeof stage>): number {
  return book.history.done.findIndex(({ label }) => label === 'Enter 3 cells');
}

test('a last line that was cut short is left out, a damaged one in the middle is said', () => {
  const { book, lines } = report();
  const cut = [...lines.slice(0, 2), (lines[2] ?? '').slice(0, 20)];
  expect(redact({ book, lines: cut })).toMatchObject({ ok: true, lines: { length: 2 } });
  expect(redact({ book, lines: ['{}', ...lines] })).toEqual({
    ok: false,
    reason: 'The line is damaged.',
  });
});
