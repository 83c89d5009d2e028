import { writeForPeople } from '../../functions/quantities/write.ts';
import type { Exercise } from '../book/exercises.ts';
import { cellAt, quantityAt } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document, Place } from '../book/types.ts';
import type { MarkedClass } from '../teach/mark.ts';
import { feedbackFor } from '../teach/feedback.ts';
import { feedbackPage, handoutPage, keyPage, type LayPage } from '../teach/screen/pages.ts';
import type { OnPaper } from '../teach/work.ts';
import { words } from '../words/words.ts';

/** One page with the answers of all. */
export function keyPages(
  document: Document,
  title: string,
  files: readonly OnPaper[],
): readonly LayPage[] {
  const writing = writingSettings(document.settings);
  const rows = files.map(({ learner, variant }) => ({
    learner,
    answers: variant.answers.map(({ quantity, value }) =>
      writeForPeople(quantity ?? 'number', value, writing),
    ),
  }));
  return [keyPage(title, rows)];
}

/** One page a learner. */
export function handoutPages(
  document: Document,
  { sheet, givens, questions }: Exercise,
  title: string,
  files: readonly OnPaper[],
): readonly LayPage[] {
  const writing = writingSettings(document.settings);
  const labels = givens.map(({ at }) => labelOf(document, { sheet, ...at }));
  const measured = givens.map(({ at }) => quantityAt(document, { sheet, ...at }) ?? 'number');
  return files.map(({ learner, variant, beside }) =>
    handoutPage({
      ...{ title, learner, beside },
      givens: labels.map((label, index) => [
        label,
        writeForPeople(measured[index] ?? 'number', variant.values[index] ?? 0, writing),
      ]),
      questions: questions.map(({ text, points }) => ({ text, points: words.teach.worth(points) })),
    }),
  );
}

/** One page for each learner who returned something. */
export function feedbackPages(
  document: Document,
  title: string,
  { exercise, learners, most }: MarkedClass,
): readonly LayPage[] {
  const writing = writingSettings(document.settings);
  return learners
    .filter(({ path }) => path !== undefined)
    .map((one) =>
      feedbackPage(
        title,
        one.learner,
        words.teach.pointsOf(one.points, most),
        feedbackFor(exercise, one, writing),
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
