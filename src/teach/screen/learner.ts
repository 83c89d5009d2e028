import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { openDialogBox } from '../../panels/kit/dialog.ts';
import { words } from '../../words/words.ts';
import type { Answering, LearnerSeam } from './seam.ts';

/** Beside the sheet while it is answered: what is asked, a hint, a check where there is one. */
export function learnerDialog(seam: LearnerSeam): void {
  const title = words.teach.exercise;
  openDialogBox({ title, className: 'teach-box answering', modeless: true }, () => {
    const questions = seam.questions.value;
    const secret = questions.some(({ checks }) => checks)
      ? words.teach.secretDigests
      : words.teach.secretNone;
    return html`<div class="box-body stack">
      <p>${words.teach.handedTo(seam.learner)}</p>
      <ol class="asked">
        ${questions.map((one) => asked(seam, one))}
      </ol>
      <p class="faint">${words.teach.returnHow}</p>
      <p class="faint">${secret}</p>
    </div>`;
  });
}

function asked(seam: LearnerSeam, one: Answering) {
  const { id, text, points, typed, answer, tries, hint, checks, says, state } = one;
  return html`<li class=${state ?? ''}>
    <p>
      <button class="link" @click=${() => seam.jump(id)}>${text}</button>
      <small>${points}</small>
    </p>
    <label class="field"
      ><span>${words.teach.yourAnswer} ${answer === typed ? '' : answer}</span>
      <input
        class="input"
        autocomplete="off"
        .value=${live(typed)}
        @change=${(event: Event) => seam.type(id, (event.currentTarget as HTMLInputElement).value)}
      />
    </label>
    <p class="said" role="status">${says}</p>
    <div class="verbs">
      ${tries === '' ? '' : html`<small>${tries}</small>`}
      ${
        checks
          ? html`<button
              class="button"
              aria-label=${words.teach.checkOne(text)}
              @click=${() => seam.check(id)}
            >
              ${words.teach.check}
            </button>`
          : ''
      }
    </div>
    ${
      hint === undefined
        ? ''
        : html`<details>
            <summary>${words.teach.hint}</summary>
            <p>${hint}</p>
          </details>`
    }
  </li>`;
}
