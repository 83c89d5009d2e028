import { html } from 'lit-html';
import { broken } from '../kit/broken.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** One sentence at a time: what was done, or why it was not. Read out as it appears. */
export function notice(workbook: Workbook) {
  const now = workbook.notice.value;
  if (!now) return '';
  return html`<div class="notice ${now.tone}">
    ${'cause' in now ? broken(now.sentence, now.cause) : html`<span>${now.sentence}</span>`}
    ${
      now.undo
        ? html`<button class="link" @click=${() => workbook.run(verbs.undo)}>
            ${words.kit.undo}
          </button>`
        : ''
    }
  </div>`;
}
