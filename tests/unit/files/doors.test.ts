import { describe, expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { journalLine, replay } from '../../../src/book/form/journal.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { cellAtSpot, formulaText } from '../../../src/book/look.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import type { Document, Transaction } from '../../../src/book/types.ts';
import { paste, take } from '../../../src/commands/clipboard.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import type { OutForm } from '../../../src/files/out/forms.ts';
import { createSession } from '../../../src/session/session.ts';
import { throughFile } from '../../support/through.ts';
import { countingMeans, openBook } from '../engine/support/openBook.ts';

/** What src/files/README.md says that each door keeps. */
const keeps = {
  book: ['values', 'formulas', 'units', 'roles', 'notes', 'widths', 'names', 'sheets'],
  journal: ['values', 'formulas', 'units', 'roles', 'notes', 'widths', 'names', 'sheets'],
  xlsx: ['values', 'written out', 'units', 'roles', 'notes', 'widths', 'names', 'sheets'],
  ods: ['values', 'written out', 'units', 'roles', 'notes', 'widths', 'names', 'sheets'],
  csv: ['values', 'units'],
  tsv: ['values', 'units'],
  clipboard: ['values', 'units'],
} as const;
type Door = keyof typeof keeps;
type Thing = (typeof keeps)[Door][number];

/** One book with one of everything. */
function everything() {
  const opened = openBook({
    'Boat shed': [
      ['Point', 'Key', 'Fill', 'Apart', 'Stop'],
      ['Bench', '400 lx', '100 lx', '=STOPS(C2,B2)', 'f/5.6'],
      ['Rope', '25 fc', '12 lx', '=STOPS(C3,B3)', 'f/2.8 1/3'],
    ],
    Second: [["='Boat shed'!B2*2"]],
  });
  const { book, document } = opened;
  const [sheet] = document.sheets;
  if (!sheet) throw new Error('There is no sheet.');
  const [row, column] = [sheet.rows.idAt(1) ?? '', sheet.columns.idAt(1) ?? ''];
  const cell = sheet.cell(row, column);
  if (!cell) throw new Error('There is no cell.');
  const key = { sheet: sheet.id, explicit: true, at: corner(row, column) };
  const transaction: Transaction = {
    label: 'Dress',
    steps: [
      {
        kind: 'setCells',
        sheet: sheet.id,
        cells: [{ row, column, cell: { ...cell, role: 'reading', note: 'all lights on' } }],
      },
      {
        kind: 'setLines',
        sheet: sheet.id,
        axis: 'columns',
        lines: [{ id: column, properties: { size: 138 } }],
      },
      {
        kind: 'defineName',
        name: {
          id: 'name1',
          name: 'Key_side',
          formula: {
            shape: { pieces: ['=', ''], tree: { kind: 'reference', slot: 0 } },
            references: [{ kind: 'cell', ...key }],
          },
        },
      },
    ],
  };
  const ran = book.run(transaction);
  if (!ran.ok) throw new Error(ran.reason);
  return opened;
}

const corner = (row: string, column: string) => ({
  row: { id: row, fixed: true },
  column: { id: column, fixed: true },
});

/** Whether a thing is there in a book that came through a door. */
const isThere: Readonly<Record<Thing, (document: Document) => boolean>> = {
  values(document) {
    const engine = connectEngine(createBook(document));
    const at = (row: number, column: number) =>
      engine.valueOf({ sheet: document.sheets[0]?.id ?? '', row, column });
    return at(1, 3) === -2 && at(1, 1) === 400 && Math.abs(Number(at(1, 4)) - 2 ** 2.5) < 1e-12;
  },
  formulas: (document) => textAt(document, 1, 3) === '=STOPS(C2,B2)',
  'written out': (document) => /LN\(/.test(textAt(document, 1, 3)),
  units(document) {
    const engine = connectEngine(createBook(document));
    const sheet = document.sheets[0]?.id ?? '';
    const quantities = [1, 4].map((column) => engine.quantityOf({ sheet, row: 1, column }));
    return quantities.join() === 'illuminance,fNumber';
  },
  roles: (document) =>
    at(document, 1, 1)?.role === 'reading' && at(document, 1, 2)?.role === undefined,
  notes: (document) => at(document, 1, 1)?.note === 'all lights on',
  widths(document) {
    const [sheet] = document.sheets;
    return sheet?.columns.properties(sheet.columns.idAt(1) ?? '')?.size === 138;
  },
  names: (document) => document.named('Key_side') !== undefined,
  sheets: (document) =>
    document.sheets.map(({ properties }) => properties.name).join() === 'Boat shed,Second',
};

const at = (document: Document, row: number, column: number) =>
  cellAtSpot(document, { sheet: document.sheets[0]?.id ?? '', row, column });

function textAt(document: Document, row: number, column: number): string {
  const content = at(document, row, column)?.content;
  const sheet = document.sheets[0]?.id ?? '';
  return content?.kind === 'formula' ? formulaText(document, content.formula, sheet) : '';
}

const through = (form: OutForm): Promise<Document> => throughFile(everything(), form);

const doors: Readonly<Record<Door, () => Promise<Document> | Document>> = {
  book() {
    const read = readBook(writeBook(everything().document));
    if (!read.ok) throw new Error(read.reason);
    return read.document;
  },
  journal() {
    const { book } = everything();
    const first = newDocument(countingMeans(), { sheet: { name: 'Boat shed' } });
    const lines = book.history.done.map((transaction) => journalLine({ kind: 'do', transaction }));
    const replayed = replay(first, lines);
    if ('reason' in replayed) throw new Error(replayed.reason);
    return replayed.book.document;
  },
  xlsx: () => through('xlsx'),
  ods: () => through('ods'),
  csv: () => through('csv'),
  tsv: () => through('tsv'),
  clipboard() {
    const { book, document, engine } = everything();
    const means = countingMeans();
    const session = createSession(document.sheets[0]?.id ?? '');
    session.selectBlock({ from: { row: 0, column: 0 }, to: { row: 2, column: 4 } });
    const text = take({ book, engine, session, means }, 'copy');
    const other = createBook(newDocument(means));
    const there = createSession(other.document.sheets[0]?.id ?? '');
    paste({ book: other, engine: connectEngine(other), session: there, means }, text);
    return other.document;
  },
};

describe('a book keeps through every door what the README says', () => {
  for (const door of Object.keys(keeps) as Door[]) {
    const kept: readonly Thing[] = keeps[door];
    for (const thing of kept) {
      it(`${door}: ${thing}`, async () => {
        expect(isThere[thing](await doors[door]())).toBe(true);
      });
    }
  }
});
