import { html } from 'lit-html';
import { spectraOf } from '../../book/spectra.ts';
import type { FigureKind, Input, Option } from '../../figures/figure.ts';
import type { Shell } from '../frame.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { signal, type Signal } from '../kit/signals.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import type { FigureForm } from './seam.ts';
import { words } from '../../words/words.ts';

/** Which kind of figure, of which cells. Beside the page, so that cells can be selected meanwhile. */
export function figureDialog(workbook: Workbook, _shell: Shell, about?: string): void {
  const { figures } = workbook;
  const [first] = figures.kinds.value;
  if (!first) {
    workbook.say(words.figures.notLoaded);
    return;
  }
  const before = figures.shown.value.find(({ id }) => id === about);
  const form = signal(figures.form(before?.kind ?? first.kind, about));
  const title = before ? words.figures.called(before.title) : words.figures.add;
  openDialogBox({ title, modeless: true, className: 'side-box figure-box' }, (close) => {
    const { value: now } = form;
    const kind = figures.kinds.value.find((one) => one.kind === now.kind) ?? first;
    const keep = (event: Event) => {
      event.preventDefault();
      const planned = figures.planned(form.value);
      const done = before
        ? workbook.run(verbs.changeFigure, { figure: before.id, planned })
        : workbook.run(verbs.addFigure, planned);
      if (done) close();
    };
    const field = (input: Input) => inputField(input, form, workbook);
    return html`<form class="box-body stack" @submit=${keep}>
      ${before ? '' : kinds(figures.kinds.value, form, workbook)}
      <label class="field"
        ><span>${words.figures.titleField}</span
        ><input
          class="input"
          name="title"
          autocomplete="off"
          .value=${now.title}
          @input=${(event: Event) => change(form, { title: textOf(event) })}
      /></label>
      ${kind.inputs.filter((input) => !aside(input)).map(field)}
      <details ?open=${before !== undefined || undefined}>
        <summary>${words.figures.moreCells}</summary>
        <div class="stack">${kind.inputs.filter(aside).map(field)}</div>
      </details>
      ${kind.options.map(
        ({ name, words: said, choices, shelf }) =>
          html`<label class="field"
            ><span>${said}</span
            ><select
              class="input"
              name=${name}
              @change=${(event: Event) =>
                change(form, { options: { ...form.value.options, [name]: textOf(event) } })}
            >
              ${[...choices, ...onShelf(workbook, shelf)].map(
                (one) =>
                  html`<option
                    value=${one.value}
                    ?selected=${one.value === (now.options[name] ?? choices[0]?.value)}
                  >
                    ${one.words}
                  </option>`,
              )}
            </select></label
          >`,
      )}
      <div class="row end">
        <button class="button lit">${before ? words.figures.keep : words.figures.addIt}</button>
      </div>
    </form>`;
  });
}

/** What of the book an option offers besides its own choices. */
function onShelf({ spectra }: Workbook, shelf: Option['shelf']): Option['choices'] {
  if (!shelf) return [];
  return spectraOf({ shelf: () => ({ version: 1, items: spectra.value }) })
    .filter(({ kind }) => shelf === 'spectra' || kind === 'transmission')
    .map(({ name }) => ({ value: name, words: name }));
}

/** What most figures do without. */
const aside = ({ optional, shown }: Input): boolean => optional === true && !shown;

const textOf = (event: Event): string =>
  (event.currentTarget as HTMLInputElement | HTMLSelectElement).value;

function change(form: Signal<FigureForm>, part: Partial<FigureForm>): void {
  form.value = { ...form.value, ...part };
}

function kinds(all: readonly FigureKind[], form: Signal<FigureForm>, workbook: Workbook) {
  return html`<fieldset class="kinds">
    <legend>${words.figures.kind}</legend>
    ${all.map(
      ({ kind, name, summary }) =>
        html`<label>
          <input
            type="radio"
            name="kind"
            value=${kind}
            ?autofocus=${kind === form.value.kind}
            .checked=${kind === form.value.kind}
            @change=${() => (form.value = workbook.figures.form(kind))}
          />
          <span><b>${name}</b><small>${summary}</small></span>
        </label>`,
    )}
  </fieldset>`;
}

/** An address may be written, or what is selected be taken. */
function inputField(input: Input, form: Signal<FigureForm>, workbook: Workbook) {
  const { name, words: said, help, optional } = input;
  const put = (text: string) => change(form, { fields: { ...form.value.fields, [name]: text } });
  const id = `figure-${name}`;
  return html`<div class="field figure-field">
    <label for=${id}>${said}</label>
    <div class="row">
      <input
        id=${id}
        class="input"
        name=${name}
        autocomplete="off"
        spellcheck="false"
        ?required=${!optional}
        aria-describedby=${help ? `${id}-help` : ''}
        .value=${form.value.fields[name] ?? ''}
        @input=${(event: Event) => put(textOf(event))}
      />
      <button
        type="button"
        class="button"
        aria-label=${words.figures.takeSelected(said)}
        @click=${() => put(workbook.entry.value.address)}
      >
        ${words.figures.selected}
      </button>
    </div>
    ${help ? html`<small id="${id}-help">${help}</small>` : ''}
  </div>`;
}
