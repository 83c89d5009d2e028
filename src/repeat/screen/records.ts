import { html } from 'lit-html';
import { lightsIn, type Record } from '../../book/records.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { fieldsOf, openDialogBox } from '../../panels/kit/dialog.ts';
import { signal, type Signal } from '../../panels/kit/signals.ts';
import type { Workbook } from '../../panels/workbook.ts';
import { words } from '../../words/words.ts';
import type { RecordsSeam, Told } from './seam.ts';
import { recordView } from './view.ts';

interface State {
  /** The record in view; all of them where it is null. */
  readonly shown: string | null;
  readonly refused: string;
}

/** The set-ups that are recorded in the book: make one, look at one, repeat it, carry it away. */
export function recordsDialog(
  seam: RecordsSeam,
  workbook: Workbook,
  writing: WritingSettings,
): void {
  const state = signal<State>({ shown: null, refused: '' });
  openDialogBox({ title: words.repeat.records, className: 'wide-box records' }, (close) => {
    const records = seam.records.value;
    const shown = records.find(({ id }) => id === state.value.shown);
    const refused = html`<p class="remark" role="alert" ?hidden=${state.value.refused === ''}>
      ${state.value.refused}
    </p>`;
    if (shown) {
      return html`<div class="box-body stack">
        <div class="verbs">
          <button class="button" @click=${() => put(state, { shown: null, refused: '' })}>
            ${words.repeat.back}
          </button>
          ${verbs(seam, shown, state, close)}
        </div>
        ${refused} ${recordView(shown, workbook, writing)}
      </div>`;
    }
    return html`<div class="box-body stack">
      ${form(seam, state)} ${refused}
      <section>
        <h3>${words.repeat.kept}</h3>
        ${
          records.length === 0
            ? html`<p class="none">${words.repeat.none}</p>`
            : html`<ul class="versions">
                ${records.map((record) => line(seam, record, state, close))}
              </ul>`
        }
        <div class="verbs">
          <button
            class="button"
            title=${words.repeat.openHelp}
            @click=${() => void seam.open().then((reason) => put(state, { refused: reason ?? '' }))}
          >
            ${words.repeat.open}
          </button>
          <button
            class="button"
            @click=${() => {
              close();
              seam.walk();
            }}
          >
            ${words.repeat.walk}
          </button>
        </div>
      </section>
    </div>`;
  });
}

const put = (state: Signal<State>, part: Partial<State>) =>
  (state.value = { ...state.value, ...part });

function line(seam: RecordsSeam, record: Record, state: Signal<State>, close: () => void) {
  const { name, date, time, place, points } = record;
  return html`<li>
    <div>
      <b class="named">${name}</b>
      <span>${words.repeat.dateAndPlace(date, time, place === name ? '' : place)}</span>
      <span>${words.repeat.count(points.length, lightsIn(record))}</span>
    </div>
    <div class="verbs">
      <button
        class="button"
        aria-label=${words.repeat.viewOne(name)}
        @click=${() => put(state, { shown: record.id, refused: '' })}
      >
        ${words.repeat.view}
      </button>
      ${repeating(seam, record, state, close)}
    </div>
  </li>`;
}

/** What is done with a record: each makes a sheet and goes to it. */
function repeating(seam: RecordsSeam, record: Record, state: Signal<State>, close: () => void) {
  const make = (reason: string | undefined) => {
    if (reason === undefined) close();
    else put(state, { refused: reason });
  };
  return seam.makes.map(
    (one) =>
      html`<button class="button" @click=${() => make(one.make(record))}>${one.name}</button>`,
  );
}

const verbs = (seam: RecordsSeam, record: Record, state: Signal<State>, close: () => void) =>
  html`${repeating(seam, record, state, close)}
    <button class="button" @click=${() => seam.save(record)}>${words.repeat.save}</button>
    <button
      class="button"
      @click=${() => {
        put(state, { shown: null });
        seam.remove(record.id);
      }}
    >
      ${words.repeat.delete}
    </button>`;

const first = [
  ['name', words.repeat.name],
  ['place', words.repeat.place],
] as const;
const further = [
  ['by', words.repeat.by],
  ['meter', words.repeat.meter],
  ['offset', words.repeat.offset],
  ['spread', words.repeat.spread],
] as const;

/** Filled in already: one press records the sheet in view. */
function form(seam: RecordsSeam, state: Signal<State>) {
  const suggested: Partial<{ readonly [name: string]: string }> = seam.suggested;
  const take = (event: Event) => {
    const told = toldBy(fieldsOf(event), seam);
    put(state, { refused: ('reason' in told ? told.reason : seam.record(told.told)) ?? '' });
  };
  const field = ([name, label]: readonly [name: string, label: string]) =>
    html`<label class="field"
      ><span>${label}</span
      ><input
        class="input"
        name=${name}
        autocomplete="off"
        ?required=${name === 'name'}
        .value=${suggested[name] ?? ''}
    /></label>`;
  return html`<form @submit=${take}>
    <h3>${words.repeat.here}</h3>
    <div class="pair">${first.map(field)}</div>
    <details>
      <summary>${words.repeat.more}</summary>
      <div class="pair">${further.map(field)}</div>
      <label class="field"
        ><span>${words.repeat.note}</span><textarea class="input" name="note" rows="2"></textarea>
      </label>
    </details>
    <div class="row end">
      <button class="button lit" autofocus>${words.repeat.record}</button>
    </div>
  </form>`;
}

function toldBy(
  said: ReadonlyMap<string, string>,
  seam: RecordsSeam,
): { readonly told: Told } | { readonly reason: string } {
  const text = (name: string) => said.get(name)?.trim() ?? '';
  const amounts: { [name: string]: number } = {};
  for (const [name, label] of [
    ['offset', words.repeat.offset],
    ['spread', words.repeat.spread],
  ] as const) {
    if (text(name) === '') continue;
    const stops = seam.stops(text(name));
    if (stops === undefined) return { reason: words.repeat.badNumber(label, text(name)) };
    amounts[name] = stops;
  }
  const meter = text('meter');
  const { spread } = amounts;
  return {
    told: {
      name: text('name'),
      place: text('place'),
      by: text('by'),
      note: text('note'),
      ...((meter !== '' || Object.keys(amounts).length > 0) && {
        meter: {
          name: meter || words.repeat.meter,
          ...amounts,
          ...(spread !== undefined && { spread: Math.abs(spread) }),
        },
      }),
    },
  };
}
