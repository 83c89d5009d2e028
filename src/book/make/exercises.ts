import { mapReferences, settled } from '../../formula/adjust.ts';
import { formulaFromJson, formulaToJson, type FormulaJson } from '../../formula/codec.ts';
import { classesOf, exerciseOn, handoutOn, type Exercise } from '../exercises.ts';
import { draftOf } from '../inside/opened.ts';
import type { Document, Id, Step } from '../types.ts';

type Asked = Exercise['conditions'][number];

/** What was asked on a sheet, and whom it was handed out to, goes with it. */
export function withoutExercisesOf(document: Document, sheet: Id): readonly Step[] {
  const exercise = exerciseOn(document, sheet);
  const classes = classesOf(document).filter((one) => one.exercise === exercise?.id);
  const asked = [exercise, handoutOn(document, sheet), ...classes];
  const items = asked.flatMap((one) => (one ? [{ id: one.id, item: null }] : []));
  return items.length > 0 ? [{ kind: 'setShelf', shelf: 'exercises', items }] : [];
}

/** The step that keeps an exercise as it is now. */
export const keepExercise = (exercise: Exercise): Step => ({
  kind: 'setShelf',
  shelf: 'exercises',
  items: [{ id: exercise.id, item: { ...exercise } }],
});

/** An exercise as it is asked on a copy of its sheet; nobody was handed that one out. */
export function exerciseOnCopy(
  document: Document,
  exercise: Exercise,
  sheet: Id,
  id: Id,
): Exercise {
  const moved = (json: FormulaJson): Asked => copied(document, json, exercise.sheet, sheet);
  return {
    ...exercise,
    id,
    sheet,
    conditions: exercise.conditions.map(moved),
    questions: exercise.questions.map((question) => ({
      ...question,
      expected: moved(question.expected),
      mistakes: question.mistakes.map((one) => ({ ...one, formula: moved(one.formula) })),
      ...(question.solution && {
        solution: { ...question.solution, formulas: question.solution.formulas.map(moved) },
      }),
    })),
  };
}

/** A formula that reads the copy where it read the sheet. Deleted lines are not copied. */
function copied(document: Document, json: FormulaJson, from: Id, to: Id): Asked {
  const read = formulaFromJson(json);
  const own = read
    ? mapReferences(read, (one) => {
        if (!('sheet' in one) || one.sheet !== from) return one;
        const living = settled(one, draftOf(document));
        return 'sheet' in living ? { ...living, sheet: to } : living;
      })
    : undefined;
  const { pieces, references } = own ? formulaToJson(own) : json;
  return { pieces: [...pieces], references: [...references] };
}
