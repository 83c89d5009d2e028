import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { insertLines, removeLines } from '../../../src/book/make/lines.ts';
import { duplicateSheet } from '../../../src/book/make/sheets.ts';
import { take } from '../../../src/commands/clipboard.ts';
import { columnHere, filterCommands, filterRows } from '../../../src/commands/filter.ts';
import { rowsLeftOut } from '../../../src/commands/filtered.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { filteredInWords, filterView } from '../../../src/panels/views/filter-view.ts';
import { createSession } from '../../../src/session/session.ts';
import { words } from '../../../src/words/words.ts';
import { buildBook, planMeans, run } from '../../../templates/build.ts';

/** Options with what each costs, and whether that is dear. */
function options() {
  const rows = [
    ['Panel', '45'],
    ['Tube', '20'],
    ['Fresnel', '18'],
    ['Balloon', '90'],
  ].flatMap(([name = '', cost = ''], index) => [
    [`A${index + 3}`, { typed: name, role: 'choice' }] as const,
    [`B${index + 3}`, { typed: cost }] as const,
    [`C${index + 3}`, { typed: `=IF(B${index + 3}>B1,"dear","fair")` }] as const,
  ]);
  const book = buildBook({
    title: 'Options',
    sheets: [
      {
        ...{ name: 'Options', title: 'Options', purpose: '', phase: 'order', template: '' },
        widths: [],
        cells: {
          A1: { typed: 'Dear from' },
          B1: { typed: '40' },
          A2: { typed: 'Option' },
          B2: { typed: 'Cost' },
          C2: { typed: 'Verdict' },
          ...Object.fromEntries(rows),
          A8: { typed: 'In all' },
          B8: { typed: '=SUM(B3:B6)' },
        },
      },
    ],
  });
  const engine = connectEngine(book);
  const means = planMeans();
  const { document } = book;
  const sheet = document.sheets[0]?.id ?? '';
  const session = createSession(sheet);
  const context = { book, engine, means, session };
  const go = (row: number, column: number) =>
    session.selectBlock({ from: { row, column }, to: { row, column } });
  const command = (id: string) => {
    const found = filterCommands.find((one) => one.id === id);
    if (!found) throw new Error(id);
    return found;
  };
  const ground = { document, engine };
  const look = { ...ground, writing: {} as never, remarksAt: () => [] };
  go(2, 2);
  return {
    ...{ book, document, engine, means, session, context, sheet, go, command },
    out: (id = sheet) => rowsLeftOut(ground, id),
    said: () => filteredInWords(look, sheet),
    total: () => engine.valueOf({ sheet, row: 7, column: 1 }),
    type: (row: number, column: number, text: string) =>
      run(book, enter(document, means, [{ sheet, row, column, text }])),
  };
}

describe('a filter of a table', () => {
  it('leaves rows out of view and none out of the sums; undo brings them back', () => {
    const { context, book, out, said, total } = options();
    const before = total();
    expect(filterRows.run(context, { hides: ['dear'] })).toEqual({ ok: true });
    expect(out()).toEqual([2, 5]);
    expect(said()).toBe('2 of 4 rows shown, by Verdict');
    expect(total()).toBe(before);
    expect(book.history.done.at(-1)?.label).toBe(words.filter.by('Verdict'));
    book.undo();
    expect(out()).toEqual([]);
    expect(said()).toBe('');
  });

  it('goes by what the cells show now, not by what they showed', () => {
    const { context, out, type } = options();
    void filterRows.run(context, { hides: ['dear'] });
    type(0, 1, '15');
    expect(out()).toEqual([2, 3, 4, 5]);
    type(0, 1, '100');
    expect(out()).toEqual([]);
  });

  it('lists each text of the column once, with how many rows show it and which are in view', () => {
    const { context, document, sheet } = options();
    void filterRows.run(context, { hides: ['dear'] });
    const here = columnHere(context);
    expect(here && filterView(here, document.sheet(sheet)?.properties.filter ?? null)).toEqual({
      caption: 'Verdict',
      values: [
        { text: 'dear', count: 2, shown: false },
        { text: 'fair', count: 2, shown: true },
      ],
    });
  });

  it('by the selected cell keeps the rows like it; showing all forgets the filter', () => {
    const { context, command, go, out } = options();
    expect(command('rows.showAll').unavailable?.(context)).toBe(words.filter.notFiltered);
    go(3, 2);
    void command('rows.onlyAlike').run(context, undefined as never);
    expect(out()).toEqual([2, 5]);
    expect(command('rows.showAll').unavailable?.(context)).toBeUndefined();
    void command('rows.showAll').run(context, undefined as never);
    expect(out()).toEqual([]);
  });

  it('takes who stood in a row that is gone from view to the next one in view', () => {
    const { context, session } = options();
    void filterRows.run(context, { hides: ['dear'] });
    expect(session.state.selection.focus).toEqual({ row: 3, column: 2 });
  });

  it('is refused away from a table with captions', () => {
    const { context, go } = options();
    go(20, 0);
    expect(filterRows.run(context, { hides: ['dear'] })).toEqual({
      ok: false,
      reason: words.filter.noTable,
    });
  });

  it('moves with its lines, shows all where its captions are gone, and goes with a copy of the sheet', () => {
    const { context, book, document, means, sheet, out } = options();
    void filterRows.run(context, { hides: ['dear'] });
    run(book, insertLines(document, means, sheet, 'rows', 0, 1));
    expect(out()).toEqual([3, 6]);
    const copy = duplicateSheet(document, means, sheet);
    run(book, copy);
    if (!('sheet' in copy)) throw new Error('no copy');
    expect(out(copy.sheet)).toEqual([3, 6]);
    run(book, removeLines(document, sheet, 'rows', [2]));
    expect(out()).toEqual([]);
    book.undo();
    expect(out()).toEqual([3, 6]);
  });

  it('lies in the file of the book, and a file without one shows all rows', () => {
    const { context, document, sheet } = options();
    expect(writeBook(document)).not.toContain('"filter"');
    void filterRows.run(context, { hides: ['fair'] });
    const again = readBook(writeBook(document));
    expect(again.ok && again.document.sheet(sheet)?.properties.filter).toMatchObject({
      hides: ['fair'],
    });
  });
});

it('pieces with other rows between them are copied one under the other, as what they show', () => {
  const { context, session } = options();
  const piece = (row: number) => ({
    from: { row, column: 0 },
    to: { row, column: 1 },
    kind: 'cells' as const,
  });
  const at = { row: 3, column: 0 };
  session.select({ focus: at, anchor: at, lead: at, ranges: [piece(3), piece(5)] });
  expect(take(context, 'copy')).toBe('Tube\t20\nBalloon\t90');
  expect(session.state.clip).toBeNull();
});
