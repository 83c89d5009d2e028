import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { pictureOf } from '../start/pictures.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** A new sheet for the open book: blank, or one that knows its job. */
export function addSheet(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: words.sheet.add, className: 'wide-box' }, (close) => {
    const add = (template: string | null) => {
      close();
      workbook.run(verbs.addSheet, { template });
    };
    return html`<ul class="box-body cards">
      <li>
        <button class="card" autofocus @click=${() => add(null)}>
          ${pictureOf('blank')}<b>${words.sheet.blank}</b><span>${words.sheet.blankHelp}</span>
        </button>
      </li>
      <li>
        <button
          class="card"
          @click=${() => {
            close();
            workbook.run(verbs.exercise);
          }}
        >
          ${pictureOf('blank')}<b>${words.sheet.exercise}</b
          ><span>${words.sheet.exerciseHelp}</span>
        </button>
      </li>
      ${workbook.start.value.templates.map(
        (one) =>
          html`<li>
            <button class="card" @click=${() => add(one.id)}>
              ${pictureOf(one.id)}<b>${one.title}</b><span>${one.purpose}</span>
            </button>
          </li>`,
      )}
    </ul>`;
  });
}
