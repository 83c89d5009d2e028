import { html } from 'lit-html';
import { fieldsOf, openDialogBox } from '../kit/dialog.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';

/** Asks what a version is to be called, and keeps it. */
export function keepVersion(workbook: Workbook): void {
  openDialogBox({ title: 'Keep a version' }, (close) => {
    const keep = (event: Event) => {
      const name = fieldsOf(event).get('name')?.trim() ?? '';
      if (name === '') return;
      close();
      workbook.run(verbs.keepVersion, { name });
    };
    return html`<form class="box-body stack" @submit=${keep}>
      <label class="field"
        ><span>Name</span
        ><input
          class="input"
          name="name"
          aria-label="Name of the version"
          required
          maxlength="80"
          autocomplete="off"
          autofocus
        />
        <small>A version with a name stays for good: before the recce, as rigged, day 3.</small>
      </label>
      <div class="row end"><button class="button main">Keep it</button></div>
    </form>`;
  });
}
