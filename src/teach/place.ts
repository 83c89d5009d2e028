import { copyOf } from '../book/content.ts';
import { exercisesOf, type Exercise } from '../book/exercises.ts';
import { refused } from '../book/make/made.ts';
import { placeSheet } from '../book/make/sheets.ts';
import type { Document, Id, Means } from '../book/types.ts';
import { mapReferences } from '../formula/adjust.ts';
import { formulaFromJson, formulaToJson } from '../formula/codec.ts';
import { words } from '../words/words.ts';
import { exerciseBook } from './set/set.ts';

type FormulaJson = Exercise['conditions'][number];

/** One of our exercises as a sheet at the end of the book: one gesture. */
export function placeExercise(
  document: Document,
  means: Means,
  id: string,
): ReturnType<typeof placeSheet> {
  const built = exerciseBook(id, means);
  const [exercise] = exercisesOf(built);
  const content = exercise && copyOf(built, exercise.sheet, means.newId());
  if (!content) return refused(words.teach.noExercise);
  const label = words.teach.addOne(content.properties.title);
  const placed = placeSheet(document, content, document.sheets.length, label);
  if (!placed.ok) return placed;
  const item = onSheet(exercise, placed.sheet, means.newId());
  const shelved = {
    kind: 'setShelf',
    shelf: 'exercises',
    items: [{ id: item.id, item: { ...item } }],
  } as const;
  const steps = [...placed.transaction.steps, shelved];
  return { ...placed, transaction: { ...placed.transaction, steps } };
}

/** The exercise as it is asked on a copy of its sheet. */
function onSheet(exercise: Exercise, sheet: Id, id: Id): Exercise {
  const moved = (json: FormulaJson): FormulaJson => {
    const read = formulaFromJson(json);
    if (!read) return json;
    const own = mapReferences(read, (one) =>
      'sheet' in one && one.sheet === exercise.sheet ? { ...one, sheet } : one,
    );
    const { pieces, references } = formulaToJson(own);
    return { pieces: [...pieces], references: [...references] };
  };
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
