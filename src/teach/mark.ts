import { classesOf, exercisesOf, type Class, type Exercise } from '../book/exercises.ts';
import type { Document } from '../book/types.ts';
import { fileName } from '../files/archive.ts';
import { words } from '../words/words.ts';
import { tagOf } from './handout-book.ts';
import { earned, judge, type Answer, type Judgement } from './judge.ts';
import {
  answersIn,
  givensStand,
  readReturned,
  triesOf,
  unpacked,
  type LeftFile,
  type ReturnedBook,
  type ReturnedFile,
} from './returned.ts';
import { drawnFor, learnerKey, type Variant } from './variant.ts';
import { workingsOf, type Workings } from './workings.ts';

/** One question of one learner. */
export interface Marked extends Judgement {
  readonly answer: Answer;
  readonly typed: string;
  /** What counted as the answer, in the base unit; not a number where it was none. */
  readonly value: number | undefined;
  readonly points: number;
  readonly tries: number;
  /** The worked solution with this learner’s numbers. */
  readonly solution: string | undefined;
}

export interface MarkedLearner {
  readonly learner: string;
  /** The file that counts; undefined for who returned nothing. */
  readonly path: string | undefined;
  readonly questions: readonly Marked[];
  readonly points: number;
  readonly notes: readonly string[];
}

/** What became of a file. */
export interface Fate {
  readonly path: string;
  readonly kind: 'counted' | 'renamed' | 'same' | 'other' | 'altered' | LeftFile['kind'];
  readonly says: string;
}

export interface MarkedClass {
  readonly exercise: Exercise;
  readonly most: number;
  /** In the order of the class list. */
  readonly learners: readonly MarkedLearner[];
  /** Every file that came, by path. */
  readonly files: readonly Fate[];
}

/** The classes that a book was handed out to, with what they were given. */
export const classesIn = (
  document: Document,
): readonly { readonly klass: Class; readonly exercise: Exercise }[] =>
  classesOf(document).flatMap((klass) => {
    const exercise = exercisesOf(document).find(({ id }) => id === klass.exercise);
    return exercise ? [{ klass, exercise }] : [];
  });

/**
 * Marks what a class returned, by the teacher’s own book alone: of a returned file only the typed
 * answers count. It yields the share that is done after each draw and each file.
 */
export function* marking(
  teachers: Document,
  { klass, exercise }: ReturnType<typeof classesIn>[number],
  returned: readonly ReturnedFile[],
): Generator<number, MarkedClass> {
  const workings = workingsOf(teachers, exercise);
  try {
    const { files, left } = unpacked(returned);
    const steps = klass.learners.length + files.length;
    const variants = new Map<string, Variant>();
    for (const [learner, variant] of drawnFor(exercise, workings, klass)) {
      variants.set(learner, variant);
      yield variants.size / steps;
    }
    const bench = new Bench(workings, klass, exercise, variants);
    for (const file of left) bench.leave(file);
    for (const [index, file] of files.entries()) {
      bench.take(file);
      yield (variants.size + index + 1) / steps;
    }
    return bench.result();
  } finally {
    workings.close();
  }
}

interface Sheet {
  readonly book: ReturnedBook;
  readonly learner: string;
  readonly questions: readonly Marked[];
  readonly points: number;
  /** Its givens are those that were handed out. */
  readonly stand: boolean;
}

class Bench {
  readonly #sheets = new Map<string, Sheet[]>();
  readonly #fates: Fate[] = [];
  readonly #workings: Workings;
  readonly #klass: Class;
  readonly #exercise: Exercise;
  /** Drawn for the whole list, as a neighbour’s numbers are passed over. */
  readonly #variants: ReadonlyMap<string, Variant>;

  constructor(
    workings: Workings,
    klass: Class,
    exercise: Exercise,
    variants: ReadonlyMap<string, Variant>,
  ) {
    this.#workings = workings;
    this.#klass = klass;
    this.#exercise = exercise;
    this.#variants = variants;
  }

  leave({ path, kind, reason }: LeftFile): void {
    this.#fates.push({ path, kind, says: reason });
  }

