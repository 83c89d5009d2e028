import { contentOf } from '../book/content.ts';
import type { Class, Exercise } from '../book/exercises.ts';
import type { Document, SheetContent } from '../book/types.ts';
import { fileName } from '../files/archive.ts';
import { words } from '../words/words.ts';
import { standsAlone, tellsNothing } from './fit.ts';
import { bookFor } from './handout-book.ts';
import { Undeliverable } from './undeliverable.ts';
import { drawnFor, learnerKey, type Variant } from './variant.ts';
import { workingsOf, type Workings } from './workings.ts';

/** One learner’s book, ready to be written down. */
export interface HandoutFile {
  readonly learner: string;
  readonly name: string;
  readonly text: string;
  readonly variant: Variant;
  /** What the sheet shows beside givens and questions, row by row: tables to read from. */
  readonly beside: readonly (readonly string[])[];
}

/** The names of a list, each once; one that stands there twice stops the hand-out. */
export function learnersFrom(names: readonly string[]): readonly string[] {
  const learners = names.map((name) => name.trim().replace(/\s+/g, ' ')).filter(Boolean);
  if (learners.length === 0) throw new Undeliverable(words.teach.noLearners);
  const seen = new Set<string>();
  for (const learner of learners) {
    if (seen.has(learnerKey(learner))) throw new Undeliverable(words.teach.learnerTwice(learner));
    seen.add(learnerKey(learner));
  }
  return learners;
}

/** The books of a class, one after the other, so that whoever asks can show how far it is. */
export function* handoutsFor(
  teachers: Document,
  exercise: Exercise,
  klass: Class,
): Generator<HandoutFile> {
  const content = contentOf(teachers, exercise.sheet);
  if (!content) throw new Undeliverable(words.book.sheetGone);
  standsAlone(teachers, content);
  const workings = workingsOf(teachers, exercise);
  const taken = new Set<string>();
  try {
    for (const [learner, variant] of drawnFor(exercise, workings, klass)) {
      tellsNothing(workings, exercise, content, variant.answers);
      const name = `${freeFile(learner, taken)}.halfstop`;
      const text = bookFor(teachers, exercise, content, klass, learner, variant);
      yield { learner, name, text, variant, beside: besideOf(workings, exercise, content) };
    }
  } finally {
    workings.close();
  }
}

/** Who has what the neighbour has, as there was nothing else to draw: for a word at the hand-out. */
export function alikeNeighbours(files: readonly Pick<HandoutFile, 'learner' | 'variant'>[]) {
  return files.flatMap(({ learner, variant }, index) => {
    const before = files[index - 1];
    return before && variant.alike ? [{ one: before.learner, other: learner }] : [];
  });
}

/** The name of a learner’s file, another one for each however alike they are. */
export function freeFile(learner: string, taken: Set<string>): string {
  const stem = fileName(learner);
  let name = stem;
  for (let count = 2; taken.has(name.toLowerCase()); count += 1) name = `${stem} ${String(count)}`;
  taken.add(name.toLowerCase());
  return name;
}

/** Cells right of the column of the answers, as they are shown; empty where there are none. */
function besideOf(
  workings: Workings,
  { questions }: Exercise,
  { id, rows, columns }: SheetContent,
): readonly (readonly string[])[] {
  const last = Math.max(...questions.map(({ at }) => columns.indexOf(at.column)));
  const table = rows.map((_, row) =>
    columns
      .slice(last + 1)
      .map((__, index) => workings.shown({ sheet: id, row, column: last + 1 + index })),
  );
  const used = columns.slice(last + 1).map((_, index) => table.some((row) => row[index] !== ''));
  return table
    .map((row) => row.filter((_, index) => used[index]))
    .filter((row) => row.some((cell) => cell !== ''));
}
