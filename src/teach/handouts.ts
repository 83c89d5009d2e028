import { isError } from '../../functions/values.ts';
import { createBook } from '../book/book.ts';
import { contentOf } from '../book/content.ts';
import type { Check, Class, Exercise, Handout } from '../book/exercises.ts';
import { writeBook } from '../book/form/write.ts';
import { addressAt, spotOf } from '../book/look.ts';
import { blank } from '../book/make/entered.ts';
import { newDocument } from '../book/newdocument.ts';
import type { Cell, Document, ShelfItem, SheetContent, Step } from '../book/types.ts';
import { fileName } from '../files/archive.ts';
import { sha256 } from '../files/photometric/sha256.ts';
import { words } from '../words/words.ts';
import { digestOf, isDiscrete, marksAround } from './check.ts';
import { agree, type Answer } from './judge.ts';
import { learnerKey, variantOf, type Variant } from './variant.ts';
import { withNumber, workingsOf, type Workings } from './workings.ts';

/** One learner’s book, ready to be written down. */
export interface HandoutFile {
  readonly learner: string;
  readonly name: string;
  readonly text: string;
  readonly variant: Variant;
  /** What the sheet shows beside givens and questions, row by row: tables to read from. */
  readonly beside: readonly (readonly string[])[];
}

/** A class cannot be handed out to: a sentence that says why. */
export class Undeliverable extends Error {}

/** Tells a hand-out of ours from one whose name was altered. */
export const tagOf = ({ salt, exercise, seed }: Class, learner: string): string =>
  sha256([salt, exercise, seed, learnerKey(learner)].join(' / '));

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
  standsAlone(content);
  const workings = workingsOf(teachers, exercise);
  const taken = new Set<string>();
  try {
    for (const learner of klass.learners) {
      const variant = variantOf(exercise, workings, klass.seed, learner);
      if (!variant.ok) throw new Undeliverable(variant.reason);
      tellsNothing(workings, exercise, content, variant.answers);
      const text = bookFor(teachers, exercise, content, klass, learner, variant);
      yield {
        learner,
        name: freeFile(learner, taken),
        text,
        variant,
        beside: besideOf(workings, exercise, content),
      };
    }
  } finally {
    workings.close();
  }
}

/** Who sits next to someone with the very same numbers: for a word before the hand-out. */
export function alikeNeighbours(files: readonly Pick<HandoutFile, 'learner' | 'variant'>[]) {
  return files.flatMap(({ learner, variant }, index) => {
    const before = files[index - 1];
    const alike = before && String(before.variant.values) === String(variant.values);
    return alike ? [{ one: before.learner, other: learner }] : [];
  });
}

function freeFile(learner: string, taken: Set<string>): string {
  const stem = fileName(learner);
  let name = stem;
  for (let count = 2; taken.has(name.toLowerCase()); count += 1) name = `${stem} ${String(count)}`;
  taken.add(name.toLowerCase());
  return `${name}.halfstop`;
}

/** A hand-out is one sheet: what its formulas read elsewhere would not be in it. */
function standsAlone({ id, cells }: SheetContent): void {
  for (const { cell } of cells)
    if (cell.content.kind === 'formula')
      for (const reference of cell.content.formula.references)
        if (reference.kind === 'name' || ('sheet' in reference && reference.sheet !== id))
          throw new Undeliverable(words.teach.readsElsewhere);
}

const keyOf = ({ row, column }: { row: string; column: string }) => `${row} ${column}`;

