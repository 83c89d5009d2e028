import { describe, expect, it } from 'vitest';
import { exerciseOn, exercisesOf } from '../../../src/book/exercises.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { figuresOn } from '../../../src/book/figures.ts';
import { addFigure } from '../../../src/book/make/figures.ts';
import { insertLines, removeLines } from '../../../src/book/make/lines.ts';
import {
  addSheet,
  describeSheet,
  duplicateSheet,
  removeSheet,
} from '../../../src/book/make/sheets.ts';
import { removeExercise, setExercise } from '../../../src/teach/author.ts';
import { handoutsFor } from '../../../src/teach/handouts.ts';
import { keepClass, newClass } from '../../../src/teach/key.ts';
import { placeExercise } from '../../../src/teach/place.ts';
import { plannedFrom } from '../../../src/teach/planned.ts';
import type { PlannedExercise } from '../../../src/teach/plan.ts';
import { exerciseIds } from '../../../src/teach/set/set.ts';
import { variantOf } from '../../../src/teach/variant.ts';
import { workingsOf } from '../../../src/teach/workings.ts';
import { openBook } from '../engine/support/openBook.ts';

const asked: PlannedExercise = {
  ...{ level: 1, onTheSpot: true, closeEarns: 0.5, conditions: ['=B1>B2'] },
  givens: [
    { at: 'B1', draw: 'f/4; f/5.6; f/8' },
    { at: 'B2', draw: 'f/2; f/2.8' },
  ],
  questions: [
    {
      ...{ at: 'B4', text: 'How many stops?', tolerance: '1/6 stop', points: 2 },
      ...{ expected: '=FSTOPS(B1,B2)', solution: 'From {B2} to {B1}: {FSTOPS(B1,B2)}.' },
      mistakes: [{ kind: 'wrongSign', formula: '=FSTOPS(B2,B1)' }],
    },
  ],
};

function sheet() {
  const opened = openBook({ Stops: [['Key', 'f/5.6'], ['Fill', 'f/2.8'], [], ['Stops', '3']] });
  const { document } = opened;
  const id = document.sheets[0]?.id ?? '';
  return { ...opened, document, id };
}

describe('an exercise on a sheet of one’s own', () => {
  it('is kept with the book, follows its cells, and is taken back by one undo', () => {
    const { book, document, id, must, means } = sheet();
    must(setExercise(document, means, id, asked));
    const read = readBook(writeBook(document));
    if (!read.ok) throw new Error(read.reason);
    expect(exercisesOf(read.document)).toEqual(exercisesOf(document));
    must(insertLines(document, means, id, 'rows', 0, 1));
    const exercise = exerciseOn(document, id);
    if (!exercise) throw new Error('There is none.');
    const planned = plannedFrom(document, exercise);
    expect(planned.questions[0]).toMatchObject({
      at: 'B5',
      expected: '=FSTOPS(B2,B3)',
      solution: 'From {B3} to {B2}: {FSTOPS(B2,B3)}.',
    });
    book.undo();
    book.undo();
    expect(exercisesOf(document)).toEqual([]);
  });

  it('is asked again as its author wrote it', () => {
    const { document, id, must, means } = sheet();
    must(setExercise(document, means, id, asked));
    const [first] = exercisesOf(document);
    if (!first) throw new Error('There is none.');
    must(setExercise(document, means, id, plannedFrom(document, first)));
    expect(exercisesOf(document)).toEqual([first]);
    must(removeExercise(document, id));
    expect(exercisesOf(document)).toEqual([]);
    expect(removeExercise(document, id)).toMatchObject({ ok: false });
  });

  it('measures its answers as their cells do, else as what is expected', () => {
    const { document, id, must, means, engine } = sheet();
    const measures = (formula: string) => engine.evaluate(formula, id).quantity;
    const [first] = asked.questions;
    const questions = [
      { ...first!, at: 'B4' },
      { ...first!, at: 'C4', expected: 'FNUMBERAT(B1,1)', mistakes: [] },
      { ...first!, at: 'B2', expected: '=B1*2', mistakes: [] },
    ];
    must(setExercise(document, means, id, { ...asked, givens: [], questions }, measures));
    const at = (row: number, column: number) =>
      document
        .sheet(id)
        ?.cell(document.sheet(id)!.rows.idAt(row)!, document.sheet(id)!.columns.idAt(column)!);
    expect([at(3, 1), at(3, 2), at(1, 1)].map((cell) => cell?.quantity)).toEqual([
      'stops',
      'fNumber',
      'fNumber',
    ]);
    expect(exercisesOf(document)[0]?.questions[1]?.tolerance).toEqual({ kind: 'stops', by: 1 / 6 });
  });

  const [question] = asked.questions;
  it.each([
    [{ givens: [{ at: 'Q', draw: '1' }] }, '“Q” is no cell.'],
    [{ givens: [{ at: 'B1', draw: '' }] }, 'says nothing to draw from'],
    [{ givens: [{ at: 'B1', draw: 'f/8 to f/2, step f/1' }] }, 'says nothing to draw from'],
    [{ givens: [{ at: 'B4', draw: '1; 2' }] }, 'B4 is named twice.'],
    [{ conditions: ['=B1>'] }, '=B1>: '],
    [{ questions: [] }, 'asks at least one question'],
    [{ questions: [{ ...question!, text: ' ' }] }, 'has no text'],
    [{ questions: [{ ...question!, points: Number.NaN }] }, 'wants points'],
  ] as const)('%j is refused with a reason', (part, reason) => {
    const { document, id, means } = sheet();
    const made = setExercise(document, means, id, { ...asked, ...part });
    expect(made.ok ? '' : made.reason).toContain(reason);
  });

  it('says when no numbers will do', () => {
    const { document, id, must, means } = sheet();
    must(setExercise(document, means, id, { ...asked, conditions: ['=B1<B2'] }));
    const [exercise] = exercisesOf(document);
    if (!exercise) throw new Error('There is none.');
    const workings = workingsOf(document, exercise);
    const drawn = variantOf(exercise, workings, '1', 'Anyone');
    expect(drawn.ok ? '' : drawn.reason).toBe(
      'No numbers were found that will do, in 400 draws. Condition 1 is not met.',
    );
  });
});