  take(file: ReturnedFile): void {
    const read = readReturned(file);
    if ('kind' in read) return this.leave(read);
    const { path, handout } = read;
    if (handout.exercise !== this.#exercise.id || handout.seed !== this.#klass.seed)
      return this.leave({ path, kind: 'foreign', reason: words.teach.otherClass(handout.title) });
    const key = learnerKey(handout.learner);
    const learner = this.#klass.learners.find((one) => learnerKey(one) === key);
    if (learner === undefined || handout.tag !== tagOf(this.#klass, learner)) {
      this.#fates.push({ path, kind: 'altered', says: words.teach.altered(handout.learner) });
      return;
    }
    const sheets = this.#sheets.get(learner) ?? [];
    this.#sheets.set(learner, [...sheets, this.#marked(read, learner)]);
  }

  #marked(book: ReturnedBook, learner: string): Sheet {
    const variant = this.#variant(learner);
    const stand = givensStand(book.document, this.#exercise, variant.values);
    const given = answersIn(book, this.#exercise, variant);
    const questions = this.#exercise.questions.map((question, index): Marked => {
      const answer = variant.answers[index];
      const { value, typed = '' } = given[index] ?? { value: undefined };
      if (!answer) throw new Error('A question without an answer.');
      const judgement = judge(question, answer, value);
      return {
        ...judgement,
        answer,
        typed,
        value,
        points: earned(judgement.state, question.points, this.#exercise.closeEarns),
        tries: triesOf(book.handout, question),
        solution: this.#solution(question),
      };
    });
    return { book, learner, questions, points: sum(questions), stand };
  }

  /** The workings hold this learner’s numbers afterwards. */
  #variant(learner: string): Variant {
    const variant = this.#variants.get(learner);
    if (!variant) throw new Error(`Nothing was drawn for ${learner}.`);
    this.#workings.put(variant.values);
    return variant;
  }

  #solution({ solution }: Exercise['questions'][number]): string | undefined {
    return solution && this.#workings.say(solution.texts, solution.formulas);
  }

  result(): MarkedClass {
    const learners = this.#klass.learners.map((learner) => this.#counted(learner));
    const files = this.#fates.toSorted((one, other) => (one.path < other.path ? -1 : 1));
    const most = this.#exercise.questions.reduce((all, { points }) => all + points, 0);
    return { exercise: this.#exercise, most, learners, files };
  }

  /** Of several books by one learner the best counts, then the one with more answers, then the lower digest. */
  #counted(learner: string): MarkedLearner {
    const sheets = (this.#sheets.get(learner) ?? []).toSorted(
      (one, other) =>
        other.points - one.points ||
        answersOf(other) - answersOf(one) ||
        order(one.book, other.book),
    );
    const [best, ...others] = sheets;
    if (!best) return { learner, path: undefined, questions: [], points: 0, notes: [] };
    const { path, hash } = best.book;
    this.#fates.push(
      isNamedFor(learner, path)
        ? { path, kind: 'counted', says: words.teach.counted(learner) }
        : { path, kind: 'renamed', says: words.teach.renamed(learner) },
    );
    for (const { book } of others)
      this.#fates.push(
        book.hash === hash
          ? { path: book.path, kind: 'same', says: words.teach.sameAs(path) }
          : { path: book.path, kind: 'other', says: words.teach.otherBy(learner, path) },
      );
    const notes = best.stand ? [] : [words.teach.givensChanged];
    return { learner, path, questions: best.questions, points: best.points, notes };
  }
}

/** Whether a file still has the name that it was handed out under. */
const isNamedFor = (learner: string, path: string): boolean =>
  path
    .replace(/^.*[/\\]/, '')
    .toLowerCase()
    .startsWith(fileName(learner).toLowerCase());

const answersOf = ({ questions }: Sheet) =>
  questions.filter(({ state }) => state !== 'blank').length;

const sum = (questions: readonly Marked[]) =>
  questions.reduce((all, { points }) => all + points, 0);
const order = (one: ReturnedBook, other: ReturnedBook) =>
  one.hash === other.hash ? (one.path < other.path ? -1 : 1) : one.hash < other.hash ? -1 : 1;
