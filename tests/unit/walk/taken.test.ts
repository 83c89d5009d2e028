import { describe, expect, it } from 'vitest';
import { differencesOf } from '../../../src/book/differences.ts';
import { journalLine, replay } from '../../../src/book/form/journal.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { redact } from '../../../src/book/form/redact.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { cellAtSpot } from '../../../src/book/look.ts';
import { addRecord } from '../../../src/book/make/records.ts';
import { wallClock } from '../../../src/book/wallClock.ts';
import type { Outcome } from '../../../src/commands/command.ts';
import { createSession } from '../../../src/session/session.ts';
import { fillReading } from '../../../src/walk/entries.ts';
import { lastMeter, metersIn, stampOf } from '../../../src/walk/meters.ts';
import { words } from '../../../src/words/words.ts';
import { run } from '../../../templates/build.ts';
import { harbour } from '../repeat/place.ts';

const taken = { date: '2026-09-23', time: '14:05', meter: 'Meter A' };

/** The loft with a reading of its key taken by Walk. */
function walked() {
  const place = harbour();
  const { book, engine, means, document } = place;
  const sheet = place.idOf('Sail loft');
  const context = { book, engine, means, session: createSession(sheet) };
  const key = { sheet, row: 11, column: 2 };
  const fill = (text: string, stamp = taken, spot = key) =>
    fillReading.run(context, { spot, text, taken: stamp }) as Outcome;
  return { ...place, sheet, key, fill, stamp: () => stampOf(document, key) };
}

describe('a reading taken by Walk', () => {
  it('remembers when it was taken and with which meter, and undo takes both back', () => {
    const { book, fill, stamp } = walked();
    expect(fill('f/2.8')).toEqual({ ok: true });
    expect(stamp()).toEqual(taken);
    fill('f/3.2', { ...taken, time: '14:20', meter: 'Meter B' });
    expect(stamp()).toEqual({ ...taken, time: '14:20', meter: 'Meter B' });
    book.undo();
    expect(stamp()).toEqual(taken);
    book.undo();
    expect(stamp()).toBeUndefined();
  });

  it('forgets it once something else is typed, or it is taken away', () => {
    const { fill, stamp, type } = walked();
    fill('f/3.2');
    type('Sail loft', 'C12', 'f/4');
    expect(stamp()).toBeUndefined();
    fill('f/3.2');
    fill('');
    expect(stamp()).toBeUndefined();
  });

  it('the same number metered again is metered later', () => {
    const { fill, stamp } = walked();
    fill('f/3.2');
    fill('f/3.2', { ...taken, time: '15:00' });
    expect(stamp()?.time).toBe('15:00');
  });

  it('keeps it in the file and the journal, and a report without words says no name', () => {
    const place = walked();
    const start = writeBook(place.document);
    const lines: string[] = [];
    place.book.listen((change) => lines.push(journalLine(change)));
    place.fill('f/3.2');
    const read = readBook(writeBook(place.document));
    expect(read.ok && cellAtSpot(read.document, place.key)?.taken).toEqual(taken);
    const before = readBook(start);
    if (!before.ok) throw new Error(before.reason);
    const aspects = differencesOf(before.document, place.document).sheets[0]?.cells[0]?.aspects;
    expect(aspects).toContain('taken');
    const again = replay(before.document, lines);
    expect(again.ok && cellAtSpot(again.book.document, place.key)?.taken).toEqual(taken);
    const blind = redact({ book: writeBook(place.document), lines });
    expect(blind.ok && `${blind.book}${blind.lines.join('\n')}`).not.toContain('Meter A');
  });

  it.each([
    ['"2026-09-23"', '"yesterday"', words.bookFile.aDay],
    ['"14:05"', '"noon"', words.bookFile.aTime],
  ])('is refused with the file where the stamp is none: %s', (good, bad, must) => {
    const place = walked();
    place.fill('f/3.2');
    const read = readBook(writeBook(place.document).replace(good, bad));
    expect(!read.ok && read.reason).toContain(must);
  });
});

describe('the meter in use', () => {
  it('is that of the latest reading of the sheet, until another is said', () => {
    const { document, sheet, fill } = walked();
    expect(lastMeter(document, sheet)).toBe('');
    fill('f/3.2', { ...taken, time: '15:00', meter: 'Meter B' });
    fill('f/2', taken, { sheet, row: 12, column: 2 });
    expect(lastMeter(document, sheet)).toBe('Meter B');
    expect(lastMeter(document, 'another')).toBe('Meter B');
    expect(metersIn(document)).toEqual(['Meter B', 'Meter A']);
  });

  it('goes into the record with each reading, and with what an earlier record says it reads over', () => {
    const { book, document, means, fill, record } = walked();
    const told = { name: 'Meter A', offset: 0.1, spread: 0.05 };
    run(book, addRecord(document, means, record('Sail loft', { meter: told })));
    fill('f/3.2');
    const made = record('Sail loft');
    expect(made.points[0]).toMatchObject({ time: '14:05', meter: 'Meter A' });
    expect(made.meter).toEqual(told);
    expect(record('Sail loft', { meter: { name: 'Meter C' } }).meter).toEqual({ name: 'Meter C' });
  });
});

it('the clock on the wall says day and time in figures of two', () => {
  expect(wallClock(new Date(2026, 8, 3, 7, 5))).toEqual({ date: '2026-09-03', time: '07:05' });
});
