import { describe, expect, it } from 'vitest';
import { addSpectra, removeSpectrum, renameSpectrum } from '../../../src/book/make/spectra.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { spectraOf } from '../../../src/book/spectra.ts';
import { spectraIn } from '../../../src/files/spectra/shelf.ts';
import { openBook } from './support/openBook.ts';

const nm = Array.from({ length: 81 }, (_, index) => 380 + 5 * index);
const even = { name: 'Even', kind: 'irradiance', nm, values: nm.map(() => 0.001) } as const;
const grey = { name: 'Grey', kind: 'transmission', nm, values: nm.map(() => 0.5) } as const;
const kept = (one: typeof even | typeof grey) => ({ ...one, values: [...one.values] });

function lit(rows: readonly (readonly string[])[]) {
  const opened = openBook({ Light: rows }, { spectra: spectraIn });
  const add = (...spectra: (typeof even | typeof grey)[]) =>
    opened.must(addSpectra(opened.document, opened.means, spectra.map(kept)));
  const idOf = (name: string) =>
    spectraOf(opened.document).find((one) => one.name === name)?.id ?? '';
  return { ...opened, add, idOf };
}

describe('a spectrum kept in the book', () => {
  it('is looked up by name, and a change of the shelf is followed, undone and redone', () => {
    const { value, add, book } = lit([
      ['=SPECTRUMLUX("even")', '=A1*2', '=SPECTRUMLUX("Even", "Grey")'],
    ]);
    expect(value('A1')).toMatchObject({
      message: 'SPECTRUMLUX: the book has no spectrum “even”; none is kept in it yet.',
    });
    add(even, grey);
    // 683 times the sum of ȳ, 106.86 (CIE 15), times a milliwatt.
    expect(Number(value('A1'))).toBeCloseTo(72.98, 1);
    expect(Number(value('C1'))).toBeCloseTo(Number(value('A1')) / 2, 9);
    book.undo();
    expect(value('B1')).toMatchObject({ code: '#N/A' });
    book.redo();
    expect(Number(value('B1'))).toBeCloseTo(145.97, 1);
  });

  it('is renamed and removed; what looked it up says which there are', () => {
    const { value, add, must, document, idOf } = lit([['=SPECTRUMPEAK("Even")']]);
    add(even);
    must(renameSpectrum(document, idOf('Even'), 'Flat'));
    expect(value('A1')).toMatchObject({
      message: 'SPECTRUMPEAK: the book has no spectrum “Even”; it has Flat.',
    });
    expect(renameSpectrum(document, idOf('Flat'), ' ')).toMatchObject({ ok: false });
    must(removeSpectrum(document, idOf('Flat')));
    expect(spectraOf(document)).toEqual([]);
  });

  it('a second of the same name gets a number', () => {
    const { add, document } = lit([['']]);
    add(even, even);
    add(even);
    expect(spectraOf(document).map(({ name }) => name)).toEqual(['Even', 'Even 2', 'Even 3']);
  });

  it('a filter is no light, and the cell says so', () => {
    const { value, add } = lit([['=SPECTRUMX("Grey")']]);
    add(grey);
    expect(value('A1')).toMatchObject({
      message: 'SPECTRUMX: “Grey” is a filter, and a light is wanted here.',
    });
  });

  it('comes back from the file of the book as it was', () => {
    const { add, document } = lit([['']]);
    add(even, grey);
    const read = readBook(writeBook(document));
    if (!read.ok) throw new Error(read.reason);
    expect(spectraOf(read.document)).toEqual(spectraOf(document));
  });

  it.each([
    ['another kind', { ...even, kind: 'radiance' }],
    ['more values than wavelengths', { ...even, values: [1, 2] }],
    ['wavelengths that fall', { ...even, nm: nm.toReversed() }],
    ['a key that nobody knows', { ...even, colour: 'red' }],
  ])('%s is kept as it is and read as no spectrum', (_, item) => {
    const { document } = lit([['']]);
    const items = [{ ...item, id: 'a1' }];
    const shelf = (name: 'spectra') => ({ ...document.shelf(name), items });
    expect(spectraIn({ shelf: shelf as typeof document.shelf }).named('Even')).toBe(
      'This version knows no such spectrum.',
    );
  });
});

it('columns of a sheet are a spectrum too, and a blank reading is passed over', () => {
  const rows = nm.map((length) => [String(length), length === 500 ? '' : '0.001']);
  const { value } = lit([...rows, ['=SPECTRUMLUX(A1:B81)']]);
  expect(Number(value('A82'))).toBeCloseTo(72.98, 1);
});
