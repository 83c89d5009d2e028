import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { removeLines } from '../../../src/book/make/lines.ts';
import { defineName } from '../../../src/book/make/names.ts';
import { describeCells } from '../../../src/book/make/properties.ts';
import { stage } from './stage.ts';

function book() {
  const s = stage({
    Walk: { A1: 'Key side', B1: '250 fc', B2: '=B1/2', C1: 'TRUE', D1: '2.50', D2: '"x"' },
    'Ice house': { A1: '=SUM(Walk!B1 : B2)+Key_side' },
  });
  s.run(defineName(s.document, s.means, 'Key_side', s.region('B1')));
  s.run(describeCells(s.document, s.means, [s.region('B1')], { note: 'dome', role: 'reading' }));
  s.book.run({
    label: 'x',
    steps: [
      { kind: 'setSettings', settings: { illuminance: 'fc', more: { b: 1, a: { d: 1, c: [2] } } } },
      {
        kind: 'setShelf',
        shelf: 'records',
        items: [{ id: 'r', item: { z: 1, id: 'r', a: null } }],
      },
    ],
  });
  s.type({ E1: '30' });
  return s;
}

const text = () => writeBook(book().document);
const read = (file: string) => {
  const result = readBook(file);
  return result.ok ? 'a book' : result.reason;
};

test('the same book is the same bytes, written twice and read again', () => {
  const s = book();
  const file = writeBook(s.document);
  expect(writeBook(s.document)).toBe(file);
  const again = readBook(file);
  if (!again.ok) throw new Error(again.reason);
  expect(writeBook(again.document)).toBe(file);
});

test('every entry keeps what was typed and the setting it was typed under', () => {
  const again = readBook(text());
  if (!again.ok) throw new Error(again.reason);
  const [walk] = again.document.sheets;
  const cells = Object.fromEntries(
    [...(walk?.cells() ?? [])].map(({ row, column, cell }) => [
      `${String(walk?.rows.indexOf(row))},${String(walk?.columns.indexOf(column))}`,
      [cell.typed, cell.under?.illuminance],
    ]),
  );
  expect(cells).toMatchObject({
    '0,0': ['Key side', 'lx'],
    '0,1': ['250 fc', 'lx'],
    '0,2': ['TRUE', 'lx'],
    '0,3': ['2.50', 'lx'],
    '0,4': ['30', 'fc'],
    '1,1': [undefined, undefined],
  });
});

test('how a book came about is not in its file', () => {
  const s = book();
  const file = writeBook(s.document);
  s.type({ A5: 'x' });
  s.run(removeLines(s.document, s.sheet('Walk'), 'rows', [2, 3, 4]));
  expect(writeBook(s.document)).toBe(file);
});

