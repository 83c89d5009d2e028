import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isError } from '../../functions/values.ts';
import { createBook } from '../../src/book/book.ts';
import { readBook } from '../../src/book/form/read.ts';
import { readAddress } from '../../src/book/look.ts';
import { receptorRemark } from '../../src/check/receptors.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { fixturesIn } from '../../src/files/photometric/shelf.ts';
import { expected, waiting } from '../../templates/harbour-hours/expected.ts';

// Readings: invented, in the forms in which people write them. Each result is worked out by hand in
// templates/harbour-hours/expected.ts from the incident and reflected exposure equations of ISO 2720
// (N² / t = E · S / C = L · S / K) and the inverse square law.

const file = new URL('../../templates/harbour-hours/book.json', import.meta.url);
const read = readBook(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(read.reason);
const book = createBook(read.document);
const engine = connectEngine(book, { fixtures: fixturesIn });

function placeOf(sheet: string, cell: string) {
  const id = book.document.sheetNamed(sheet)?.id;
  const at = readAddress(cell);
  if (id === undefined || !at) throw new Error(`${sheet}!${cell}`);
  return { sheet: id, ...at };
}

describe('the loft and the shed, as their walks were written down', () => {
  it.each(expected)('$sheet $cell comes to $value: $why', ({ sheet, cell, value, within }) => {
    const got = engine.valueOf(placeOf(sheet, cell));
    if (typeof value === 'string') expect(got).toBe(value);
    else expect(Math.abs(Number(got) - value)).toBeLessThanOrEqual(within ?? 1e-12);
  });

  it.each(waiting)('$sheet $cell waits for the reading that was not taken', ({ sheet, cell }) => {
    const got = engine.valueOf(placeOf(sheet, cell));
    expect(isError(got) && got.waiting).toBe(true);
    expect(isError(got) && got.message).toMatch(/C17/);
  });

  it('no cell is an error but those that wait or say that a light cannot do it', () => {
    const wrong = book.document.sheets.flatMap((sheet) =>
      sheet.rows.ids.flatMap((_, row) =>
        sheet.columns.ids.flatMap((__, column) => {
          const value = engine.valueOf({ sheet: sheet.id, row, column });
          return isError(value) && !value.waiting && !value.quiet ? [value.message] : [];
        }),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('a flat reading against the dome’s key side is remarked on, the dome’s fill side is not', () => {
    expect(receptorRemark(engine, placeOf('Sail loft', 'E17'))).toMatch(/0\.44 stop/);
    expect(receptorRemark(engine, placeOf('Sail loft', 'E13'))).toBeUndefined();
  });

  it('24 frames a second at 180° on 50 Hz mains would be warned of', () => {
    const { value } = engine.evaluate('FLICKERCHECK(EXPOSURETIME("180°",24),24,50)');
    expect(value).not.toBe('clean');
    expect(value).toMatch(/172\.8/);
  });
});
