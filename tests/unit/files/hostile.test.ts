import fc from 'fast-check';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { isFunction } from '../../../src/engine/index.ts';
import { readForeign } from '../../../src/files/in/read.ts';
import { odsOf } from '../../../src/files/ods/write.ts';
import type { PlainBook } from '../../../src/files/plain/types.ts';
import { xlsxOf } from '../../../src/files/xlsx/write.ts';
import { spoiledBytes } from '../../fuzz/spoiled.ts';
import { runs } from '../../support/runs.ts';
import { chance } from '../functions/support/chance.ts';

const book: PlainBook = {
  title: 'Boat shed',
  names: [{ name: 'Key', formula: "='Boat shed'!$B$1" }],
  sheets: [
    {
      name: 'Boat shed',
      protected: true,
      widths: new Map([[0, 120]]),
      frozenRows: 1,
      frozenColumns: 0,
      cells: [
        { row: 0, column: 0, value: 'Bench', note: 'by the window' },
        { row: 0, column: 1, value: 400, look: { after: ' lx' }, unlocked: true },
        { row: 1, column: 1, value: 800, formula: '=B1*2' },
      ],
    },
  ],
};
const files = { xlsx: await xlsxOf(book), ods: odsOf(book) };
type Form = keyof typeof files;
const forms = Object.keys(files) as Form[];
const mainPart = { xlsx: 'xl/worksheets/sheet1.xml', ods: 'content.xml' } as const;

const spoiled = (file: Uint8Array) => fc.integer().map((from) => spoiledBytes(file, chance(from)));

const read = (bytes: Uint8Array, form = 'xlsx') => readForeign(bytes, `a.${form}`, { isFunction });

/** The file with its main part put another way. */
function altered(form: Form, alter: (text: string) => string | Uint8Array): Uint8Array {
  const parts = unzipSync(files[form]);
  const text = new TextDecoder().decode(parts[mainPart[form]]);
  const content = alter(text);
  return zipSync({
    ...parts,
    [mainPart[form]]: typeof content === 'string' ? strToU8(content) : content,
  });
}

function refusal(bytes: Uint8Array): string {
  const result = read(bytes);
  return result.ok ? '' : result.reason;
}

describe.each(forms)('%s made to do harm is refused with a sentence', (form) => {
  it('is read when nothing is wrong with it', () => expect(read(files[form]).ok).toBe(true));

  it('unpacking to far more than it holds', () => {
    expect(refusal(altered(form, (text) => text + ' '.repeat(80_000_000)))).toMatch(
      /unpacks to far more/,
    );
  });

  it('declaring entities', () => {
    const bomb = '<!DOCTYPE a [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>';
    const declared = altered(form, (text) =>
      text.replace(/^<\?xml.*?\?>\s*/, (head) => head + bomb),
    );
    expect(refusal(declared)).toMatch(/declares a document type/);
  });

  it('in letters that are not UTF-8', () => {
    const broken = altered(form, (text) => {
      const bytes = strToU8(text);
      bytes[text.indexOf('>') + 1] = 0xff;
      return bytes;
    });
    expect(refusal(broken)).toMatch(/not UTF-8/);
  });

  it('nested too deep', () => {
    const open = '<a>'.repeat(100) + '</a>'.repeat(100);
    const nested = altered(form, (text) =>
      text.replace(/(<\/(?:worksheet|office:body)>)/, `${open}$1`),
    );
    expect(refusal(nested)).toMatch(/nests too deep/);
  });

  it('cut short', () => {
    expect(refusal(files[form].slice(0, files[form].length / 2))).toMatch(/Nothing was taken in/);
  });

  it('mutated in any way it is read or refused, and nothing else', () => {
    fc.assert(
      fc.property(spoiled(files[form]), (bytes) => {
        const result = read(bytes, form);
        if (!result.ok) expect(result.reason).toMatch(/^[A-Z].*\.$/);
      }),
      { numRuns: runs(150) },
    );
  });

  it('with its main part mutated likewise', () => {
    const part = strToU8(new TextDecoder().decode(unzipSync(files[form])[mainPart[form]]));
    fc.assert(
      fc.property(spoiled(part), (bytes) => {
        const result = read(
          altered(form, () => bytes),
          form,
        );
        if (!result.ok) expect(result.reason).toMatch(/^[A-Z].*\.$/);
      }),
      { numRuns: runs(150) },
    );
  });
});

describe('what a table of cells may not hold', () => {
  it('an ods row repeated with cells in it beyond what is taken', () => {
    const many = altered('ods', (text) =>
      text.replace(
        '<table:table-row><table:table-cell',
        '<table:table-row table:number-rows-repeated="1000000"><table:table-cell table:number-columns-repeated="900"',
      ),
    );
    expect(refusal(many)).toMatch(/more than 300000 cells/);
  });

  it('the older form and files with a password', () => {
    expect(refusal(Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 1, 2]))).toMatch(/xls/);
  });

  it('formulas that nothing here works out are named, and their values kept', async () => {
    const [sheet] = book.sheets;
    if (!sheet) throw new Error('There is no sheet.');
    const cells = [{ row: 0, column: 0, value: 3, formula: '=CUBEVALUE("a")' }];
    const result = read(await xlsxOf({ ...book, names: [], sheets: [{ ...sheet, cells }] }));
    if (!result.ok) throw new Error(result.reason);
    expect(result.imported.leftOut).toEqual([
      'Boat shed, A1: There is no function CUBEVALUE here. Its value is kept.',
    ]);
    expect(result.imported.book.sheets[0]?.cells[0]).toEqual({ row: 0, column: 0, value: 3 });
  });
});
