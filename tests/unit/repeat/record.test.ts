import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/book/form/read.ts';
import { photosOn } from '../../../src/book/form/photos.ts';
import { readRecord, writeRecord } from '../../../src/book/form/recordfile.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { addRecord, removeRecord } from '../../../src/book/make/records.ts';
import { lightsIn, recordsOf } from '../../../src/book/records.ts';
import { recordOf } from '../../../src/repeat/record.ts';
import { words } from '../../../src/words/words.ts';
import { run } from '../../../templates/build.ts';
import { as, harbour } from './place.ts';

// The walk of the loft is in tests/support/walks. Dome constant 340, flat 250 (recommended by
// ISO 2720), 25 frames at 180°: 1/50 s; ISO 800. So a dome’s f/2.8 is 340 · 8 / (800 / 50) = 170 lx,
// and a footcandle is 1 / 0.3048² lx.
const footcandle = 1 / 0.3048 ** 2;

describe('a record of the loft', () => {
  const loft = harbour();
  const record = loft.record('Sail loft');
  const point = (name: string) => record.points.find((one) => one.name === name);

  it('has the camera as every reading was worked out', () => {
    expect(record.camera).toMatchObject({ meterAt: 800, time: 1 / 50, dome: 340, flat: 250 });
    expect(record.camera.stop).toBeCloseTo(2 ** 1.5, 12);
    expect(record.camera.white).toBe(3200);
    expect(record.camera.settings).toContainEqual({
      label: 'Shutter',
      text: '180°',
      value: 180,
      quantity: 'angle',
    });
  });

  it('has each point with its reading as it was said, in light and from the key', () => {
    expect(record.points.map(({ name }) => name)).toEqual([
      'Key side of face',
      'Fill side of face',
      'Back light on shoulder',
      'Canvas left',
      'Canvas right',
      'Rope bench',
    ]);
    expect(point('Key side of face')?.lux).toBeCloseTo(170, 9);
    // f/1.4 1/3 is 2^((1 + 1/3) / 2): 1 2/3 stops under f/2.8.
    expect(point('Fill side of face')?.fromKey).toBeCloseTo(-5 / 3, 9);
    // Flat, C = 250: N² = 85 · 800 / 50 / 250 = 5.44, against 8: log2 of it is −0.556 stop.
    expect(point('Rope bench')?.fromKey).toBeCloseTo(Math.log2(5.44 / 8), 9);
    expect(point('Rope bench')?.reading).toMatchObject({ quantity: 'illuminance', value: 85 });
  });

  it('has the lamp’s own light with the ambient taken away, where it was metered alone', () => {
    // 11 fc alone less 0.5 fc with all lamps off.
    expect(point('Key side of face')?.own).toBeCloseTo(10.5 * footcandle, 9);
    expect(point('Key side of face')?.lampsOff).toBeCloseTo(0.5 * footcandle, 9);
    expect(point('Canvas left')?.own).toBeUndefined();
    expect(point('Key side of face')).toMatchObject({ distance: 3.2, nearest: 2, output: 1 });
  });

  it('counts the lights that stand, each once, and no loads', () => {
    const light = (name: string, caption: string) => ({
      name,
      sheet: 'Rig',
      says: [{ caption, text: '3 m', value: 3 }],
    });
    const rig = [
      light('Key', 'x'),
      light('Key, bare', 'distance'),
      light('Fill', 'distance'),
      light('Fresnel 650', 'circuit'),
    ];
    expect(lightsIn({ rig })).toBe(2);
  });

  it('has ratios, spot readings and colours', () => {
    expect(record.ratios.map(({ label }) => label)).toContain('Lighting ratio');
    expect(record.spots.map(({ name }) => name)).toContain('Grey card at face');
    expect(record.colours.find(({ name }) => name === 'Fill colour')).toMatchObject({
      kelvin: 3390,
      duv: 0.0068,
    });
  });

  it('stays as it is when the sheet changes, and goes with undo of its making', () => {
    const { book, document, means } = loft;
    run(book, addRecord(document, means, record));
    loft.type('Sail loft', 'C12', 'f/5.6');
    expect(recordsOf(document)[0]?.points[0]?.f).toBeCloseTo(2 ** 1.5, 12);
    book.undo();
    book.undo();
    expect(recordsOf(document)).toEqual([]);
    book.redo();
    expect(recordsOf(document)).toHaveLength(1);
    run(book, removeRecord(document, recordsOf(document)[0]?.id ?? ''));
    expect(removeRecord(document, 'none')).toEqual({ ok: false, reason: words.repeat.gone });
  });
});

describe('records in a book', () => {
  it('are listed from the latest on, under names of their own, and lie in its file', () => {
    const { book, document, means, record } = harbour();
    for (const date of ['2026-09-22', '2026-09-24', '2026-09-23'])
      run(book, addRecord(document, means, record('Sail loft', { date })));
    expect(recordsOf(document).map(({ name, date }) => [name, date])).toEqual([
      ['Sail loft 2', '2026-09-24'],
      ['Sail loft 3', '2026-09-23'],
      ['Sail loft', '2026-09-22'],
    ]);
    const again = readBook(writeBook(document));
    expect(again.ok && recordsOf(again.document)).toEqual(recordsOf(document));
  });

  it('keep their pictures in the book when the cell is gone', () => {
    const { book, document, means, record } = harbour();
    const loft = record('Sail loft');
    const photo = { hash: 'ab'.repeat(32), name: 'loft', size: 12 };
    const [first, ...others] = loft.points;
    if (!first) throw new Error('no point');
    run(
      book,
      addRecord(document, means, { ...loft, points: [{ ...first, photos: [photo] }, ...others] }),
    );
    expect(photosOn(document)).toContain(photo.hash);
  });

  it('cannot be made of a sheet without points, or without a reading of the key', () => {
    const { look, idOf, type } = harbour();
    expect(recordOf(look, idOf('Notes'), as)).toEqual({ ok: false, reason: words.repeat.noPoints });
    type('Sail loft', 'C12', '');
    expect(recordOf(look, idOf('Sail loft'), as)).toMatchObject({ reason: words.repeat.noKey });
    type('Sail loft', 'F4', '');
    expect(recordOf(look, idOf('Sail loft'), as)).toMatchObject({ ok: false });
  });
});

describe('a record in a file', () => {
  const record = harbour().record('Sail loft', { meter: { name: 'Meter A', offset: 0.1 } });
  const text = writeRecord(record);

  it('comes out as it went in', () => {
    expect(readRecord(text)).toEqual({ ok: true, record, photos: [] });
  });

  it.each([
    ['{', words.repeat.fileNone],
    ['[1]', words.repeat.fileNone],
    [text.slice(0, 300), words.repeat.fileCut],
    [writeBook(harbour().document), words.repeat.fileBook],
    [text.replace('"version": 1', '"version": 2'), words.repeat.fileNewer],
    [
      text.replace('"tolerance": 0.25', '"tolerance": -1'),
      words.repeat.fileFault('record / tolerance'),
    ],
    [
      text.replace('"tolerance": 0.25', '"__proto__": {"tolerance": 1}, "tolerance": 0.25'),
      words.bookFile.damagedBy(words.bookFile.strangeKey('__proto__')),
    ],
  ])('is refused whole where it is none or damaged: %#', (damaged, reason) => {
    expect(readRecord(damaged)).toEqual({ ok: false, reason });
  });
});
