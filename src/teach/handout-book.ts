import { createBook } from '../book/book.ts';
import type { Check, Class, Exercise, Handout } from '../book/exercises.ts';
import { figuresOn, keepFigures } from '../book/figures.ts';
import { writeBook } from '../book/form/write.ts';
import { blank } from '../book/make/entered.ts';
import { newDocument } from '../book/newdocument.ts';
import type { Cell, Document, ShelfItem, SheetContent, Step } from '../book/types.ts';
import { sha256 } from '../files/photometric/sha256.ts';
import { cellKey } from './cell-key.ts';
import { digestOf, isDiscrete, marksAround } from './check.ts';
import type { Answer } from './judge.ts';
import { Undeliverable } from './undeliverable.ts';
import { learnerKey, type Variant } from './variant.ts';
import { withNumber } from './workings.ts';

/** Tells a hand-out of ours from one whose name was altered. */
export const tagOf = ({ salt, exercise, seed }: Class, learner: string): string =>
  sha256([salt, exercise, seed, learnerKey(learner)].join(' / '));

/** A learner’s book: the sheet with the own numbers, what is asked, and no answer. */
export function bookFor(
  teachers: Document,
  exercise: Exercise,
  content: SheetContent,
  klass: Class,
  learner: string,
  { values, answers }: Variant,
): string {
  const given = new Map(exercise.givens.map(({ at }, index) => [cellKey(at), values[index]]));
  const asked = new Set(exercise.questions.map(({ at }) => cellKey(at)));
  const cells = content.cells.map((at): SheetContent['cells'][number] => {
    if (given.has(cellKey(at))) return { ...at, cell: withNumber(at.cell, given.get(cellKey(at))) };
    return asked.has(cellKey(at)) ? { ...at, cell: unanswered(at.cell) } : at;
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
  const figures = figuresOn(teachers, exercise.sheet);
  const item: ShelfItem = { ...handout, id: handout.id };
  const steps: Step[] = [
    { kind: 'setSettings', settings: { ...teachers.settings, more: {} } },
    { kind: 'addSheet', content: { ...content, cells }, at: 1 },
    { kind: 'removeSheet', sheet: first?.id ?? '' },
    ...shelved,
    ...(figures.length > 0 ? [keepFigures(figures)] : []),
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
