import { classesOf, exerciseOn, type Exercise } from '../book/exercises.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { carryOut } from '../commands/doing.ts';
import { xlsxOf } from '../files/xlsx/write.ts';
import { computed, signal } from '../panels/kit/signals.ts';
import { removeExercise, setExercise } from '../teach/author.ts';
import { namesIn } from '../teach/class-list.ts';
import { learnersFrom } from '../teach/handouts.ts';
import { Undeliverable } from '../teach/undeliverable.ts';
import { keepClass, keyText, newClass } from '../teach/key.ts';
import { classesIn, type MarkedClass } from '../teach/mark.ts';
import { placeExercise } from '../teach/place.ts';
import { plannedFrom } from '../teach/planned.ts';
import type { PlannedExercise } from '../teach/plan.ts';
import { csvOf, marksTable, plainMarks } from '../teach/report.ts';
import { newSalt } from '../teach/salt.ts';
import { returnedFrom } from '../teach/screen/dropped.ts';
import type { Taught } from '../teach/screen/seam.ts';
import { teacherDialog } from '../teach/screen/teacher.ts';
import { exerciseSet } from '../teach/set/set.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';
import { askForFiles, saveFile, saveText } from './file-dialog.ts';
import { classWork, type TeachHands } from './teach-hands.ts';
import { feedbackPages, handoutPages, keyPages } from './teach-pages.ts';

const reasonOf = (outcome: Outcome): string | undefined =>
  outcome.ok ? undefined : outcome.reason;

/** The teacher’s screen over the sheet in view. */
export function teach({ means, now, tell, print }: TeachHands, desk: Desk): void {
  const { book, session } = desk;
  const { document } = book;
  const { progress, start, cancel } = classWork();
  const marked = signal<MarkedClass | undefined>(undefined);
  const here = () => exerciseOn(document, session.state.sheet);
  const taught = computed((): Taught | undefined => {
    void desk.changed.value;
    const exercise = here();
    return exercise && taughtOf(document, exercise);
  });
  const classNamed = (id: string) => classesIn(document).find(({ klass }) => klass.id === id);

  teacherDialog({
    offered: exerciseSet,
    ...{ taught, progress, cancel, marked },
    add(id) {
      const made = placeExercise(document, means, id);
      const outcome = carryOut(desk, made);
      if (outcome.ok && made.ok) session.show(made.sheet);
      return reasonOf(outcome);
    },
    async handOut(names, seed) {
      const exercise = here();
      if (!exercise) return words.teach.noExercise;
      const learners = learnersOrReason(names);
      if (typeof learners === 'string') return learners;
      const klass = newClass(means, exercise, seed.trim(), learners, newSalt());
      const done = await start(document, klass, { kind: 'handOut', made: now() });
      if (done.kind === 'refused') return done.reason;
      saveFile(taughtOf(document, exercise).title, 'zip', 'application/zip', done.zip);
      tell(carryOut(desk, keepClass(document, klass), words.teach.handedOut(done.count)));
      const alike = done.alike.map(({ one, other }) => words.teach.alike(one, other));
      return alike.length > 0 ? alike.join(' ') : undefined;
    },
    saveKey(id) {
      const found = classNamed(id);
      if (!found) return words.teach.notHandedOut;
      saveText('KEY', 'json', 'application/json', keyText(document, found.klass));
      return undefined;
    },
    async print(what, id) {
      const found = classNamed(id);
      if (!found) return words.teach.notHandedOut;
      const { exercise, klass } = found;
      const { title } = taughtOf(document, exercise);
      if (what === 'feedback')
        return marked.value
          ? reasonOf(await print(title, feedbackPages(document, title, marked.value)))
          : words.teach.notMarked;
      const done = await start(document, klass, { kind: 'draw' });
      if (done.kind === 'refused') return done.reason;
      const pages =
        what === 'key'
          ? keyPages(document, title, done.files)
          : handoutPages(document, exercise, title, done.files);
      return reasonOf(await print(title, pages));
    },
    async mark(id, files) {
      const found = classNamed(id);
      if (!found) return words.teach.notHandedOut;
      const done = await start(document, found.klass, { kind: 'mark', files });
      if (done.kind === 'refused') return done.reason;
      marked.value = done.marked;
      return undefined;
    },
    async save(as) {
      const result = marked.value;
      if (!result) return;
      const writing = writingSettings(document.settings);
      const title = words.teach.marks;
      if (as === 'csv') saveText(title, as, 'text/csv', csvOf(marksTable(result, writing)));
      else {
        const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
        saveFile(title, as, type, await xlsxOf(plainMarks(title, result, writing)));
      }
    },
    plan: (): PlannedExercise => {
      const exercise = here();
      return exercise ? plannedFrom(document, exercise) : nothingAsked;
    },
    author(planned) {
      const { sheet } = session.state;
      const measures = (formula: string) => desk.engine.evaluate(formula, sheet).quantity;
      return reasonOf(carryOut(desk, setExercise(document, means, sheet, planned, measures)));
    },
    remove: () => reasonOf(carryOut(desk, removeExercise(document, session.state.sheet))),
    pick: async (folder) => returnedFrom(await askForFiles(folder)),
  });
}

const nothingAsked: PlannedExercise = {
  ...{ level: 1, onTheSpot: true, closeEarns: 0.5 },
  ...{ givens: [], conditions: [], questions: [] },
};

/** Who is on a list; the reason where it will not do. */
function learnersOrReason(names: string): readonly string[] | string {
  try {
    return learnersFrom(namesIn(names));
  } catch (fault) {
    if (fault instanceof Undeliverable) return fault.message;
    throw fault;
  }
}

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
