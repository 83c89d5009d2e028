import { writeForPeople } from '../../functions/quantities/write.ts';
import { createBook } from '../book/book.ts';
import { classesOf, type Class, type Exercise } from '../book/exercises.ts';
import { readBook } from '../book/form/read.ts';
import { writeBook } from '../book/form/write.ts';
import { made, type Made } from '../book/make/made.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document, Means } from '../book/types.ts';
import { words } from '../words/words.ts';
import type { HandoutFile } from './handouts.ts';
import { csvOf } from './report.ts';

/** A class that is to get an exercise. The salt comes from whoever has chance. */
export function newClass(
  means: Pick<Means, 'newId'>,
  { id: exercise }: Exercise,
  seed: string,
  learners: readonly string[],
  salt: string,
): Class {
  return { id: means.newId(), kind: 'class', exercise, seed, salt, learners: [...learners] };
}

/** Keeps in the teacher’s book who got what: marking needs nothing else. The same class again takes its place. */
export function keepClass(document: Document, klass: Class): Made {
  const before = classesOf(document).filter(
    ({ exercise, seed, id }) =>
      exercise === klass.exercise && seed === klass.seed && id !== klass.id,
  );
  return withClass(klass, before);
}

/** The teacher’s book with this class alone, as a file: it marks what that class returns. */
export function keyText(teachers: Document, klass: Class): string {
  const read = readBook(writeBook(teachers));
  if (!read.ok) throw new Error(read.reason);
  const book = createBook(read.document);
  const others = classesOf(book.document).filter(({ id }) => id !== klass.id);
  const keeping = withClass(klass, others);
  if (keeping.ok) book.run(keeping.transaction);
  return writeBook(book.document);
}

const withClass = (klass: Class, without: readonly Class[]): Made =>
  made(words.teach.handOut, [
    {
      kind: 'setShelf',
      shelf: 'exercises',
      items: [
        ...without.map(({ id }) => ({ id, item: null })),
        { id: klass.id, item: { ...klass } },
      ],
    },
  ]);

/** The answers of a class to read: a line for each learner and question. */
export function keyTable(teachers: Document, files: readonly HandoutFile[]): string {
  const writing = writingSettings(teachers.settings);
  return csvOf([
    [words.teach.learner, words.teach.question, words.teach.expected],
    ...files.flatMap(({ learner, variant }) =>
      variant.answers.map(({ quantity, value }, index) => [
        learner,
        index + 1,
        writeForPeople(quantity ?? 'number', value, writing),
      ]),
    ),
  ]);
}
