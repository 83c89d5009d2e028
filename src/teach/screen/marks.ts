import { html } from 'lit-html';
import { table } from '../../panels/kit/table.ts';
import { words } from '../../words/words.ts';
import type { Fate, MarkedClass } from '../mark.ts';
import { filesTable, wrongGroups } from '../report.ts';

/** Marks by learner and question, wrong answers with their likely mistakes, and every file. */
export function marksView(marked: MarkedClass) {
  const { exercise, learners, most } = marked;
  const said = words.teach;
  const groups = wrongGroups(marked);
  // What wants a look comes first, not somewhere among two hundred that are as they should be.
  const files = marked.files.toSorted((one, other) => rank(one) - rank(other));
  const [fileCaptions = [], ...fates] = filesTable({ files });
  return html`<div class="marks">
    ${titled(
      [said.learner, said.points, ...exercise.questions.map((_, index) => String(index + 1))],
      learners.map(({ learner, path, points, questions }) => [
        learner,
        path === undefined ? said.nothingReturned : said.pointsOf(points, most),
        ...questions.map(({ state, points: earned, typed }) =>
          state === 'blank' ? '' : `${String(earned)} (${typed})`,
        ),
      ]),
      said.marks,
    )}
    ${
      groups.length > 0
        ? titled(
            [said.question, said.likely, said.typed, said.learners],
            groups.map(({ question, mistake, typed, learners: who }) => [
              String(question + 1),
              mistake ?? said.unknown,
              typed,
              who.join(', '),
            ]),
            said.wrongAnswers,
          )
        : ''
    }
    ${titled(
      fileCaptions.map(String),
      fates.map((row) => row.map(String)),
      said.files,
    )}
  </div>`;
}

const rank = ({ kind }: Fate) => Number(kind === 'counted');

const titled = (captions: readonly string[], rows: readonly (readonly string[])[], title: string) =>
  html`<h3>${title}</h3>
    ${table(captions, rows, title)}`;
