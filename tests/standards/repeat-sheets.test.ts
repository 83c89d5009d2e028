import { describe, expect, it } from 'vitest';
import { checkBook, remarkLine } from '../../src/check/book.ts';
import { createChecker } from '../../src/check/checker.ts';
import { rebuildSheet } from '../../src/repeat/sheet/rebuild.ts';
import { reportSheet } from '../../src/repeat/sheet/report.ts';
import { buildBook } from '../../templates/build.ts';
import type { PlannedSheet } from '../../templates/plan.ts';
import { harbour, opened, walk } from '../unit/repeat/place.ts';
import { Mutations, randomFrom } from './unitcheck/mutations.ts';

// A rebuild and a match report are laid out from a record and have no book of their own among the
// templates, so what every template must pass is asked of them here.

const place = harbour();
const loft = place.record('Sail loft', { meter: { name: 'Meter A', spread: 0.1 } });
const rebuilt = place.rebuild(loft);
place.takeWalk(rebuilt, walk('shed'));
const shed = place.record(rebuilt, { name: 'Boat shed', place: 'Boat shed', date: '2026-09-25' });

function alone(sheet: PlannedSheet) {
  const made = opened(buildBook({ title: sheet.title, sheets: [sheet] }));
  if (sheet.template === 'rebuild') made.takeWalk(sheet.name, walk('shed'));
  return made;
}

describe.each([
  ['a rebuild', rebuildSheet({ ...loft, id: 'r' })],
  ['a match report', reportSheet(loft, shed)],
])('%s', (_what, sheet) => {
  it('says what it is for in one line, and marks the roles of its cells', () => {
    expect(sheet.purpose).toMatch(/^[^\n]+\.$/);
    const roles = new Set(Object.values(sheet.cells).flatMap(({ role }) => role ?? []));
    expect(roles).toContain('choice');
    expect(roles).toContain('given');
  });

  it('has no error that is not a wait for a reading', () => {
    const { document, engine } = alone(sheet);
    const wrong = [...(document.sheets[0]?.cells() ?? [])].flatMap(({ row, column, cell }) => {
      const [rows, columns] = [document.sheets[0]?.rows, document.sheets[0]?.columns];
      const at = { sheet: document.sheets[0]?.id ?? '', row: -1, column: -1 };
      const spot = { ...at, row: rows?.indexOf(row) ?? -1, column: columns?.indexOf(column) ?? -1 };
      const value = engine.valueOf(spot);
      const failed = typeof value === 'object' && value !== null && !value.waiting;
      return cell.content.kind === 'formula' && failed ? [value.message] : [];
    });
    expect(wrong).toEqual([]);
  });

  it('passes the unit check, which sees 95 of 100 swapped references', () => {
    const { book, document, engine } = alone(sheet);
    const marks = checkBook(document, engine).filter(({ about }) => about === 'unit');
    expect(marks.map((remark) => remarkLine(document, remark))).toEqual([]);
    const checker = createChecker(book, engine);
    const mutations = new Mutations(document, engine);
    const random = randomFrom(20_261_129);
    const missed: string[] = [];
    for (let count = 0; count < 100; count += 1) {
      const mutation = mutations.next(random);
      expect(book.run(mutation.transaction).ok).toBe(true);
      if (!checker.remarks().some(({ about }) => about === 'unit')) missed.push(mutation.words);
      book.undo();
    }
    expect(missed.length, missed.join('\n')).toBeLessThanOrEqual(5);
  });
});
