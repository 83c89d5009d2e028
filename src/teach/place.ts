import { copyOf } from '../book/content.ts';
import { exercisesOf } from '../book/exercises.ts';
import { exerciseOnCopy, keepExercise } from '../book/make/exercises.ts';
import { refused } from '../book/make/made.ts';
import { placeSheet } from '../book/make/sheets.ts';
import type { Document, Means } from '../book/types.ts';
import { words } from '../words/words.ts';
import { exerciseBook } from './set/set.ts';

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
  const asked = keepExercise(exerciseOnCopy(built, exercise, placed.sheet, means.newId()));
  const steps = [...placed.transaction.steps, asked];
  return { ...placed, transaction: { ...placed.transaction, steps } };
}
