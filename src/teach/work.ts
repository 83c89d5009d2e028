import { exercisesOf, type Class, type Exercise } from '../book/exercises.ts';
import { readBook } from '../book/form/read.ts';
import type { Document } from '../book/types.ts';
import { zipOf } from '../files/zip.ts';
import { words } from '../words/words.ts';
import { alikeNeighbours, handoutsFor, type HandoutFile } from './handouts.ts';
import { marking, type MarkedClass } from './mark.ts';
import type { ReturnedFile } from './returned.ts';
import { Undeliverable } from './undeliverable.ts';

interface ForClass {
  /** The teacher’s book, the text of its file. */
  readonly book: string;
  readonly klass: Class;
}

/** What is done for a whole class, apart from the page. */
export type TeachTask = ForClass &
  (
    | { readonly kind: 'handOut'; readonly made: Date }
    | { readonly kind: 'draw' }
    | { readonly kind: 'mark'; readonly files: readonly ReturnedFile[] }
  );

/** A hand-out without its book, as it goes on paper. */
export type OnPaper = Omit<HandoutFile, 'text'>;

export type TeachDone =
  | {
      readonly kind: 'handOut';
      readonly zip: Uint8Array;
      readonly count: number;
      readonly alike: ReturnType<typeof alikeNeighbours>;
    }
  | { readonly kind: 'draw'; readonly files: readonly OnPaper[] }
  | { readonly kind: 'mark'; readonly marked: MarkedClass }
  | { readonly kind: 'refused'; readonly reason: string };

/** Yields the share that is done. */
export function* work(task: TeachTask): Generator<number, TeachDone> {
  const read = readBook(task.book);
  if (!read.ok) return { kind: 'refused', reason: read.reason };
  const { document } = read;
  const exercise = exercisesOf(document).find(({ id }) => id === task.klass.exercise);
  if (!exercise) return { kind: 'refused', reason: words.teach.noExercise };
  try {
    return yield* done(task, document, exercise);
  } catch (fault) {
    if (fault instanceof Undeliverable) return { kind: 'refused', reason: fault.message };
    throw fault;
  }
}

function* done(
  task: TeachTask,
  document: Document,
  exercise: Exercise,
): Generator<number, TeachDone> {
  const { klass } = task;
  if (task.kind === 'mark')
    return { kind: 'mark', marked: yield* marking(document, { klass, exercise }, task.files) };
  const files: HandoutFile[] = [];
  for (const file of handoutsFor(document, exercise, klass)) {
    files.push(file);
    yield files.length / klass.learners.length;
  }
  if (task.kind === 'draw')
    return { kind: 'draw', files: files.map(({ text: _text, ...file }) => file) };
  const zip = zipOf(
    files.map(({ name, text }) => ({ path: name, text })),
    task.made,
  );
  return { kind: 'handOut', zip, count: files.length, alike: alikeNeighbours(files) };
}
