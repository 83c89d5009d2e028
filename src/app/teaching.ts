import { classesOf, exerciseOn, type Exercise } from '../book/exercises.ts';
import { cellAt, quantityAt } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document, Means, Place } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { carryOut } from '../commands/doing.ts';
import { xlsxOf } from '../files/xlsx/write.ts';
import { zipOf } from '../files/zip.ts';
import { writeForPeople } from '../../functions/quantities/write.ts';
import { computed, signal } from '../panels/kit/signals.ts';
import { setExercise } from '../teach/author.ts';
import { namesIn } from '../teach/class-list.ts';
import { alikeNeighbours, handoutsFor, learnersFrom, type HandoutFile } from '../teach/handouts.ts';
import { Undeliverable } from '../teach/undeliverable.ts';
import { keepClass, keyText, newClass } from '../teach/key.ts';
import { classesIn, marking, type MarkedClass } from '../teach/mark.ts';
import { placeExercise } from '../teach/place.ts';
import { plannedFrom } from '../teach/planned.ts';
import type { PlannedExercise } from '../teach/plan.ts';
import { csvOf, feedbackFor, marksTable, plainMarks } from '../teach/report.ts';
import { newSalt } from '../teach/salt.ts';
import { returnedFrom } from '../teach/screen/dropped.ts';
import { feedbackPage, handoutPage, keyPage, type LayPage } from '../teach/screen/pages.ts';
import type { Taught } from '../teach/screen/seam.ts';
import { teacherDialog } from '../teach/screen/teacher.ts';
import { exerciseSet } from '../teach/set/set.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';
import { askForFiles, saveFile, saveText } from './file-dialog.ts';

export interface TeachHands {
  readonly means: Means;
  readonly now: () => Date;
  desk(): Desk | null;
  tell(outcome: Outcome): void;
  print(title: string, pages: readonly LayPage[]): Promise<Outcome>;
}

/** Lets the page breathe between two steps of a long work, and says how far it is. */
async function stepped<Step, End>(
  work: Iterator<Step, End>,
  heard: (step: Step) => void,
): Promise<End> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    heard(step.value);
    await new Promise((resolve) => setTimeout(resolve));
  }
}

const reasonOf = (outcome: Outcome): string | undefined =>
  outcome.ok ? undefined : outcome.reason;

/** The teacher’s screen over the sheet in view. */
export function teach({ means, now, tell, print }: TeachHands, desk: Desk): void {
  const { book, session } = desk;
  const progress = signal<number | null>(null);
  const marked = signal<MarkedClass | undefined>(undefined);
  const taught = computed((): Taught | undefined => {
    void desk.changed.value;
    const exercise = here();
    return exercise && taughtOf(book.document, exercise);
  });
  const here = () => exerciseOn(book.document, session.state.sheet);
  const classNamed = (id: string) => classesIn(book.document).find(({ klass }) => klass.id === id);

  /** A reason in place of what was thrown where a class cannot be handed out to. */
  const trying = async (work: () => Promise<string | undefined>): Promise<string | undefined> => {
    try {
      return await work();
    } catch (fault) {
      if (fault instanceof Undeliverable) return fault.message;
      throw fault;
    } finally {
      progress.value = null;
    }
  };

  const drawnFor = async (exercise: Exercise, klass: ReturnType<typeof newClass>) => {
    const files: HandoutFile[] = [];
    await stepped(handoutsFor(book.document, exercise, klass), (file) => {
      files.push(file);
      progress.value = files.length / klass.learners.length;
    });
    return files;
  };

  teacherDialog({
    offered: exerciseSet,
    taught,
    progress,
    marked,
    add(id) {
      const made = placeExercise(book.document, means, id);
      const outcome = carryOut(desk, made);
      if (outcome.ok && made.ok) session.show(made.sheet);
      return reasonOf(outcome);
    },
    handOut: (names, seed) =>
      trying(async () => {
        const exercise = here();
        if (!exercise) return words.teach.noExercise;
        const learners = learnersFrom(namesIn(names));
        const klass = newClass(means, exercise, seed.trim(), learners, newSalt());
        const files = await drawnFor(exercise, klass);
        const alike = alikeNeighbours(files).map(({ one, other }) => words.teach.alike(one, other));
        const title = taughtOf(book.document, exercise).title;
        const zip = zipOf(
          files.map(({ name, text }) => ({ path: name, text })),
          now(),
        );
        saveFile(title, 'zip', 'application/zip', zip);
        tell(carryOut(desk, keepClass(book.document, klass), words.teach.handedOut(files.length)));
        return alike.length > 0 ? alike.join(' ') : undefined;
      }),
    saveKey(id) {
      const found = classNamed(id);
      if (!found) return words.teach.notHandedOut;
      saveText('KEY', 'json', 'application/json', keyText(book.document, found.klass));
      return undefined;
    },
    print: (what, id) =>
      trying(async () => {
        const found = classNamed(id);
        if (!found) return words.teach.notHandedOut;
        const { exercise, klass } = found;
        const { title } = taughtOf(book.document, exercise);
        if (what === 'feedback' && !marked.value) return words.teach.notMarked;
        const pages =
          what === 'feedback'
            ? feedbackPages(book.document, title, marked.value)
            : paperPages(book.document, exercise, title, await drawnFor(exercise, klass), what);
        return reasonOf(await print(title, pages));
      }),
    mark: (id, files) =>
      trying(async () => {
        const found = classNamed(id);
        if (!found) return words.teach.notHandedOut;
        progress.value = 0;
        marked.value = await stepped(
          marking(book.document, found, files),
          (share) => (progress.value = share),
        );
        return undefined;
      }),
    async save(as) {
      const result = marked.value;
      if (!result) return;
      const writing = writingSettings(book.document.settings);
      const title = words.teach.marks;
      if (as === 'csv') saveText(title, as, 'text/csv', csvOf(marksTable(result, writing)));
      else {
        const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
        saveFile(title, as, type, await xlsxOf(plainMarks(title, result, writing)));
      }
    },
    plan: (): PlannedExercise => {
      const exercise = here();
      return exercise ? plannedFrom(book.document, exercise) : nothingAsked;
    },
    author: (planned) =>
      reasonOf(carryOut(desk, setExercise(book.document, means, session.state.sheet, planned))),
    pick: async (folder) => returnedFrom(await askForFiles(folder)),
  });
}

