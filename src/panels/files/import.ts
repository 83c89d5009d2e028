import { html, nothing } from 'lit-html';
import { quantityNames } from '../../../functions/quantities/names.ts';
import { units } from '../../../functions/quantities/units.ts';
import type { Choice } from '../../files/in/build.ts';
import type { Guess } from '../../files/in/guess.ts';
import type { Imported } from '../../files/in/read.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { segments } from '../kit/segments.ts';
import { signal, type ReadonlySignal } from '../kit/signals.ts';
import { waiting } from './waiting.ts';
import { words } from '../../words/words.ts';

export type ImportState =
  | { readonly kind: 'reading' }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'ready'; readonly imported: Imported };

/** Where the sheets of the file go. */
export type Into = 'here' | 'new';

/** What the dialog shows of a file that comes in, and what it may ask for. */
export interface ImportSeam {
  /** Of the file. */
  readonly name: string;
  readonly state: ReadonlySignal<ImportState>;
  /** Whether a book is open that the sheets could go into. */
  readonly open: boolean;
  /** Reads a table of text again by this decimal sign. */
  readAgain(decimal: '.' | ','): void;
  cancel(): void;
  /** Undefined where it was taken in, else why not. */
  take(into: Into, choices: ReadonlyMap<string, Choice>): string | undefined;
}

/** Shows what a file holds and how it will be read, before anything is taken in. */
export function importDialog(seam: ImportSeam): void {
  const choices = signal<ReadonlyMap<string, Choice>>(new Map());
  const into = signal<Into>(seam.open ? 'here' : 'new');
  const refused = signal('');
  const className = 'wide-box exchange';
  openDialogBox(
    { title: words.exchange.import, className, closed: () => seam.cancel() },
    (close) => {
      const state = seam.state.value;
      if (state.kind === 'reading')
        return waiting(words.exchange.reading(seam.name), undefined, close);
      if (state.kind === 'refused') return refusal(state.reason, close);
      const { imported } = state;
      const choose = (id: string, choice: Choice) =>
        (choices.value = new Map([...choices.value, [id, choice]]));
      return html`<form
        class="box-body stack"
        @submit=${(event: Event) => {
          event.preventDefault();
          const reason = seam.take(into.value, choices.value);
          refused.value = reason ?? '';
          if (reason === undefined) close();
        }}
      >
        <p>${summary(seam.name, imported)}</p>
        ${imported.decimal ? decimals(imported.decimal, seam) : nothing}
        ${guesses(imported.guessed.guesses, choices.value, choose)} ${leftOut(imported.leftOut)}
        <div class="row end">
          ${
            seam.open
              ? segments(
                  'into',
                  words.exchange.whereTo,
                  [
                    { value: 'here', label: words.exchange.intoBook },
                    { value: 'new', label: words.exchange.newBook },
                  ],
                  into.value,
                  (value) => (into.value = value),
                )
              : nothing
          }
          <button class="button lit" autofocus>${words.exchange.import}</button>
        </div>
        <p class="remark" role="alert" ?hidden=${refused.value === ''}>${refused.value}</p>
      </form>`;
    },
  );
}

function refusal(reason: string, close: () => void) {
  return html`<div class="box-body stack">
    <p role="alert">${reason}</p>
    <div class="row end">
      <button class="button lit" autofocus @click=${close}>${words.exchange.close}</button>
    </div>
  </div>`;
}

function summary(name: string, { book }: Imported): string {
  const cells = book.sheets.reduce((sum, sheet) => sum + sheet.cells.length, 0);
  const formulas = book.sheets.reduce(
    (sum, sheet) => sum + sheet.cells.filter(({ formula }) => formula !== undefined).length,
    0,
  );
  const sheets = book.sheets.map((sheet) => sheet.name).join(', ');
  return words.exchange.summary(name, cells, formulas, sheets);
}

function decimals(decimal: '.' | ',', seam: ImportSeam) {
  return html`<div class="row spread">
    <span>${words.exchange.decimalOfFile}</span>
    ${segments(
      'decimal',
      words.exchange.decimalOfFile,
      [
        { value: '.', label: words.exchange.point },
        { value: ',', label: words.exchange.comma },
      ],
      decimal,
      (sign) => seam.readAgain(sign),
    )}
  </div>`;
}

function guesses(
  found: readonly Guess[],
  choices: ReadonlyMap<string, Choice>,
  choose: (id: string, choice: Choice) => void,
) {
  if (found.length === 0) return nothing;
  return html`<section>
    <h3>${words.exchange.measures}</h3>
    <ul class="guesses">
      ${found.map((guess) => {
        const chosen = choices.get(guess.id) ?? (guess.doubt === undefined ? 'guess' : 'none');
        const by = guess.from === 'format' ? words.exchange.theirFormat : words.exchange.wordsAbove;
        return html`<li>
          <label
            ><span
              >${words.exchange.columnOf(guess.sheet, guess.place)}
              <small>${words.exchange.numbersBy(guess.count, by)}</small></span
            ><select
              class="input"
              @change=${(event: Event) =>
                choose(guess.id, (event.currentTarget as HTMLSelectElement).value as Choice)}
            >
              <option value="guess" ?selected=${chosen === 'guess'}>${meaning(guess)}</option>
              <option value="none" ?selected=${chosen === 'none'}>
                ${words.exchange.plainNumbers}
              </option>
              ${quantityNames
                .filter((name) => !unguessed.has(name) && name !== guess.quantity)
                .map(
                  (name) =>
                    html`<option value=${name} ?selected=${chosen === name}>
                      ${meaning({ quantity: name, unit: units[name].base })}
                    </option>`,
                )}
            </select></label
          >
          ${guess.doubt === undefined ? nothing : html`<small>${guess.doubt}</small>`}
        </li>`;
      })}
    </ul>
  </section>`;
}

/** No number measures these. */
const unguessed: ReadonlySet<string> = new Set(['text', 'truth', 'verdict', 'number']);

function meaning({ quantity, unit }: Pick<Guess, 'quantity' | 'unit'>): string {
  const { words: name } = units[quantity];
  return unit === '' || name.includes(unit) ? name : `${name}, ${unit}`;
}

function leftOut(sentences: readonly string[]) {
  if (sentences.length === 0) return nothing;
  return html`<section>
    <h3>${words.exchange.notTaken}</h3>
    <ul class="sentences">
      ${sentences.map((sentence) => html`<li>${sentence}</li>`)}
    </ul>
  </section>`;
}
