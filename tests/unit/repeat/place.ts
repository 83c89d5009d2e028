import { readFileSync } from 'node:fs';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book } from '../../../src/book/types.ts';
import { readAddress } from '../../../src/book/look.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { readWalk } from '../../../src/files/walk.ts';
import { fixturesIn } from '../../../src/files/photometric/shelf.ts';
import type { Look } from '../../../src/panels/views/look.ts';
import { recordOf, type RecordedAs } from '../../../src/repeat/record.ts';
import { makeSheet } from '../../../src/repeat/sheet/make.ts';
import { rebuildSheet } from '../../../src/repeat/sheet/rebuild.ts';
import type { NewRecord } from '../../../src/book/make/records.ts';
import { addSheet } from '../../../src/book/make/sheets.ts';
import { readTable } from '../../../src/files/table.ts';
import { fillWalk } from '../../../src/walk/fill.ts';
import { buildBook, planMeans, run } from '../../../templates/build.ts';
import { pointsSheet } from '../../../templates/key-fill-background/plan.ts';

export const walk = (name: string) =>
  readFileSync(new URL(`../../support/walks/${name}.csv`, import.meta.url), 'utf8');

export const as: RecordedAs = {
  name: 'Sail loft',
  place: 'Sail loft, first floor',
  date: '2026-09-23',
  time: '14:05',
};

const points = [
  { point: 'Key side of face', meter: 'dome', lamp: ['3.2 m', '2 m', '100 %'] },
  { point: 'Fill side of face', wanted: '-2', meter: 'dome', lamp: ['2.1 m', '1.5 m', '7 %'] },
  { point: 'Back light on shoulder', wanted: '+1', meter: 'flat' },
  { point: 'Canvas left', wanted: '-2', meter: 'flat' },
  { point: 'Canvas right', wanted: '-2', meter: 'flat' },
  { point: 'Rope bench', wanted: '-1', meter: 'flat' },
] as const;

/** A book with the walk of the loft taken in, and a sheet that has no points. */
export function harbour() {
  const sheet = pointsSheet({
    name: 'Sail loft',
    purpose: 'The reference for the interview.',
    tolerance: 1 / 4,
    points,
    spots: [{ point: 'Window gap' }, { point: 'Grey card at face', wanted: '0' }],
    colours: ['Key colour', 'Fill colour', 'Window colour'],
  });
  const place = opened(buildBook({ title: 'Harbour Hours', sheets: [sheet] }));
  run(place.book, addSheet(place.document, place.means, { name: 'Notes' }));
  place.takeWalk('Sail loft', walk('loft'));
  return place;
}

export function opened(book: Book) {
  const engine = connectEngine(book, { fixtures: fixturesIn });
  let minted = 0;
  const means = { ...planMeans(), newId: () => `made${minted++}` };
  const { document } = book;
  const look: Look = {
    document,
    engine,
    writing: writingSettings(document.settings),
    remarksAt: () => [],
  };
  const idOf = (name: string) => document.sheetNamed(name)?.id ?? '';
  const placeOf = (sheet: string, cell: string) => {
    const at = readAddress(cell);
    if (!at) throw new Error(cell);
    return { sheet: idOf(sheet), ...at };
  };
  return {
    book,
    document,
    engine,
    means,
    look,
    idOf,
    valueOf: (sheet: string, cell: string) => engine.valueOf(placeOf(sheet, cell)),
    type: (sheet: string, cell: string, text: string) =>
      run(book, enter(document, means, [{ ...placeOf(sheet, cell), text }])),
    takeWalk(sheet: string, text: string) {
      const read = readWalk(text);
      if ('reason' in read) throw new Error(read.reason);
      const { made, says } = fillWalk(document, means, idOf(sheet), read);
      run(book, made);
      return says;
    },
    /** The rig as a list that came from elsewhere, on a sheet of its own. */
    takeRig(text: string) {
      run(book, addSheet(document, means, { name: 'Rig' }));
      const entries = (readTable(text)?.rows ?? []).flatMap((row, at) =>
        row.map((said, column) => ({ sheet: idOf('Rig'), row: at, column, text: said })),
      );
      run(book, enter(document, means, entries));
    },
    /** Lays out the rebuild of a record, under the name that its sheet has. */
    rebuild(record: NewRecord): string {
      const made = makeSheet(document, means, rebuildSheet({ ...record, id: 'r' }), 'Rebuild');
      run(book, made);
      return document.sheets.at(-1)?.properties.name ?? '';
    },
    record(sheet: string, told: Partial<RecordedAs> = {}) {
      const made = recordOf(look, idOf(sheet), { ...as, ...told });
      if (!made.ok) throw new Error(made.reason);
      return made.record;
    },
  };
}
