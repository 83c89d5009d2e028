import { createBook } from '../../../src/book/book.ts';
import { exercisesOf, type Class, type Exercise } from '../../../src/book/exercises.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { spotOf } from '../../../src/book/look.ts';
import { enter } from '../../../src/book/make/enter.ts';
import type { Document } from '../../../src/book/types.ts';
import { handoutsFor, type HandoutFile } from '../../../src/teach/handouts.ts';
import { newClass } from '../../../src/teach/key.ts';
import { marking, type MarkedClass } from '../../../src/teach/mark.ts';
import type { ReturnedFile } from '../../../src/teach/returned.ts';
import { exerciseBook } from '../../../src/teach/set/set.ts';
import { countingMeans } from '../engine/support/openBook.ts';

/** A class of invented learners with one of our exercises, and what they were handed. */
export interface HandedClass {
  readonly document: Document;
  readonly exercise: Exercise;
  readonly klass: Class;
  readonly files: readonly HandoutFile[];
}

export const names = ['Mira Holm', 'Tomás Ferreira', 'Aino Salo', 'Jun Park', 'Ines Varga'];

export function handedOut(id: string, learners = names, seed = '7'): HandedClass {
  const document = exerciseBook(id, countingMeans());
  const [exercise] = exercisesOf(document);
  if (!exercise) throw new Error('There is no exercise.');
  const means = { newId: () => 'class-1' };
  const klass = newClass(means, exercise, seed, learners, 'salt of the test');
  return { document, exercise, klass, files: [...handoutsFor(document, exercise, klass)] };
}

/** The book that a learner sends back with these texts typed into the answer cells, in their order. */
export function answered(
  { exercise }: HandedClass,
  { text }: Pick<HandoutFile, 'text'>,
  answers: readonly string[],
): string {
  const read = readBook(text);
  if (!read.ok) throw new Error(read.reason);
  const { document } = read;
  const entries = exercise.questions.flatMap(({ at }, index) => {
    const spot = spotOf(document, { sheet: exercise.sheet, ...at });
    return spot ? [{ ...spot, text: answers[index] ?? '' }] : [];
  });
  const made = enter(document, countingMeans(), entries);
  if (!made.ok) throw new Error(made.reason);
  createBook(document).run(made.transaction);
  return writeBook(document);
}

export const file = (path: string, content: string | Uint8Array): ReturnedFile => ({
  path,
  bytes: typeof content === 'string' ? new TextEncoder().encode(content) : content,
});

export function marked(handed: HandedClass, files: readonly ReturnedFile[]): MarkedClass {
  const marks = marking(handed.document, handed, files);
  let step = marks.next();
  while (!step.done) step = marks.next();
  return step.value;
}

/** An answer in full, as a number in the workbook’s unit reads it. */
export const exactly = ({ variant }: HandoutFile): readonly string[] =>
  variant.answers.map(({ value }) => `=${String(value)}`);
