import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { signal } from '../kit/signals.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { SearchFor } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Find and replace, beside the page so that what is found stays in view. */
export function replace(workbook: Workbook, _shell: Shell): void {
  const wanted = signal<SearchFor>({ text: '', matchCase: false, whole: false, everywhere: false });
  const by = signal('');
  const said = signal('');
  const change = (part: Partial<SearchFor>) => {
    wanted.value = { ...wanted.value, ...part };
    said.value = '';
  };
  const step = (way: 1 | -1) => {
    said.value = wanted.value.text === '' ? '' : workbook.findNext(wanted.value, way);
  };
  const all = () => workbook.run(verbs.replaceAll, { ...wanted.value, by: by.value });
  openDialogBox({ title: words.find.title, modeless: true, className: 'side-box' }, () => {
    const box = (key: 'matchCase' | 'whole' | 'everywhere', said: string) =>
      html`<label class="check"
        ><input
          type="checkbox"
          .checked=${wanted.value[key]}
          @change=${(event: Event) =>
            change({ [key]: (event.currentTarget as HTMLInputElement).checked })}
        />${said}</label
      >`;
    return html`<form
      class="box-body stack"
      @submit=${(event: Event) => {
        event.preventDefault();
        step(1);
      }}
    >
      <label class="field"
        ><span>${words.find.find}</span
        ><input
          class="input"
          autofocus
          autocomplete="off"
          spellcheck="false"
          .value=${wanted.value.text}
          @input=${(event: Event) => change({ text: (event.currentTarget as HTMLInputElement).value })}
      /></label>
      <label class="field"
        ><span>${words.find.replaceBy}</span
        ><input
          class="input"
          autocomplete="off"
          spellcheck="false"
          .value=${by.value}
          @input=${(event: Event) => (by.value = (event.currentTarget as HTMLInputElement).value)}
      /></label>
      <div class="checks">
        ${box('matchCase', words.find.capitals)} ${box('whole', words.find.wholeCell)}
        ${box('everywhere', words.find.allSheets)}
      </div>
      <p class="faint" role="status">${said.value}</p>
      <div class="row end">
        <button type="button" class="button" @click=${() => step(-1)}>
          ${words.find.previous}
        </button>
        <button class="button lit">${words.find.next}</button>
        <button type="button" class="button" ?disabled=${wanted.value.text === ''} @click=${all}>
          ${words.find.replaceAll}
        </button>
      </div>
    </form>`;
  });
}
