import { html } from 'lit-html';
import { fieldsOf, openDialogBox } from '../kit/dialog.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Asks what a version is to be called, and keeps it. */
export function keepVersion(workbook: Workbook): void {
  openDialogBox({ title: words.kept.keep }, (close) => {
    const keep = (event: Event) => {
      const name = fieldsOf(event).get('name')?.trim() ?? '';
      if (name === '') return;
      close();
      workbook.run(verbs.keepVersion, { name });
    };
    return html`<form class="box-body stack" @submit=${keep}>
      <label class="field"
        ><span>${words.kept.name}</span
        ><input
          class="input"
          name="name"
          aria-label=${words.kept.nameOf}
          required
          maxlength="80"
          autocomplete="off"
          autofocus
        />
        <small>${words.kept.nameHelp}</small>
      </label>
      <div class="row end"><button class="button main">${words.kept.keepIt}</button></div>
    </form>`;
  });
}
