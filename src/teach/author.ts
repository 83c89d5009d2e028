import { readAs } from '../../functions/quantities/read.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import {
  exerciseOn,
  type Draw,
  type Exercise,
  type Solution,
  type Tolerance,
} from '../book/exercises.ts';
import { formulaFrom } from '../formula/bind.ts';
import { formulaToJson } from '../formula/codec.ts';
import { cellAtSpot, quantityAt, readAddress } from '../book/look.ts';
import { blank } from '../book/make/entered.ts';
import { keepExercise, withoutExercisesOf } from '../book/make/exercises.ts';
import { Growing } from '../book/make/growing.ts';
import { made, refused, type Made } from '../book/make/made.ts';
import { writingSettings } from '../book/settings.ts';
import type { CellAt, Document, Id, Means, Role } from '../book/types.ts';
import { words } from '../words/words.ts';
import type { PlannedExercise, PlannedQuestion } from './plan.ts';

class Unplanned extends Error {}

/** What a formula comes to measures; undefined for a plain number. */
type Measures = (formula: string) => QuantityName | undefined;

/**
 * Makes a sheet an exercise, or its exercise another one: one gesture. An answer cell of which nobody
 * said what it measures takes that from the formula that is expected.
 */
export function setExercise(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
  planned: PlannedExercise,
  measures: Measures = () => undefined,
): Made {
  try {
    const { steps, exercise, cells } = bound(document, means, sheet, planned, measures);
    return made(words.teach.makeExercise, [
      ...steps,
      { kind: 'setCells', sheet, cells },
      keepExercise(exercise),
    ]);
  } catch (fault) {
    if (fault instanceof Unplanned) return refused(fault.message);
    throw fault;
  }
}

/** The sheet stays as it is; what was asked on it, and of whom, is forgotten. */
export function removeExercise(document: Document, sheet: Id): Made {
  return exerciseOn(document, sheet)
    ? made(words.teach.removeExercise, withoutExercisesOf(document, sheet))
    : refused(words.teach.noExercise);
}

function bound(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
  planned: PlannedExercise,
  measures: Measures,
) {
  const growing = new Growing(document, means);
  const cells: CellAt[] = [];
  const settings = writingSettings(document.settings);

  function formula(text: string): Exercise['conditions'][number] {
    const written = text.trim().startsWith('=') ? text.trim() : `=${text.trim()}`;
    const read = formulaFrom(written, sheet, growing);
    if ('reason' in read) throw new Unplanned(`${text}: ${read.reason}`);
    const { pieces, references } = formulaToJson(read);
    return { pieces: [...pieces], references: [...references] };
  }

  /** The lines of a cell, and what it measures; its role is set. */
  function place(address: string, role: Role, otherwise?: QuantityName) {
    const spot = readAddress(address.trim());
    const row = spot && growing.lineAt(sheet, 'rows', spot.row);
    const column = spot && growing.lineAt(sheet, 'columns', spot.column);
    if (!spot || row === undefined || column === undefined)
      throw new Unplanned(words.teach.noCell(address));
    if (cells.some((one) => one.row === row && one.column === column))
      throw new Unplanned(words.teach.cellTwice(address));
    const cell = cellAtSpot(document, { sheet, ...spot }) ?? blank;
    const known = quantityAt(document, { sheet, row, column });
    const taken = known === undefined && otherwise ? { quantity: otherwise } : {};
    cells.push({ row, column, cell: { ...cell, ...taken, role } });
    return { at: { row, column }, quantity: known ?? otherwise };
  }

  const number = (text: string, quantity: QuantityName | undefined): number => {
    const read = readAs(quantity ?? 'number', text, settings);
    if (!read.ok) throw new Unplanned(read.reason);
    return read.value;
  };

  function drawOf(text: string, quantity: QuantityName | undefined): Draw {
    const range = /^(.+?) to (.+?),? (?:in steps of|step) (.+)$/u.exec(text.trim());
    if (!range) {
      const values = text.split(';').filter((one) => one.trim() !== '');
      if (values.length === 0) throw new Unplanned(words.teach.noDraw(text));
      return { kind: 'list', values: values.map((one) => number(one, quantity)) };
    }
    const [from = 0, to = 0, step = 0] = range.slice(1).map((one) => number(one, quantity));
    if (!(step > 0) || to < from) throw new Unplanned(words.teach.noDraw(text));
    return { kind: 'range', from, to, step };
  }

  function toleranceOf(text: string, quantity: QuantityName | undefined): Tolerance {
    const share = /^(.+?)\s*%$/u.exec(text.trim());
    if (share?.[1] !== undefined)
      return { kind: 'relative', by: Math.abs(number(share[1], 'number')) / 100 };
    if (/ stops?$/u.test(text.trim()))
      return { kind: 'stops', by: Math.abs(number(text, 'stops')) };
    return { kind: 'absolute', by: Math.abs(number(text, quantity)) };
  }

  function questionOf(question: PlannedQuestion, known: Id | undefined) {
    const { at, text, tolerance, points, hint, solution, expected, mistakes } = question;
    const { at: lines, quantity } = place(at, 'answer', measures(expected));
    if (text.trim() === '') throw new Unplanned(words.teach.noText(at));
    if (!(points >= 0)) throw new Unplanned(words.teach.noPoints(at));
    return {
      id: known ?? means.newId(),
      at: lines,
      text: text.trim(),
      points,
      ...(hint?.trim() ? { hint: hint.trim() } : {}),
      tolerance: toleranceOf(tolerance, quantity),
      expected: formula(expected),
      mistakes: mistakes.map(({ kind, formula: wrong, says }) => ({
        kind,
        formula: formula(wrong),
        ...(says !== undefined && { says }),
      })),
      ...(solution?.trim() ? { solution: solutionOf(solution.trim()) } : {}),
    };
  }

  function solutionOf(text: string): Solution {
    const parts = text.split(/\{([^{}]*)\}/u);
    return {
      texts: parts.filter((_, index) => index % 2 === 0),
      formulas: parts.filter((_, index) => index % 2 === 1).map(formula),
    };
  }

  const before = exerciseOn(document, sheet);
  const exercise = {
    id: before?.id ?? means.newId(),
    kind: 'exercise',
    sheet,
    level: planned.level,
    onTheSpot: planned.onTheSpot,
    closeEarns: planned.closeEarns,
    givens: planned.givens.map(({ at, draw }) => {
      const { at: lines, quantity } = place(at, 'given');
      return { at: lines, draw: drawOf(draw, quantity) };
    }),
    conditions: planned.conditions.map(formula),
    questions: planned.questions.map((one, index) => questionOf(one, before?.questions[index]?.id)),
  } satisfies Exercise;
  if (exercise.questions.length === 0) throw new Unplanned(words.teach.noQuestions);
  return { steps: growing.steps, exercise, cells };
}