const nothingAsked: PlannedExercise = {
  ...{ level: 1, onTheSpot: true, closeEarns: 0.5 },
  ...{ givens: [], conditions: [], questions: [] },
};

function taughtOf(document: Document, exercise: Exercise): Taught {
  const { title = '', name = '' } = document.sheet(exercise.sheet)?.properties ?? {};
  return {
    title: title || name,
    questions: exercise.questions.length,
    points: exercise.questions.reduce((all, { points }) => all + points, 0),
    classes: classesOf(document)
      .filter((one) => one.exercise === exercise.id)
      .map(({ id, seed, learners }) => ({ id, seed, count: learners.length })),
  };
}

/** One page a learner, or one page with the answers of all. */
function paperPages(
  document: Document,
  exercise: Exercise,
  title: string,
  files: readonly HandoutFile[],
  what: 'handouts' | 'key',
): readonly LayPage[] {
  const writing = writingSettings(document.settings);
  const { sheet } = exercise;
  if (what === 'key') {
    const rows = files.map(({ learner, variant }) => ({
      learner,
      answers: variant.answers.map(({ quantity, value }) =>
        writeForPeople(quantity ?? 'number', value, writing),
      ),
    }));
    return [keyPage(title, rows)];
  }
  return files.map(({ learner, variant, beside }) =>
    handoutPage({
      ...{ title, learner, beside },
      givens: exercise.givens.map(({ at }, index) => [
        labelOf(document, { sheet, ...at }),
        writeForPeople(
          quantityAt(document, { sheet, ...at }) ?? 'number',
          variant.values[index] ?? 0,
          writing,
        ),
      ]),
      questions: exercise.questions.map(({ text, points }) => ({
        text,
        points: words.teach.worth(points),
      })),
    }),
  );
}

function feedbackPages(
  document: Document,
  title: string,
  marked: MarkedClass | undefined,
): readonly LayPage[] {
  if (!marked) return [];
  const writing = writingSettings(document.settings);
  return marked.learners
    .filter(({ path }) => path !== undefined)
    .map((one) =>
      feedbackPage(
        title,
        one.learner,
        words.teach.pointsOf(one.points, marked.most),
        feedbackFor(marked.exercise, one, writing),
      ),
    );
}

/** What stands left of a given. */
function labelOf(document: Document, place: Place): string {
  const columns = document.sheet(place.sheet)?.columns;
  const column = columns?.idAt((columns.indexOf(place.column) ?? 0) - 1);
  const content =
    column === undefined ? undefined : cellAt(document, { ...place, column })?.content;
  return content?.kind === 'text' ? content.text : '';
}
