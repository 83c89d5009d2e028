import { writeForPeople } from '../../functions/quantities/write.ts';
import { stopsInWords } from '../../functions/stops/verdictWords.ts';
import type { WritingSettings } from '../../functions/quantities/settings.ts';
import type { MistakeKind, Question } from '../book/exercises.ts';
import { escapedText } from '../files/csv/escape.ts';
import type { PlainBook, PlainCell, PlainSheet, PlainValue } from '../files/plain/types.ts';
import { joinTable } from '../files/table.ts';
import { words } from '../words/words.ts';
import type { Answer, Judgement } from './judge.ts';
import type { Marked, MarkedClass, MarkedLearner } from './mark.ts';

/** A mistake by its name, or as the teacher says it. */
export const mistakeName = ({ kind, says }: { kind: MistakeKind; says?: string }): string =>
  says ?? words.teach.mistakes[kind];

/** An amount that an answer is off by, in words: `1/3 stop too high`. */
export function howFar(
  { tolerance }: Pick<Question, 'tolerance'>,
  { quantity }: Pick<Answer, 'quantity'>,
  off: number,
  writing: WritingSettings,
): string {
  const size = Math.abs(off);
  const amount =
    tolerance.kind === 'stops' || quantity === 'stops'
      ? stopsInWords(size)
      : tolerance.kind === 'relative'
        ? writeForPeople('share', size, writing)
        : writeForPeople(quantity ?? 'number', size, writing);
  return off > 0 ? words.teach.tooHigh(amount) : words.teach.tooLow(amount);
}

/** A judgement in words: `right`, `close: 1/3 stop too high`, `not yet: forgot to square`. */
export function judgementWords(
  question: Pick<Question, 'tolerance'>,
  answer: Pick<Answer, 'quantity'>,
  { state, off, mistake }: Judgement,
  writing: WritingSettings,
): string {
  if (mistake) return words.teach.because(mistakeName(mistake));
  if (state === 'close' && off !== undefined)
    return words.teach.closeBy(howFar(question, answer, off, writing));
  return words.teach.states[state];
}

/** Wrong answers that are alike, those of most learners first. */
export interface WrongGroup {
  /** Counted from 0. */
  readonly question: number;
  /** The likely mistake, where there is one. */
  readonly mistake: string | undefined;
  /** As the first of them typed it. */
  readonly typed: string;
  readonly learners: readonly string[];
}

/** One question’s wrong answers: by mistake where it is known, else by what came out. */
export function wrongGroups({ exercise, learners }: MarkedClass): readonly WrongGroup[] {
  return exercise.questions.flatMap((question, index) => {
    const wrong = learners.flatMap(({ learner, questions }) => {
      const marked = questions[index];
      const counts = marked && (marked.state === 'close' || marked.state === 'notYet');
      return counts ? [{ learner, marked }] : [];
    });
    const groups: { first: Marked; learners: string[] }[] = [];
    for (const { learner, marked } of wrong) {
      const known = groups.find(({ first }) => isAlike(question, first, marked));
      if (known) known.learners.push(learner);
      else groups.push({ first: marked, learners: [learner] });
    }
    return groups
      .map(({ first, learners: who }) => ({
        question: index,
        mistake: first.mistake && mistakeName(first.mistake),
        typed: first.typed,
        learners: who,
      }))
      .toSorted((one, other) => other.learners.length - one.learners.length);
  });
}

/** Numbers differ from learner to learner: answers without a known mistake are held by how far off they are. */
function isAlike({ tolerance }: Question, one: Marked, other: Marked): boolean {
  if (one.mistake || other.mistake)
    return one.mistake?.kind === other.mistake?.kind && one.mistake?.says === other.mistake?.says;
  if (one.off === undefined || other.off === undefined) return one.off === other.off;
  return Math.abs(one.off - other.off) <= tolerance.by;
}

type Row = readonly (string | number)[];

/** Marks by learner and question, one line a learner, under one line of captions. */
export function marksTable(marked: MarkedClass, writing: WritingSettings): readonly Row[] {
  const { exercise, most, learners } = marked;
  const captions = exercise.questions.flatMap((_, index) => [
    words.teach.pointsFor(index + 1),
    words.teach.answerTo(index + 1),
    words.teach.verdictOn(index + 1),
    words.teach.checksOf(index + 1),
  ]);
  return [
    [words.teach.learner, words.teach.points, words.teach.of, ...captions, words.teach.notes],
    ...learners.map((one): Row => [
      one.learner,
      one.points,
      most,
      ...exercise.questions.flatMap((question, index): Row => {
        const answered = one.questions[index];
        if (!answered) return ['', '', '', ''];
        const { answer, typed, points, tries } = answered;
        return [points, typed, judgementWords(question, answer, answered, writing), tries];
      }),
      notesOf(one),
    ]),
  ];
}

const notesOf = ({ path, notes }: MarkedLearner): string =>
  path === undefined ? words.teach.nothingReturned : notes.join(' ');

export function groupsTable(marked: MarkedClass): readonly Row[] {
  return [
    [words.teach.question, words.teach.likely, words.teach.typed, words.teach.learners],
    ...wrongGroups(marked).map(({ question, mistake, typed, learners }): Row => [
      question + 1,
      mistake ?? words.teach.unknown,
      typed,
      learners.join(', '),
    ]),
  ];
}

export function filesTable({ files }: Pick<MarkedClass, 'files'>): readonly Row[] {
  return [
    [words.teach.file, words.teach.fate, words.teach.says],
    ...files.map(({ path, kind, says }): Row => [path, words.teach.fates[kind], says]),
  ];
}

/** A table as CSV, safe to open in other programs. */
export const csvOf = (rows: readonly Row[]): string =>
  `${joinTable(
    rows.map((row) =>
      row.map((cell) => (typeof cell === 'number' ? String(cell) : escapedText(cell))),
    ),
    ',',
  )}\n`;

/** Marks, wrong answers and files as a book for other programs. */
export function plainMarks(
  title: string,
  marked: MarkedClass,
  writing: WritingSettings,
): PlainBook {
  return {
    title,
    sheets: [
      plainSheet(words.teach.marks, marksTable(marked, writing)),
      plainSheet(words.teach.wrongAnswers, groupsTable(marked)),
      plainSheet(words.teach.files, filesTable(marked)),
    ],
    names: [],
  };
}

function plainSheet(name: string, rows: readonly Row[]): PlainSheet {
  const cells = rows.flatMap((row, index) =>
    row.map((value: PlainValue, column): PlainCell => ({
      row: index,
      column,
      value,
      ...(index === 0 && { bold: true }),
    })),
  );
  return { name, widths: new Map([[0, 200]]), frozenRows: 1, frozenColumns: 1, cells };
}
