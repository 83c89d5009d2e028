import { beforeEach, describe, expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { journalLine, replay } from '../../../src/book/form/journal.ts';
import { photosOn, photosWith } from '../../../src/book/form/photos.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { redact } from '../../../src/book/form/redact.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { cellAtSpot } from '../../../src/book/look.ts';
import { describeCells } from '../../../src/book/make/properties.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import type { Book, Photo } from '../../../src/book/types.ts';
import { planMeans, run } from '../../../templates/build.ts';

const means = planMeans();
const photo: Photo = { hash: 'ab'.repeat(32), name: 'IMG_0001.jpg', size: 4 };
const picture = { hash: photo.hash, jpeg: '/9j/4A==' };
const other = { hash: 'cd'.repeat(32), jpeg: '/9j/4A==' };

let book: Book;
let sheet: string;
let lines: string[];
let start: string;

beforeEach(() => {
  book = createBook(newDocument(means));
  sheet = book.document.sheets[0]?.id ?? '';
  lines = [];
  start = writeBook(book.document);
  book.listen((change) => lines.push(journalLine(change)));
  const region = { sheet, top: 0, left: 0, height: 1, width: 1 };
  run(book, describeCells(book.document, means, [region], { photos: [photo] }));
});

const at = () => ({ sheet, row: 0, column: 0 });

describe('photos of a book', () => {
  it('stand on their cell, in the file, in the journal and through undo', () => {
    expect(cellAtSpot(book.document, at())?.photos).toEqual([photo]);
    const read = readBook(writeBook(book.document));
    expect(read.ok && photosOn(read.document)).toEqual([photo.hash]);
    book.undo();
    expect(photosOn(book.document)).toEqual([]);
    book.redo();
    expect(photosOn(book.document)).toEqual([photo.hash]);
  });

  it('go along as pictures only where a cell names them', () => {
    const text = writeBook(book.document, [other, picture]);
    const read = readBook(text);
    expect(read.ok && photosWith(read.document)).toEqual([picture]);
    expect(read.ok && writeBook(read.document, photosWith(read.document))).toBe(text);
    expect(writeBook(book.document)).not.toContain('jpeg');
  });

  it.each([
    ['a picture that is no JPEG', { ...picture, jpeg: 'PHN2Zz4=' }],
    ['a picture that is not in base64', { ...picture, jpeg: '/9j/<svg>' }],
    ['a hash that is none', { ...picture, hash: '../../etc' }],
  ])('are refused with the file: %s', (_what, bad) => {
    const text = writeBook(book.document, [picture]).replace(
      JSON.stringify(picture),
      JSON.stringify(bad),
    );
    expect(text).toContain(JSON.stringify(bad));
    const read = readBook(text);
    expect(read).toMatchObject({ ok: false, reason: expect.any(String) });
  });

  it('lose their names, and nothing else, where a report is made without words', () => {
    const blinded = redact({ book: writeBook(book.document), lines: [] });
    expect(blinded.ok && blinded.book).toContain(photo.hash);
    expect(blinded.ok && blinded.book).not.toContain('IMG_0001');
  });

  it('are brought back by the journal, whatever was undone since', () => {
    book.undo();
    expect(lines.join('\n')).toContain(photo.hash);
    book.redo();
    const begun = readBook(start);
    const replayed = begun.ok ? replay(begun.document, lines) : begun;
    expect(replayed.ok && photosOn(replayed.book.document)).toEqual([photo.hash]);
  });
});
