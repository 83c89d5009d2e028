import { html } from 'lit-html';
import { fieldsOf, openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** What the selected cell should come to. The slip then says how far off it is. */
export function target(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: words.target.title }, (close) => {
    const keep = (event: Event) => {
      if (workbook.run(verbs.target, { text: (fieldsOf(event).get('target') ?? '').trim() }))
        close();
    };
    const { address, label } = workbook.entry.value;
    return html`<form class="box-body stack" @submit=${keep}>
      <label class="field"
        ><span>${words.target.shouldComeTo(address, label)}</span
        ><input class="input" name="target" autofocus autocomplete="off" spellcheck="false" />
        <small>${words.target.help}</small></label
      >
      <div class="row end"><button class="button lit">${words.target.keep}</button></div>
    </form>`;
  });
}