describe('the sheet of an exercise', () => {
  function exercised() {
    const opened = sheet();
    opened.must(setExercise(opened.document, opened.means, opened.id, asked));
    const exercise = exerciseOn(opened.document, opened.id)!;
    const klass = newClass(opened.means, exercise, '7', ['Mira Holm'], 'salt');
    return { ...opened, exercise, klass };
  }

  it('is duplicated with what is asked on it, which reads the copy', () => {
    const { book, document, id, must, means, exercise } = exercised();
    must(insertLines(document, means, id, 'rows', 1, 1));
    must(removeLines(document, id, 'rows', [1]));
    const copied = duplicateSheet(document, means, id);
    must(copied);
    const copy = exerciseOn(document, copied.ok ? copied.sheet : '')!;
    expect(copy.id).not.toBe(exercise.id);
    expect(plannedFrom(document, copy)).toEqual(plannedFrom(document, exercise));
    expect(JSON.stringify(copy)).not.toContain(`"${id}"`);
    const workings = workingsOf(document, copy);
    const drawn = variantOf(copy, workings, '1', 'Anyone');
    expect(drawn.ok && drawn.answers[0]?.value).toBeGreaterThan(0);
    workings.close();
    book.undo();
    expect(exercisesOf(document)).toEqual([exercise]);
  });

  it('keeps it under another name, and takes class lists along when it is deleted', () => {
    const { book, document, id, must, means, exercise, klass } = exercised();
    must(keepClass(document, klass));
    must(describeSheet(document, id, { name: 'Homework', title: 'Homework' }));
    expect(exerciseOn(document, id)).toEqual(exercise);
    expect([...handoutsFor(document, exercise, klass)]).toHaveLength(1);
    const kept = document.shelf('exercises');
    must(addSheet(document, means));
    must(removeSheet(document, id));
    expect(document.shelf('exercises').items).toEqual([]);
    book.undo();
    expect(document.shelf('exercises')).toEqual(kept);
    must(removeExercise(document, id));
    expect(document.shelf('exercises').items).toEqual([]);
  });

  it('is not handed out once the cell of a given or an answer is gone', () => {
    const { document, id, must, exercise, klass } = exercised();
    must(removeLines(document, id, 'rows', [0]));
    expect(() => [...handoutsFor(document, exercise, klass)]).toThrow(
      'The cell of a given or of an answer was deleted.',
    );
  });

  it('is handed out with its figures; one that reads elsewhere stops it', () => {
    const { document, id, must, means, exercise, klass } = exercised();
    const planned = { kind: 'ladder', title: 'Tones', cells: { values: 'B1:B2' } };
    must(addFigure(document, means, id, planned));
    const [{ text } = { text: '' }] = handoutsFor(document, exercise, klass);
    const read = readBook(text);
    expect(read.ok && figuresOn(read.document, id)).toEqual(figuresOn(document, id));
    must(addSheet(document, means, { name: 'Other' }));
    must(addFigure(document, means, id, { ...planned, cells: { values: 'Other!A1' } }));
    expect(() => [...handoutsFor(document, exercise, klass)]).toThrow(
      'The figure “Tones” reads names or other sheets',
    );
  });
});

describe('a sheet of ours', () => {
  it.each(exerciseIds)('%s comes into a book with what is asked on it, and goes with it', (id) => {
    const { book, document, means, must } = sheet();
    const placed = placeExercise(document, means, id);
    must(placed);
    const own = placed.ok ? placed.sheet : '';
    const exercise = exerciseOn(document, own);
    if (!exercise) throw new Error('There is none.');
    const workings = workingsOf(document, exercise);
    expect(variantOf(exercise, workings, '1', 'Anyone').ok).toBe(true);
    workings.close();
    must(removeSheet(document, own));
    expect(exercisesOf(document)).toEqual([]);
    book.undo();
    expect(exerciseOn(document, own)).toEqual(exercise);
  });
});
