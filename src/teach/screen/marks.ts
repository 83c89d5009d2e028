import { html } from 'lit-html';
import { words } from '../../words/words.ts';
import type { MarkedClass } from '../mark.ts';
import { filesTable, wrongGroups } from '../report.ts';

/** Marks by learner and question, wrong answers with their likely mistakes, and every file. */
export function marksView(marked: MarkedClass) {
  const { exercise, learners, most } = marked;
  const said = words.teach;
  const groups = wrongGroups(marked);
  const [fileCaptions = [], ...files] = filesTable(marked);
  return html`<div class="marks">
    ${table(
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
        ? table(
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
    ${table(
      fileCaptions.map(String),
      files.map((row) => row.map(String)),
      said.files,
    )}
  </div>`;
}

const table = (captions: readonly string[], rows: readonly (readonly string[])[], title: string) =>
  html`<h3>${title}</h3>
    <div class="scroll" tabindex="0" role="group" aria-label=${title}>
      <table>
        <thead>
          <tr>
            ${captions.map((caption) => html`<th scope="col">${caption}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ([first, ...rest]) =>
              html`<tr>
                <th scope="row">${first}</th>
                ${rest.map((cell) => html`<td>${cell}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
