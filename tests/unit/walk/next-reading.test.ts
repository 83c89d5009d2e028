import { beforeEach, describe, expect, it } from 'vitest';
import { addressAt, readAddress } from '../../../src/book/look.ts';
import type { Book, Id } from '../../../src/book/types.ts';
import { nextReading } from '../../../src/walk/next-reading.ts';
import { buildBook } from '../../../templates/build.ts';
import { pointsSheet } from '../../../templates/key-fill-background/plan.ts';

let book: Book;
let sheet: Id;

beforeEach(() => {
  const points = pointsSheet({
    name: 'Ice house',
    purpose: '',
    points: [
      { point: 'Key side of face', meter: 'dome' },
      { point: 'Fill side of face', wanted: '-2', meter: 'dome' },
    ],
    spots: [{ point: 'Grey card' }],
    colours: [],
  });
  book = buildBook({ title: 'Ice house', sheets: [points] });
  sheet = book.document.sheets[0]?.id ?? '';
});

function from(address: string, back = false): string {
  const at = readAddress(address);
  const next = at && nextReading(book.document, sheet, at, back);
  return next ? addressAt(next) : '';
}

// As the template has them: readings in C12, C13 and C16, then each lamp alone in K, lamps off in M.
describe('the next reading', () => {
  it('is the next point’s, over what is no reading', () => {
    expect(from('C12')).toBe('C13');
    expect(from('C13')).toBe('C16');
  });

  it('after the points is that of the next round, as in Walk', () => {
    expect(from('C16')).toBe('K12');
    expect(from('K13')).toBe('M12');
  });

  it('back is the way one came', () => {
    expect(from('K12', true)).toBe('C16');
    expect(from('C16', true)).toBe('C13');
  });

  it('from a cell that is none is the nearest ahead in the order of walking', () => {
    expect(from('A1')).toBe('C12');
    expect(from('D13')).toBe('C16');
    expect(from('A14', true)).toBe('M13');
  });

  it('of the last is the last, and of the first going back the first', () => {
    expect(from('M13')).toBe('M13');
    expect(from('C12', true)).toBe('C12');
  });

  it('is nothing on a sheet without readings', () => {
    const empty = buildBook({
      title: '',
      sheets: [
        {
          ...{ name: 'Notes', title: '', purpose: '', phase: 'plan' as const, template: '' },
          ...{ widths: [], cells: { A1: { typed: 'nothing to meter' } } },
        },
      ],
    });
    const id = empty.document.sheets[0]?.id ?? '';
    expect(nextReading(empty.document, id, { row: 0, column: 0 }, false)).toBeUndefined();
  });
});
