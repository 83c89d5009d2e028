import { html } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import type { Shell } from '../frame.ts';
import { openDialogBox } from '../kit/dialog.ts';
import type { Workbook } from '../workbook.ts';
import { browse, type Browse } from './browse.ts';
import { functionPage } from './function-page.ts';
import { list, showInList } from './list.ts';
import { toPage } from './to-page.ts';
import { opening } from './opening.ts';
import { words } from '../../words/words.ts';

/** Every function of the library: found by the words of the trade, explained, and put to use. */
export function reference(workbook: Workbook, shell: Shell, at?: string): void {
  const here = browse(workbook.functions, at);
  openDialogBox({ title: words.reference.title, className: 'reference' }, (close) => {
    const page = here.page.value;
    return html`<div
      class="reference-body"
      data-reading=${here.reading.value}
      @keydown=${(event: KeyboardEvent) => toSearch(event, here)}
    >
      ${list(here)}
      ${keyed(
        page?.name,
        html`<article
          class="reference-page prose"
          tabindex="0"
          aria-label=${page?.name ?? words.reference.howToRead}
        >
          ${page ? functionPage(page, here, workbook, close) : opening(here, shell)}
        </article>`,
      )}
    </div>`;
  });
  showInList(here, 'center');
  if (here.reading.value) toPage();
}

/** Whoever types looks for something; `/` goes to the search as well. */
function toSearch(event: KeyboardEvent, here: Browse): void {
  const { key, target, currentTarget } = event;
  if (key === 'F1') event.preventDefault();
  const typing = target instanceof HTMLInputElement && (key !== '/' || target.value !== '');
  if (event.altKey || event.ctrlKey || event.metaKey || typing) return;
  if (key.length !== 1 || key === ' ') return;
  here.reading.value = false;
  const field = (currentTarget as HTMLElement).querySelector('input');
  field?.focus();
  field?.select();
  if (key === '/') event.preventDefault();
}
