import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valuesFor } from '../../../src/engine/index.ts';
import { escapedText, unescapedText } from '../../../src/files/csv/escape.ts';
import { readCsv } from '../../../src/files/csv/read.ts';
import { tableOf } from '../../../src/files/csv/write.ts';
import { split } from '../../../src/files/table.ts';
import { runs } from '../../support/runs.ts';
import { openBook } from '../engine/support/openBook.ts';

/** What spreadsheet programs take for the beginning of a formula (OWASP, CSV injection), and the wide signs. */
const signs = ['=', '+', '-', '@', '\t', '\r', '＝', '＋', '－', '＠'];

const csvOf = (text: string, separator: ',' | '\t' = ',') => {
  const { document, engine } = openBook({ Walk: [[`'${text}`, '-2']] });
  const [sheet] = document.sheets;
  if (!sheet) throw new Error('There is no sheet.');
  return tableOf(document, valuesFor(document, engine), sheet, separator);
};

describe('a text cannot become a formula in another program', () => {
  for (const sign of signs) {
    it(`${JSON.stringify(sign)} at its beginning`, () => {
      for (const separator of [',', '\t'] as const) {
        const [[cell = '', number] = []] = split(
          csvOf(`${sign}2+cmd|'/C x'!A0`, separator),
          separator,
        );
        expect(signs).not.toContain(cell.charAt(0));
        expect(number, 'numbers stay numbers').toBe('-2');
      }
    });
  }

  it('and comes back as it was, whatever it is', () => {
    const text = fc
      .tuple(fc.constantFrom('', "'", "''", ...signs), fc.string())
      .map(([a, b]) => a + b);
    fc.assert(
      fc.property(text, (text) => {
        expect(signs).not.toContain(escapedText(text).charAt(0));
        expect(unescapedText(escapedText(text))).toBe(text);
      }),
      { numRuns: runs(500) },
    );
  });

  it('read back from a table of text it is a text', () => {
    const csv = new TextEncoder().encode(csvOf('=1+1'));
    expect(readCsv(csv, 'walk').book.sheets[0]?.cells[0]).toMatchObject({ value: '=1+1' });
    expect(readCsv(csv, 'walk').book.sheets[0]?.cells[0]).not.toHaveProperty('formula');
  });
});
