import { html } from 'lit-html';
import type { OutForm } from '../../files/out/forms.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { signal, type ReadonlySignal } from '../kit/signals.ts';
import { waiting } from './waiting.ts';

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

type Choice<Value> = readonly [value: Value, words: string, what: string];

const forms = (sheet: string): readonly Choice<OutForm>[] => [
  ['xlsx', 'xlsx', 'The whole book, for most spreadsheet programs.'],
  ['ods', 'ods', 'The whole book, in the open form of ISO 26300.'],
  ['csv', 'csv', `The sheet ${sheet} as shown: a table of text, columns by commas.`],
  ['tsv', 'tsv', `The same, columns by tabs.`],
];

const kinds: readonly Choice<'live' | 'values'>[] = [
  [
    'live',
    'Formulas that go on calculating',
    'Our functions are written out as their equations. Those without one go as values, with the formula in a note.',
  ],
  ['values', 'Values only', 'What each formula comes to now.'],
];

/** Asks for the form that a book goes out in. */
export function exportDialog(seam: ExportSeam): void {
  const form = signal<OutForm>('xlsx');
  const formulas = signal<'live' | 'values'>('live');
  const className = 'exchange';
  openDialogBox({ title: 'Export', className, closed: () => seam.cancel() }, (close) => {
    const state = seam.state.value;
    if (state.kind === 'done') queueMicrotask(close);
    if (state.kind !== 'asking') {
      return waiting(`Writing ${seam.title}`, state.kind === 'done' ? 1 : state.share, close);
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
        <legend>form</legend>
        ${forms(seam.sheet).map((one) => choice('form', one, form.value, false, (value) => (form.value = value)))}
      </fieldset>
      <fieldset class="choices">
        <legend>formulas</legend>
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
      <div class="row end"><button class="button lit" autofocus>Export</button></div>
    </form>`;
  });
}

function choice<Value extends string>(
  name: string,
  [value, words, what]: Choice<Value>,
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
    /><span><b>${words}</b><small>${what}</small></span></label
  >`;
}
