import { html } from 'lit-html';
import { fieldsOf, openDialogBox } from '../../panels/kit/dialog.ts';
import type { ReadonlySignal } from '../../panels/kit/signals.ts';
import { waiting } from '../../panels/files/waiting.ts';
import { words } from '../../words/words.ts';
import type { WrittenAxis, WrittenSweep } from '../plans.ts';
import { textField } from './fields.ts';

export type SweepState =
  | { readonly kind: 'asking'; readonly refused?: string }
  | { readonly kind: 'working'; readonly share: number }
  | { readonly kind: 'done' };

export interface SweepSeam {
  readonly state: ReadonlySignal<SweepState>;
  /** What the fields hold: the selection’s at first, then what was asked last. */
  readonly written: ReadonlySignal<WrittenSweep>;
  run(written: WrittenSweep): void;
  cancel(): void;
}

/** One or two cells over values, and what is read each time, as a sheet of its own. */
export function sweepDialog(seam: SweepSeam): void {
  openDialogBox(
    { title: words.choose.sweep, className: 'exchange', closed: () => seam.cancel() },
    (close) => {
      const state = seam.state.value;
      if (state.kind === 'done') queueMicrotask(close);
      if (state.kind !== 'asking')
        return waiting(
          words.choose.sweeping,
          state.kind === 'working' ? state.share : 1,
          seam.cancel,
        );
      const run = (event: Event) => {
        const fields = fieldsOf(event);
        const axis = (name: string): WrittenAxis => ({
          cell: fields.get(name) ?? '',
          list: fields.get(`${name}-list`) ?? '',
          first: fields.get(`${name}-first`) ?? '',
          last: fields.get(`${name}-last`) ?? '',
          count: fields.get(`${name}-count`) ?? '',
        });
        seam.run({
          down: axis('down'),
          across: axis('across'),
          read: fields.get('read') ?? '',
          live: fields.has('live'),
        });
      };
      const { down, across, read, live = false } = seam.written.value;
      return html`<form class="box-body stack" @submit=${run}>
        ${axisFields('down', words.choose.vary, words.choose.varyHelp, down)}
        <details ?open=${across.cell !== ''}>
          <summary>${words.choose.andVary}</summary>
          ${axisFields('across', words.choose.andVary, words.choose.andVaryHelp, across)}
        </details>
        ${textField('read', words.choose.read, words.choose.readHelp, read)}
        <label class="check"
          ><input
            type="checkbox"
            name="live"
            .defaultChecked=${live}
          />${words.choose.followHelp}</label
        >
        <p class="remark" role="alert" ?hidden=${state.refused === undefined}>
          ${state.refused ?? ''}
        </p>
        <div class="row end"><button class="button lit">${words.choose.run}</button></div>
      </form>`;
    },
  );
}

const axisFields = (
  name: string,
  label: string,
  help: string,
  { cell, list, first, last, count }: WrittenAxis,
) =>
  html`<div class="stack">
    ${textField(name, label, help, cell, name === 'down' && cell === '')}
    ${textField(`${name}-list`, words.choose.over, words.choose.overHelp, list, name === 'down' && cell !== '')}
    <div class="row">
      ${textField(`${name}-first`, words.choose.first, '', first)}
      ${textField(`${name}-last`, words.choose.last, '', last)}
      ${textField(`${name}-count`, words.choose.many, '', count)}
    </div>
  </div>`;
