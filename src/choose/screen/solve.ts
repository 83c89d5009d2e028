import { html, nothing } from 'lit-html';
import { fieldsOf, openDialogBox } from '../../panels/kit/dialog.ts';
import type { ReadonlySignal } from '../../panels/kit/signals.ts';
import { waiting } from '../../panels/files/waiting.ts';
import { words } from '../../words/words.ts';
import type { WrittenSolve } from '../plans.ts';
import { textField } from './fields.ts';

/** An answer in words, and what using it does. */
export interface SaidAnswer {
  readonly sentence: string;
  use(): void;
}

export type SolveState =
  | { readonly kind: 'asking'; readonly refused?: string }
  | { readonly kind: 'working'; readonly share: number }
  | {
      readonly kind: 'done';
      readonly answers: readonly SaidAnswer[];
      readonly says: readonly string[];
    };

export interface SolveSeam {
  readonly state: ReadonlySignal<SolveState>;
  /** What the fields hold: the selection’s at first, then what was asked last. */
  readonly written: ReadonlySignal<WrittenSolve>;
  find(written: WrittenSolve): void;
  cancel(): void;
  /** Closes on an answer that was used. */
  readonly used: ReadonlySignal<boolean>;
}

/** "Make this cell equal that by changing this one between these bounds." */
export function solveDialog(seam: SolveSeam): void {
  openDialogBox(
    { title: words.choose.solve, className: 'exchange', closed: () => seam.cancel() },
    (close) => {
      const state = seam.state.value;
      if (seam.used.value) queueMicrotask(close);
      if (state.kind === 'working') return waiting(words.choose.solving, state.share, seam.cancel);
      const find = (event: Event) => {
        const fields = fieldsOf(event);
        const field = (name: keyof WrittenSolve) => fields.get(name) ?? '';
        seam.find({
          result: field('result'),
          wanted: field('wanted'),
          changing: field('changing'),
          from: field('from'),
          to: field('to'),
        });
      };
      const written = seam.written.value;
      return html`<form class="box-body stack" @submit=${find}>
        <div class="row">
          ${textField('result', words.choose.make, words.choose.makeHelp, written.result, written.result === '')}
          ${textField('wanted', words.choose.equal, words.choose.equalHelp, written.wanted, written.result !== '')}
        </div>
        ${textField('changing', words.choose.byChanging, words.choose.byChangingHelp, written.changing)}
        <div class="row">
          ${textField('from', words.choose.from, '', written.from)}
          ${textField('to', words.choose.to, '', written.to)}
        </div>
        ${
          state.kind === 'asking'
            ? html`<p class="remark" role="alert" ?hidden=${state.refused === undefined}>
                ${state.refused ?? ''}
              </p>`
            : answers(state)
        }
        <div class="row end">
          <button class="button ${state.kind === 'done' ? '' : 'lit'}">${words.choose.find}</button>
        </div>
      </form>`;
    },
  );
}

const answers = ({ answers, says }: Extract<SolveState, { kind: 'done' }>) =>
  html`<div class="stack" role="status">
    ${answers.length > 0 ? html`<p>${words.choose.answersAre(answers.length)}</p>` : nothing}
    ${answers.map(
      ({ sentence, use }) =>
        html`<div class="row">
          <span>${sentence}</span
          ><button type="button" class="button lit" @click=${use}>${words.choose.use}</button>
        </div>`,
    )}
    ${says.map((sentence) => html`<p>${sentence}</p>`)}
  </div>`;
