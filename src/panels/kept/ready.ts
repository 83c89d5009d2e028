import { html } from 'lit-html';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** A quiet line at the foot of the screen while a newer build waits. It waits as long as one likes. */
export function readyLine(workbook: Workbook) {
  if (!workbook.updateReady.value) return '';
  return html`<p class="ready">
    <span>${words.kept.newVersionReady}</span>
    <button class="button lit" @click=${() => workbook.run(verbs.reload)}>
      ${words.kept.reload}
    </button>
    <button class="button" @click=${() => workbook.run(verbs.notNow)}>${words.kept.later}</button>
  </p>`;
}
