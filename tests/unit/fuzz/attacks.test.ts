import { afterEach, describe, expect, it } from 'vitest';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { defineName } from '../../../src/book/make/names.ts';
import { addSheet } from '../../../src/book/make/sheets.ts';
import { cellAtSpot } from '../../../src/book/look.ts';
import type { Document } from '../../../src/book/types.ts';
import { outForms } from '../../../src/files/out/forms.ts';
import { attacks } from '../../fuzz/attacks.ts';
import { throughFile } from '../../support/through.ts';
import { openBook } from '../engine/support/openBook.ts';

afterEach(() => {
  expect(Object.keys(Object.prototype), 'nothing was put on all objects').toEqual([]);
  expect(Reflect.get({}, 'hit')).toBeUndefined();
});

/** The texts of the first column. */
function texts({ sheets: [sheet], ...document }: Document): string[] {
  void document;
  return attacks.map((_, row) => {
    const content = sheet?.cell(sheet.rows.idAt(row) ?? '', sheet.columns.idAt(0) ?? '')?.content;
    return content?.kind === 'text' ? content.text : (content?.kind ?? 'nothing');
  });
}

const asTexts = () => openBook({ Walk: attacks.map((attack) => [`'${attack}`]) });

/** XML has no form for these: they are left out on the way. */
const unwritable = /[\u0000-\u0008\u000B\u000C\u000E-\u001F]|\p{Surrogate}|[\uFFFE\uFFFF]/gu;
const plain = (text: string) =>
  text
    .replace(unwritable, '')
    .replace(/\uFFFD/g, '')
    .replace(/\s+/g, ' ')
    .trim();

describe(`${String(attacks.length)} texts made to do harm`, () => {
  it('are two hundred, each another', () => {
    expect(new Set(attacks).size).toBe(attacks.length);
    expect(attacks.length).toBeGreaterThanOrEqual(200);
  });

  it('are texts in a cell, letter by letter, also saved and opened', () => {
    const { document } = asTexts();
    expect(texts(document)).toEqual(attacks);
    const read = readBook(writeBook(document));
    expect(read.ok && texts(read.document)).toEqual(attacks);
  });

  it.each(outForms)('are the same texts through %s', async (form) => {
    const found = texts(await throughFile(asTexts(), form));
    expect(found.map(plain)).toEqual(attacks.map(plain));
  });

  it('typed as they are, each is a text, a number or a refusal in a sentence', () => {
    const { document, means, book } = openBook({ Walk: [['1']] });
    const sheet = document.sheets[0]?.id ?? '';
    for (const text of attacks) {
      const made = enter(document, means, [{ sheet, row: 0, column: 0, text }]);
      if (!made.ok) {
        expect(made.reason, text).toMatch(/^\S.*[.?]$/su);
        expect(made.reason.length, text).toBeLessThan(600);
        continue;
      }
      expect(book.run(made.transaction).ok, text).toBe(true);
      const content = cellAtSpot(document, { sheet, row: 0, column: 0 })?.content;
      // What is worked out names functions of ours: none of them reaches out of the book.
      if (content?.kind === 'formula') expect(text, text).toMatch(/^[=+@-]/);
    }
  });

  it('as names of sheets and cells each is taken or refused in a sentence', () => {
    const { document, means, book } = openBook({ Walk: [['1']] });
    const own = document.sheets[0]?.id ?? '';
    for (const name of attacks)
      for (const made of [
        addSheet(document, means, { name }),
        defineName(document, means, name, { text: '=A1', own }),
      ]) {
        if (made.ok) expect(book.run(made.transaction).ok, name).toBe(true);
        else expect(made.reason, name).toMatch(/^\S.*[.?]$/su);
      }
    const read = readBook(writeBook(document));
    expect(read.ok).toBe(true);
  });
});
