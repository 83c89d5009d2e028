import { describe, expect, it } from 'vitest';
import { readApart } from '../../../src/app/opening.ts';
import { answerTo } from '../../../src/app/opening-work.ts';
import { bookFrom, readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { mostText } from '../../../src/book/texts.ts';
import { openBook } from '../engine/support/openBook.ts';

const { document } = openBook({
  Walk: [
    ['85 lx', '=STOPS(A1,400)'],
    ['a note', '=SUM(A1:A2)'],
  ],
});
const file = writeBook(document);

describe('a file of a book, looked over apart from the page', () => {
  it('is the same book on the other side', async () => {
    const answer = await answerTo(new Blob([file]));
    if (answer.kind !== 'checked') throw new Error(answer.reason);
    const read = bookFrom(structuredClone(answer.json));
    expect(read.ok && writeBook(read.document)).toBe(file);
  });

  const spoiled: Readonly<Record<string, readonly [text: string, reason: RegExp]>> = {
    'cut short': [file.slice(0, -20), /cut short/],
    'of 200,000 lists within each other': ['['.repeat(200_000), /not a Halfstop book/],
    'with a shelf nested fifty deep': [
      file.replace('"more":{}', `"more":{"a":${'['.repeat(50)}${']'.repeat(50)}}`),
      /nested too deep/,
    ],
    'with a formula of 10,000 brackets': [
      file.replace('=SUM(A1:A2)', `=${'('.repeat(10_000)}1${')'.repeat(10_000)}`),
      /Walk.*B2.*deep/,
    ],
    'with a title of ten million letters': [
      file.replace(`"title": "${document.title}"`, `"title": "${'x'.repeat(10_000_000)}"`),
      /“title” is .* and must be at most 100,000 characters/,
    ],
    'with a cell of 200,000 letters': [
      file.replace('a note', 'x'.repeat(200_000)),
      /cell A2, “text” is .* and must be at most 100,000 characters/,
    ],
  };
  it.each(Object.entries(spoiled))('%s is refused with a sentence', async (_, [text, reason]) => {
    expect(text).not.toBe(file);
    const answer = await answerTo(new Blob([text]));
    expect(answer).toEqual({ kind: 'refused', ok: false, reason: expect.stringMatching(reason) });
    expect('reason' in answer && answer.reason.length).toBeLessThan(500);
  });

  it('that is gone meanwhile is said to be', async () => {
    const gone = new Blob([file]);
    gone.text = () => Promise.reject(new DOMException('gone', 'NotFoundError'));
    expect(await answerTo(gone)).toMatchObject({
      reason: 'The file is no longer where it was, so nothing was opened.',
    });
  });

  it('of more than 100 MB is not read at all', async () => {
    const large = { name: 'large.halfstop', size: 100_000_001 } as File;
    expect(await readApart(large)).toEqual({
      ok: false,
      reason: 'The file is larger than 100 MB, so nothing was opened.',
    });
  });
});

describe('what goes into a book', () => {
  const most = 'x'.repeat(mostText);
  const cell = (text: string) => ({ content: { kind: 'text', text } }) as const;
  const sheet = document.sheets[0]?.id ?? '';
  const row = document.sheets[0]?.rows.idAt(0) ?? '';
  const column = document.sheets[0]?.columns.idAt(0) ?? '';

  it('may be as long as a file may hold, and comes back', () => {
    const { book } = openBook({ Walk: [[most]] });
    const again = readBook(writeBook(book.document));
    expect(again.ok && writeBook(again.document)).toBe(writeBook(book.document));
  });

  it.each([
    ['a text', { kind: 'setCells', sheet, cells: [{ row, column, cell: cell(`${most}x`) }] }],
    [
      'a note',
      {
        kind: 'setCells',
        sheet,
        cells: [{ row, column, cell: { ...cell(''), note: `${most}x` } }],
      },
    ],
    ['a title', { kind: 'setTitle', title: `${most}x` }],
    ['a purpose', { kind: 'setSheet', sheet, properties: { purpose: `${most}x` } }],
  ] as const)('%s is refused above that, and nothing is changed', (_, step) => {
    const { book } = openBook({ Walk: [['85 lx']] });
    const before = writeBook(book.document);
    expect(book.run({ label: 'Type', steps: [step] })).toEqual({
      ok: false,
      reason: 'A text has at most 100,000 characters here; this one has 100,001.',
    });
    expect(writeBook(book.document)).toBe(before);
  });
});
