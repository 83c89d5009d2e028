import { html } from 'lit-html';
import type { OutForm } from '../../files/out/forms.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { signal, type ReadonlySignal } from '../kit/signals.ts';
import { waiting } from './waiting.ts';
import { words } from '../../words/words.ts';

export type ExportState =
  | { readonly kind: 'asking'; readonly refused?: string }
  | { readonly kind: 'writing'; readonly share: number }
  | { readonly kind: 'done' };

export interface ExportSeam {
  readonly title: string;
  /** The sheet in view. */
  readonly sheet: string;
  readonly state: ReadonlySignal<ExportState>;
  write(form: OutForm, formulas: 'live' | 'values'): void;
  cancel(): void;
}

type Choice<Value> = readonly [value: Value, name: string, what: string];

const forms = (sheet: string): readonly Choice<OutForm>[] => [
  ['xlsx', 'xlsx', words.exchange.asXlsx],
  ['ods', 'ods', words.exchange.asOds],
  ['csv', 'csv', words.exchange.asCsv(sheet)],
  ['tsv', 'tsv', words.exchange.asTsv],
];

const kinds: readonly Choice<'live' | 'values'>[] = [
  ['live', words.exchange.goOnCalculating, words.exchange.goOnCalculatingHelp],
  ['values', words.exchange.valuesOnly, words.exchange.valuesOnlyHelp],
];

/** Asks for the form that a book goes out in. */
export function exportDialog(seam: ExportSeam): void {
  const form = signal<OutForm>('xlsx');
  const formulas = signal<'live' | 'values'>('live');
  const className = 'exchange';
  openDialogBox(
    { title: words.exchange.export, className, closed: () => seam.cancel() },
    (close) => {
      const state = seam.state.value;
      if (state.kind === 'done') queueMicrotask(close);
      if (state.kind !== 'asking') {
        return waiting(
          words.exchange.writing(seam.title),
          state.kind === 'done' ? 1 : state.share,
          close,
        );
      }
      const table = form.value === 'csv' || form.value === 'tsv';
      return html`<form
        class="box-body stack"
        @submit=${(event: Event) => {
          event.preventDefault();
          seam.write(form.value, formulas.value);
        }}
      >
        <fieldset class="choices">
          <legend>${words.exchange.form}</legend>
          ${forms(seam.sheet).map((one) => choice('form', one, form.value, false, (value) => (form.value = value)))}
        </fieldset>
        <fieldset class="choices">
          <legend>${words.exchange.formulas}</legend>
          ${kinds.map((one) =>
            choice(
              'formulas',
              one,
              table ? 'values' : formulas.value,
              table,
              (value) => (formulas.value = value),
            ),
          )}
        </fieldset>
        <p class="remark" role="alert" ?hidden=${state.refused === undefined}>
          ${state.refused ?? ''}
        </p>
        <div class="row end">
          <button class="button lit" autofocus>${words.exchange.export}</button>
        </div>
      </form>`;
    },
  );
}

function choice<Value extends string>(
  name: string,
  [value, title, what]: Choice<Value>,
  chosen: Value,
  disabled: boolean,
  choose: (value: Value) => void,
) {
  return html`<label class="choice"
    ><input
      type="radio"
      name=${name}
      value=${value}
      .checked=${value === chosen}
      ?disabled=${disabled}
      @change=${() => choose(value)}
    /><span><b>${title}</b><small>${what}</small></span></label
  >`;
}