describe('whatever is wrong is said in a sentence that names where', () => {
  const damaged = (from: string | RegExp, to: string) => {
    const file = text();
    const changed = file.replace(from, to);
    expect(changed).not.toBe(file);
    return read(changed);
  };
  const closed = 'so nothing was opened.';

  test.each([
    ['', `The file is not a Halfstop book, ${closed}`],
    ['hello', `The file is not a Halfstop book, ${closed}`],
    ['{"a":1}', `The file is not a Halfstop book, ${closed}`],
    ['[]', `The file is not a Halfstop book, ${closed}`],
    ['null', `The file is not a Halfstop book, ${closed}`],
    ['PK\u0003\u0004', `The file is not a Halfstop book, ${closed}`],
  ])('foreign: %j', (file, reason) => {
    expect(read(file)).toBe(reason);
  });

  test('cut short anywhere', () => {
    const file = text();
    const short = `The file is cut short or damaged, ${closed}`;
    for (let length = 40; length < file.length - 2; length += 7)
      expect(read(file.slice(0, length))).toBe(short);
  });

  test.each([
    [
      /"version": 1,/,
      '"version": 3,',
      `The book was written by a newer Halfstop (form 3; this one reads up to 1), ${closed}`,
    ],
    [/"version": 1,/, '"version": "1",', 'The file does not say which version of the form it has.'],
    [/"version": 1,/, '"version": 0,', 'Form 0 of the file is not known here.'],
    [
      '"number":30',
      '"number":"30"',
      'The file is damaged: on sheet “Walk”, cell E1, “number” is "30" and must be number. Nothing was opened.',
    ],
    [
      '"number":30',
      '"number":1e999',
      'The file is damaged: on sheet “Walk”, cell E1, “number” is Infinity and must be a finite number. Nothing was opened.',
    ],
    [
      '"quantity":"illuminance"',
      '"quantity":"furlong"',
      'The file is damaged: on sheet “Walk”, cell B1, “quantity” is "furlong" and must be one of the known ones. Nothing was opened.',
    ],
    [
      '"number":30',
      '"colour":30',
      'The file is damaged: on sheet “Walk”, cell E1, “colour” is not known here. Nothing was opened.',
    ],
    [
      '"number":30',
      '"number":30,"text":"a"',
      'Sheet “Walk”, E1: The cell holds two things at once. Nothing was opened.',
    ],
    ['"=B1/2"', '"=(B1"', 'Sheet “Walk”, B2: A bracket is not closed. Nothing was opened.'],
    [
      '"=B1/2"',
      '"=B99"',
      'Sheet “Walk”, B2: A formula refers beyond the rows or columns of its sheet. Nothing was opened.',
    ],
    ['"=B1/2"', '"=Loft!B1"', 'Sheet “Walk”, B2: There is no sheet “Loft”. Nothing was opened.'],
    [
      '"name":"Ice house"',
      '"name":"WALK"',
      'Sheet “WALK”: There is already a sheet “Walk”. Nothing was opened.',
    ],
    [
      '"name":"Key_side"',
      '"name":"Key1"',
      'Name “Key1”: “Key1” reads as the address of a cell. Nothing was opened.',
    ],
    [
      '"title": "Harbour Hours",\n',
      '',
      'The file is damaged: in “title”, “title” is missing. Nothing was opened.',
    ],
    [
      '"mainsHertz":50',
      '"mainsHertz":0',
      'The file is damaged: in “settings”, “mainsHertz” is 0 and must be more than zero. Nothing was opened.',
    ],
    [
      /"rows": \["(\w+)","\w+"/,
      '"rows": ["$1","$1"',
      'Sheet “Walk”: Two rows of the sheet carry one id. Nothing was opened.',
    ],
    [
      '"under":1',
      '"under":7',
      'Sheet “Walk”, E1: It was typed under settings that the file does not list. Nothing was opened.',
    ],
  ])('%s → %s', (from, to, reason) => {
    expect(damaged(from, to)).toBe(reason);
  });

  test.each(['__proto__', 'constructor', '\\u005f_proto__'])('a key %s', (key) => {
    expect(damaged('"a":{', `"${key}":{`)).toMatch(
      /^The file is damaged .*so nothing was opened\.$/,
    );
    expect({}).not.toHaveProperty('c');
  });

  test('a text may say __proto__', () => {
    expect(damaged('"Key side"', '"__proto__"')).toBe('a book');
  });

  test('a value 100,000 deep', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    expect(damaged('"c":[2]', `"c":${deep}`)).toBe(
      'The file is damaged: in “settings”, “more” is Object and must be plain JSON, not nested too deep. Nothing was opened.',
    );
    expect(read(deep)).toBe(`The file is not a Halfstop book, ${closed}`);
  });

  test('a sheet too long', () => {
    const rows = Array.from({ length: 100_001 }, (_, i) => `"r${String(i)}"`).join();
    expect(damaged(/"rows": \[[^\]]*\]/, `"rows": [${rows}]`)).toBe(
      'Sheet “Walk”: A sheet has at most 100000 rows; this one has 100001. Nothing was opened.',
    );
  });
});

test('a book of an older form is brought forward, form by form', () => {
  const old = text().replace('"version": 1,', '"version": -1,').replace('"title"', '"heading"');
  const older = old.replace('"version": -1,', '"version": 0,');
  const migrations = {
    0: ({ heading, ...rest }: Record<string, unknown>) => ({ ...rest, title: heading }),
  };
  const result = readBook(older, migrations);
  if (!result.ok) throw new Error(result.reason);
  expect(writeBook(result.document)).toBe(text());
  expect(readBook(old, migrations)).toEqual({
    ok: false,
    reason: 'The file does not say which version of the form it has.',
  });
});

test('a book from before there was a choice of clocks shows 24 hours, and says so only when asked for 12', () => {
  const s = book();
  expect(writeBook(s.document)).not.toContain('"clock"');
  s.book.run({ label: 'x', steps: [{ kind: 'setSettings', settings: { clock: '12' } }] });
  const again = readBook(writeBook(s.document));
  expect(again.ok && again.document.settings.clock).toBe('12');
  const before = readBook(text());
  expect(before.ok && before.document.settings.clock).toBe('24');
});