/** No other cell of the sheet may work out what is asked. */
function tellsNothing(
  workings: Workings,
  { questions }: Exercise,
  { id, cells }: SheetContent,
  answers: readonly Answer[],
): void {
  const asked = new Set(questions.map(({ at }) => keyOf(at)));
  for (const { row, column, cell } of cells) {
    const spot = spotOf(workings.document, { sheet: id, row, column });
    if (cell.content.kind !== 'formula' || !spot || asked.has(keyOf({ row, column }))) continue;
    const { value, quantity } = workings.at(spot);
    if (typeof value !== 'number' || isError(value)) continue;
    questions.forEach(({ tolerance }, index) => {
      const answer = answers[index];
      if (answer && answer.quantity === quantity && agree(tolerance, quantity, value, answer.value))
        throw new Undeliverable(words.teach.givesAway(addressAt(spot), index + 1));
    });
  }
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

function bookFor(
  teachers: Document,
  exercise: Exercise,
  content: SheetContent,
  klass: Class,
  learner: string,
  { values, answers }: Variant,
): string {
  const given = new Map(exercise.givens.map(({ at }, index) => [keyOf(at), values[index]]));
  const asked = new Set(exercise.questions.map(({ at }) => keyOf(at)));
  const cells = content.cells.map((at): SheetContent['cells'][number] => {
    if (given.has(keyOf(at))) return { ...at, cell: withNumber(at.cell, given.get(keyOf(at))) };
    return asked.has(keyOf(at)) ? { ...at, cell: unanswered(at.cell) } : at;
  });
  const title = content.properties.title || content.properties.name;
  const handout = handoutFor(exercise, klass, learner, title, answers);
  const book = createBook(
    newDocument(countedIds(content.id), { title: `${learner}, ${title}`, sheet: { name: spare } }),
  );
  const [first] = book.document.sheets;
  const shelved = (['fixtures', 'spectra'] as const).map((shelf): Step => {
    const { items } = teachers.shelf(shelf);
    return { kind: 'setShelf', shelf, items: items.map((item) => ({ id: item.id, item })) };
  });
  const item: ShelfItem = { ...handout, id: handout.id };
  const steps: Step[] = [
    { kind: 'setSettings', settings: { ...teachers.settings, more: {} } },
    { kind: 'addSheet', content: { ...content, cells }, at: 1 },
    { kind: 'removeSheet', sheet: first?.id ?? '' },
    ...shelved,
    { kind: 'setShelf', shelf: 'exercises', items: [{ id: item.id, item }] },
  ];
  const ran = book.run({ label: '', steps });
  if (!ran.ok) throw new Undeliverable(ran.reason);
  return writeBook(book.document);
}

/** What a learner reads of the questions; nothing that the answer could be read from. */
function handoutFor(
  exercise: Exercise,
  klass: Class,
  learner: string,
  title: string,
  answers: readonly Answer[],
): Handout {
  return {
    id: 'handout',
    kind: 'handout',
    sheet: exercise.sheet,
    exercise: exercise.id,
    title,
    learner,
    seed: klass.seed,
    tag: tagOf(klass, learner),
    level: exercise.level,
    questions: exercise.questions.map(({ id, at, text, points, hint, tolerance }, index) => {
      const answer = answers[index];
      const quantity = answer?.quantity;
      const check =
        exercise.onTheSpot && answer && isDiscrete(tolerance, quantity)
          ? checkFor(klass, learner, id, marksAround(tolerance, answer))
          : undefined;
      return {
        ...{ id, at, text, points },
        ...(hint !== undefined && { hint }),
        ...(quantity && { quantity }),
        ...(check && { check }),
      };
    }),
    tries: {},
  };
}

function checkFor(
  { salt }: Class,
  learner: string,
  question: string,
  marks: ReturnType<typeof marksAround>,
): Check {
  const own = sha256([salt, learnerKey(learner), question, 'check'].join(' / '));
  return {
    salt: own,
    parts: 3,
    // In the order of their digests: where the right one stands says nothing.
    marks: marks
      .map(({ index, off }) => ({ digest: digestOf(own, index), off }))
      .toSorted((one, other) => (one.digest < other.digest ? -1 : 1)),
  };
}

/** An answer cell as the learner finds it: what was there, its target and its notes are gone. */
function unanswered({ quantity, format, receptor, pointed }: Cell): Cell {
  return {
    ...blank,
    role: 'answer',
    ...(quantity && { quantity }),
    ...(format && { format }),
    ...(receptor && { receptor }),
    ...(pointed !== undefined && { pointed }),
  };
}

const spare = 'Spare sheet of a hand-out';

/** Ids that the sheet itself does not have. */
function countedIds(sheet: string) {
  let count = 0;
  return { newId: () => `${sheet.slice(0, 30)}-${String(++count)}` };
}
