import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { replay } from '../../../src/book/form/journal.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { readRecord, writeRecord } from '../../../src/book/form/recordfile.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { readArchive, writeArchive } from '../../../src/files/archive.ts';
import { harbour } from '../../unit/repeat/place.ts';
import { root } from '../../../src/tools/root.mjs';
import { playRandomMove } from '../book/moves.ts';
import { Pair } from '../book/pair.ts';
import { Random } from '../book/random.ts';
import { type Chance, pick } from '../mutated.ts';
import { spoiledBytes, spoiledJson } from '../spoiled.ts';
import { refused, taken, type Tried } from '../tried.ts';
import type { Door } from './door.ts';

const template = (name: string) => readFileSync(join(root, 'templates', name, 'book.json'), 'utf8');
const books = ['camera', 'choosing', 'key-fill-background', 'set-plan'].map(template);

/** What was taken is written, and what was written is read again as the same. */
function book(text: string): Tried {
  const read = readBook(text);
  if (!read.ok) return refused(text, read.reason);
  const written = writeBook(read.document);
  const again = readBook(written);
  if (!again.ok) return taken(text, `What it wrote of it is refused: ${again.reason}`);
  return taken(text, writeBook(again.document) === written ? undefined : 'It changes when saved.');
}

const day = new Pair();
const morning = writeBook(day.document);
const moves = new Random(7);
for (let move = 0; move < 60; move += 1) playRandomMove(day, moves);

function journal(next: Chance): Tried {
  const lines = [...day.journal];
  const at = Math.floor(next() * lines.length);
  lines[at] = spoiledJson(lines[at]!, next);
  const text = lines.slice(0, at + 3).join('\n');
  const read = readBook(morning);
  if (!read.ok) return taken(text, read.reason);
  const result = replay(read.document, lines.slice(0, at + 3));
  return result.ok ? book(writeBook(result.book.document)) : refused(text, result.reason);
}

const record = writeRecord(harbour().record('Sail loft'));

function recordFile(next: Chance): Tried {
  const text = spoiledJson(record, next);
  const read = readRecord(text);
  if (!read.ok) return refused(text, read.reason);
  const again = readRecord(writeRecord(read.record, read.photos));
  return taken(text, again.ok ? undefined : again.reason);
}

const archive = writeArchive({
  made: '2026-05-04T08:00:00.000Z',
  books: [
    {
      ...{ id: 'loft', title: 'Sail loft', entry: {} },
      text: books[0]!,
      versions: [{ id: 'first', text: morning, entry: { name: 'before lunch' } }],
    },
  ],
  beside: [{ name: 'loft/photo', bytes: new Uint8Array(300) }],
});

function archiveFile(next: Chance): Tried {
  const bytes = spoiledBytes(archive, next);
  const read = readArchive(bytes);
  const text = Buffer.from(bytes).toString('base64');
  return read.ok ? taken(text) : refused(text, read.reason);
}

export const bookDoors: readonly Door[] = [
  { name: 'book', share: 1, takes: 2, tried: (next) => book(spoiledJson(pick(books, next), next)) },
  { name: 'journal', share: 1, takes: 5, tried: journal },
  { name: 'record', share: 1, takes: 5, tried: recordFile },
  { name: 'archive', share: 2, takes: 1, tried: archiveFile },
];
