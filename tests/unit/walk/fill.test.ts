import { beforeEach, describe, expect, it } from 'vitest';
import { cellAtSpot, typedText, placeAt } from '../../../src/book/look.ts';
import type { Book, Means } from '../../../src/book/types.ts';
import { readWalk } from '../../../src/files/walk.ts';
import { addPoint, fillWalk } from '../../../src/walk/fill.ts';
import { findTable, nameOfRow } from '../../../src/walk/tables.ts';
import { buildBook, planMeans, run } from '../../../templates/build.ts';
import { pointsSheet } from '../../../templates/key-fill-background/plan.ts';

let book: Book;
let means: Means;
let sheet: string;

beforeEach(() => {
  means = planMeans();
  const planned = pointsSheet({
    name: 'Ice house',
    purpose: '',
    points: [
      { point: 'Key side of face', meter: 'dome' },
      { point: 'Fill side of face', wanted: '-2', meter: 'dome' },
    ],
    spots: [{ point: 'Grey card' }],
    colours: ['Key colour'],
  });
  book = buildBook({ title: 'Walk', sheets: [planned] }, means);
  sheet = book.document.sheets[0]?.id ?? '';
});

function take(text: string): string {
  const walk = readWalk(text);
  if ('reason' in walk) throw new Error(walk.reason);
  const { made, says } = fillWalk(book.document, means, sheet, walk);
  run(book, made);
  return says;
}

/** What was typed in the row named `point`, in the column with the caption. */
function typed(point: string, caption: string): string {
  for (const first of ['point', 'spot reading', 'colour']) {
    const table = findTable(book.document, sheet, first);
    const row = table?.rows.find((at) => nameOfRow(book.document, sheet, at) === point);
    const column = table?.columns.get(caption);
    if (row === undefined || column === undefined) continue;
    const place = placeAt(book.document, { sheet, row, column });
    return place ? typedText(book.document, place) : '';
  }
  return 'nowhere';
}

describe('a walk taken into a sheet of points', () => {
  it('puts each reading beside its point, whatever the capitals, with how it was metered', () => {
    take('point,meter,reading,note\nKEY SIDE OF FACE,incident flat,85 lx,by the door');
    expect(typed('Key side of face', 'reading')).toBe('85 lx');
    expect(typed('Key side of face', 'meter')).toBe('flat');
    expect(typed('Key side of face', 'note')).toBe('by the door');
  });

  it('makes a row for a point that the sheet does not have, counted like the one above', () => {
    take('point,meter,reading\nRope bench,incident flat,85 lx');
    expect(typed('Rope bench', 'reading')).toBe('85 lx');
    expect(typed('Rope bench', 'verdict')).toBe('=IF(ISBLANK(B14),"",VERDICT(E14-B14))');
    expect(typed('Rope bench', 'from key')).toBe('=FSTOPS(R14,$R$12)');
    expect(typed('Rope bench', 'wanted')).toBe('');
    expect(typed('Grey card', 'in the camera')).toMatch(/^=PLACEMENT\(E17,/);
  });

  it('lets a reading alone and the lamps-off reading stand with the points they belong to', () => {
    take(
      'point,meter,reading\nFill alone,incident flat,4.2 fc\nAll lamps off at face,incident flat,0.5 fc',
    );
    expect(typed('Fill side of face', 'alone')).toBe('4.2 fc');
    expect(typed('Fill side of face', 'lamps off')).toBe('0.5 fc');
    expect(typed('Key side of face', 'lamps off')).toBe('0.5 fc');
    expect(typed('Key side of face', 'alone')).toBe('');
  });

  it('names the points that have no reading yet, and what found no place', () => {
    const says = take(
      'point,meter,reading\nKey side of face,dome,\nCamera,setting,"ISO 800, matte box"',
    );
    expect(says).toContain('Still without a reading: Key side of face.');
    expect(says).toContain('"matte box" found no place');
  });

  it('says which reading could not be read and keeps the others', () => {
    const says = take('point,meter,reading\nGrey card,spot,f/4\nKey side of face,dome,f/4');
    expect(says).toContain('f/4: ');
    expect(typed('Grey card', 'reading')).toBe('');
    expect(typed('Key side of face', 'reading')).toBe('f/4');
  });

  it('is one gesture: one undo takes all of it back', () => {
    const before = book.document.sheet(sheet)?.rows.length;
    take('point,meter,reading\nRope bench,flat,85 lx\nKey side of face,dome,f/4');
    book.undo();
    expect(book.document.sheet(sheet)?.rows.length).toBe(before);
    expect(typed('Key side of face', 'reading')).toBe('');
    expect(typed('Rope bench', 'reading')).toBe('nowhere');
  });
});

describe('another point', () => {
  it('stands below the last one with its formulas and nothing typed', () => {
    const { made, row } = addPoint(book.document, means, sheet, 'Door');
    run(book, made);
    const at = book.document.sheet(sheet)?.rows.indexOf(row ?? '') ?? -1;
    expect(nameOfRow(book.document, sheet, at)).toBe('Door');
    expect(typed('Door', 'verdict')).toBe('=IF(ISBLANK(B14),"",VERDICT(E14-B14))');
    expect(cellAtSpot(book.document, { sheet, row: at, column: 2 })?.role).toBe('reading');
  });
});
