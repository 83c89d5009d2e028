import { html } from 'lit-html';
import { mistakeKinds } from '../../book/exercises.ts';
import { fieldsOf } from '../../panels/kit/dialog.ts';
import { words } from '../../words/words.ts';
import type { PlannedExercise, PlannedMistake, PlannedQuestion } from '../plan.ts';
import type { TeacherSeam } from './seam.ts';

const area = (name: string, label: string, value: string, rows: number) =>
  html`<label class="field"
    ><span>${label}</span>
    <textarea class="input" name=${name} rows=${rows} .value=${value}></textarea>
  </label>`;

const line = (name: string, label: string, value: string) =>
  html`<label class="field"
    ><span>${label}</span>
    <input class="input" name=${name} autocomplete="off" .value=${value} />
  </label>`;

/** The fields of a question, in their order. */
const questionFields = [
  ['at', words.teach.answerCell],
  ['text', words.teach.questionText],
  ['expected', words.teach.expectedFormula],
  ['tolerance', words.teach.tolerance],
  ['points', words.teach.points],
  ['hint', words.teach.hint],
  ['solution', words.teach.solution],
] as const;

/** Asks on the sheet in view: givens and where they are drawn from, questions, what is expected. */
export function authorForm(seam: TeacherSeam, say: (reason?: string) => void) {
  const plan = seam.plan();
  const { givens, conditions, questions, onTheSpot, level, closeEarns } = plan;
  // One more than there are, to be filled in or left empty.
  const asked: readonly Partial<PlannedQuestion>[] = [...questions, {}];
  const set = (event: Event) => {
    const said = fieldsOf(event);
    const planned = plannedBy(said, asked.length);
    const reason = seam.author(planned);
    const before = seam.taught.value?.classes.length ?? 0;
    say(reason ?? (before > 0 ? words.teach.keptAfter : words.teach.kept));
  };
  return html`<form @submit=${set}>
    <p class="faint">${words.teach.askHelp}</p>
    ${area('givens', words.teach.givens, givens.map(({ at, draw }) => `${at}: ${draw}`).join('\n'), 5)}
    ${area('conditions', words.teach.conditions, conditions.join('\n'), 2)}
    <div class="pair">
      ${line('level', words.teach.levelField, String(level))}
      ${line('closeEarns', words.teach.closeField, String(closeEarns))}
    </div>
    <label class="tick"
      ><input type="checkbox" name="onTheSpot" .checked=${onTheSpot} /><span
        >${words.teach.allowChecks}</span
      ></label
    >
    ${asked.map(
      (one, index) =>
        html`<fieldset>
          <legend>${words.teach.questionNumber(index + 1)}</legend>
          ${questionFields.map(([name, label]) =>
            line(`${name} ${String(index)}`, label, String(one[name] ?? '')),
          )}
          ${area(
            `mistakes ${String(index)}`,
            words.teach.mistakesField,
            (one.mistakes ?? []).map(mistakeLine).join('\n'),
            2,
          )}
        </fieldset>`,
    )}
    <div class="row end">
      ${
        seam.taught.value
          ? html`<button type="button" class="button" @click=${() => say(seam.remove())}>
              ${words.teach.removeExercise}
            </button>`
          : ''
      }
      <button class="button lit">${words.teach.makeExercise}</button>
    </div>
  </form>`;
}

const mistakeLine = ({ kind, formula, says }: PlannedMistake): string =>
  `${says ?? words.teach.mistakes[kind]}: ${formula}`;

/** `forgot to square: =B2*B3/B4`: a name of ours, or own words. */
function mistakeFrom(text: string): PlannedMistake {
  const at = text.lastIndexOf(': =');
  const name = text.slice(0, Math.max(0, at)).trim();
  const formula = text.slice(at < 0 ? 0 : at + 1).trim();
  const kind = mistakeKinds.find((one) => words.teach.mistakes[one] === name);
  return kind ? { kind, formula } : { kind: 'other', formula, says: name };
}

const linesOf = (text: string | undefined) =>
  (text ?? '')
    .split('\n')
    .map((one) => one.trim())
    .filter(Boolean);

function plannedBy(said: ReadonlyMap<string, string>, count: number): PlannedExercise {
  const levels: Readonly<Record<string, PlannedExercise['level']>> = { '1': 1, '2': 2, '3': 3 };
  const questions = Array.from({ length: count }, (_, index): PlannedQuestion => {
    const text = (name: string) => said.get(`${name} ${String(index)}`)?.trim() ?? '';
    return {
      ...{ at: text('at'), text: text('text'), expected: text('expected') },
      ...{ tolerance: text('tolerance'), points: Number(text('points') || '1') },
      ...{ hint: text('hint'), solution: text('solution') },
      mistakes: linesOf(said.get(`mistakes ${String(index)}`)).map(mistakeFrom),
    };
  });
  return {
    level: levels[said.get('level')?.trim() ?? ''] ?? 1,
    onTheSpot: said.has('onTheSpot'),
    closeEarns: Math.min(1, Math.max(0, Number(said.get('closeEarns') ?? '0.5') || 0)),
    givens: linesOf(said.get('givens')).map((one) => {
      const [at = '', ...draw] = one.split(':');
      return { at: at.trim(), draw: draw.join(':').trim() };
    }),
    conditions: linesOf(said.get('conditions')),
    questions: questions.filter(({ at, text, expected }) => at + text + expected !== ''),
  };
}
