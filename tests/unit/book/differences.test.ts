import { expect, test } from 'vitest';
import { areAlike, differencesOf } from '../../../src/book/differences.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { insertLines } from '../../../src/book/make/lines.ts';
import { stage, type Stage } from './stage.ts';

/** What an edit makes different, the state before read from its file. */
function after(scene: Stage, edit: () => void) {
  const read = readBook(writeBook(scene.document));
  if (!read.ok) throw new Error(read.reason);
  edit();
  return differencesOf(read.document, scene.document);
}

const loft = () =>
  stage({ Loft: { A1: 'Key side', B1: 'f/2', A2: 'Fill side', B2: '=B1' }, Shed: { A1: '2 m' } });

test('the same book has no differences', () => {
  expect(areAlike(after(loft(), () => undefined))).toBe(true);
});

test('one reading is one cell', () => {
  const scene = loft();
  const found = after(scene, () => scene.type({ 'Loft!B1': 'f/2.8' }));
  const { row, column } = scene.place('Loft!B1');
  expect(found.sheets).toMatchObject([
    { kind: 'changed', cells: [{ row, column, aspects: ['content'] }] },
  ]);
});

test('a row put in above changes no formula below it', () => {
  const scene = loft();
  const found = after(scene, () =>
    scene.run(insertLines(scene.document, scene.means, scene.sheet('Loft'), 'rows', 0, 2)),
  );
  expect(scene.text('Loft!B4')).toBe('=B3');
  expect(found.sheets).toMatchObject([{ rows: { added: 2, removed: 0 }, cells: [] }]);
});

test('a sheet more, a sheet less, another title', () => {
  const scene = loft();
  const shed = scene.sheet('Shed');
  const gone = after(scene, () => {
    scene.book.run({
      label: 'x',
      steps: [
        { kind: 'removeSheet', sheet: shed },
        { kind: 'setTitle', title: 'Ice house' },
      ],
    });
  });
  expect(gone).toMatchObject({ title: true, sheets: [{ sheet: shed, kind: 'removed' }] });
  const back = after(scene, () => scene.book.undo());
  expect(back.sheets).toMatchObject([{ sheet: shed, kind: 'added' }]);
});
