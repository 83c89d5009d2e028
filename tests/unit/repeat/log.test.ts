import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { cellAtSpot } from '../../../src/book/look.ts';
import { describeCells } from '../../../src/book/make/properties.ts';
import { removeSheet } from '../../../src/book/make/sheets.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { logSetUp } from '../../../src/repeat/log.ts';
import { words } from '../../../src/words/words.ts';
import { run } from '../../../templates/build.ts';
import { harbour, opened } from './place.ts';

const file = new URL('../../../templates/harbour-hours/book.json', import.meta.url);
const when = { date: '2026-09-23', time: '14:05' };
const sample = () => {
  const read = readBook(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  const place = opened(createBook(read.document));
  const log = (sheet = 'Sail loft') => logSetUp(place.look, place.means, place.idOf(sheet), when);
  const at = (cell: string) => place.valueOf('Set-up log', cell);
  return { ...place, log, at };
};
/** The sample has nine rows from row 29 on. */
const next = 38;

describe('the set-up of the loft, logged', () => {
  it('is a row a light with readings and ratios in the first, and one undo', () => {
    const { book, document, log, at } = sample();
    const before = writeBook(document);
    const made = log();
    expect(made).toMatchObject({ ok: true, says: words.log.logged('12D', 6, 6) });
    run(book, made);
    expect([at(`A${next}`), at(`B${next}`)]).toEqual(['12', '12D']);
    // 23 September 2026, and five past two.
    expect(at(`C${next}`)).toBe(46_288);
    expect(Number(at(`D${next}`)) * 1440).toBeCloseTo(14 * 60 + 5, 6);
    expect(at(`E${next}`)).toBe('ISO 800, 1/50 s, f/2.8');
    const lights = [0, 1, 2, 3, 4, 5].map((row) => at(`F${next + row}`));
    expect(lights).toEqual(['Key', 'Fill', 'Back', 'Canvas left', 'Canvas right', 'Bench']);
    expect(at(`G${next + 1}`)).toBe('Frame 120 × 120');
    expect(at(`J${next + 1}`)).toBe(0.07);
    expect(at(`H${next + 2}`)).toBe('3');
    expect(at(`I${next + 2}`)).toBe('red');
    expect(String(at(`K${next + 2}`))).toMatch(/^gel 2\/3.*, diffusion 2/);
    expect(String(at(`L${next}`))).toContain('Fill side of face f/1.4 1/3');
    expect(String(at(`M${next}`))).toContain('3.17:1');
    expect(at(`L${next + 1}`)).toBeNull();
    expect(at('B3')).toBe('12 of 15 rows');
    book.undo();
    expect(writeBook(document)).toBe(before);
  });

  it('follows what is logged already, under the scene that was typed last', () => {
    const place = sample();
    run(place.book, place.log());
    place.type('Set-up log', `A${next + 5}`, '14');
    place.type('Set-up log', `B${next + 5}`, '14');
    run(place.book, place.log('Boat shed'));
    expect([place.at(`A${next + 6}`), place.at(`B${next + 6}`)]).toEqual(['14', '14A']);
    expect(place.at(`E${next + 6}`)).toBe('ISO 1250, 1/50 s, f/2.8');
  });

  it('brings the photos of the readings along', () => {
    const { book, document, means, idOf, log } = sample();
    const photo = { hash: 'a'.repeat(64), name: 'chair.jpg', size: 1000 };
    // The reading of the fill side.
    const region = { sheet: idOf('Sail loft'), top: 12, left: 2, height: 1, width: 1 };
    run(book, describeCells(document, means, [region], { photos: [photo] }));
    run(book, log());
    const spot = { sheet: idOf('Set-up log'), row: next - 1, column: 13 };
    expect(cellAtSpot(document, spot)?.photos).toEqual([photo]);
  });
});

describe('what cannot be logged says why', () => {
  it('without a log in the book', () => {
    const { look, means, idOf } = harbour();
    expect(logSetUp(look, means, idOf('Sail loft'), when)).toEqual({
      ok: false,
      reason: words.log.noLog,
    });
  });

  it('from a sheet without points', () => {
    expect(sample().log('Camera')).toEqual({ ok: false, reason: words.repeat.noPoints });
  });

  it('with a log that lost its captions', () => {
    const { type, log } = sample();
    type('Set-up log', 'O28', '');
    type('Set-up log', 'P28', '');
    expect(log()).toEqual({ ok: false, reason: words.log.noColumns });
  });

  it('with a log that is full, and one without a plan of the set logs the other rig sheets', () => {
    const { book, document, idOf, log, type } = sample();
    type('Set-up log', 'A85', '30');
    expect(log()).toEqual({ ok: false, reason: words.log.full(6) });
    type('Set-up log', 'A85', '');
    run(book, removeSheet(document, idOf('Set plan')));
    const made = log();
    expect('says' in made && made.says).not.toBe(words.log.logged('12D', 6, 6));
    expect(made.ok).toBe(true);
  });
});
