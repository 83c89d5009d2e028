import { html } from 'lit-html';
import { X } from 'lucide-static';
import { icon } from '../kit/icon.ts';
import { shape } from '../kit/shape.ts';
import { photoRow } from '../kit/photo.ts';
import { shown, written } from '../kit/written.ts';
import type { Screen } from '../screen.ts';
import type { Shell } from '../frame.ts';
import { links } from './links.ts';
import { verbs } from '../verbs.ts';
import type { Fact, Links, SlipView } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

const roles: Readonly<Record<SlipView['role'], string>> = {
  reading: words.slip.reading,
  choice: words.slip.choice,
  given: words.slip.given,
  answer: words.slip.answer,
  result: words.slip.result,
  words: words.slip.words,
  blank: words.slip.blank,
};

/** What is known about the selected cell: is that right, and why. */
export function slip(workbook: Workbook, screen: Screen, shell: Shell) {
  const view = workbook.slip.value;
  return html`
    <div class="drawer-head">
      <h2>${words.slip.title}</h2>
      <button class="glyph" aria-label=${words.slip.close} @click=${() => screen.toggle('slip')}>
        ${icon(X)}
      </button>
    </div>
    <div class="slip-body">
      <p class="where">${view.address} · ${roles[view.role]}</p>
      ${heading(view)}
      <p class="big ${view.shape ?? ''} ${view.value.text.length > 14 ? 'long' : ''}">
        ${view.shape ? shape(view.shape) : ''}${shown(view.value)}
      </p>
      ${facts(view)} ${rest(view, workbook)} ${why(view, shell)}
      ${view.remarks.map((remark) => html`<p class="remark">${remark}</p>`)}
      ${chips(words.slip.comesFrom, view.comesFrom, workbook)}
      ${chips(words.slip.goesTo, view.goesTo, workbook)} ${photoRow(workbook, view.photos ?? [])}
      ${links([view.value.text, view.note])} ${note(view, workbook)}
    </div>
  `;
}

/** The row's words are the title; a cell that has none is called by its column. */
function heading({ title, caption }: SlipView) {
  if (title === '') return caption ? html`<h2>${caption}</h2>` : '';
  return html`<h2>${title}</h2>
    ${caption ? html`<p class="caption">${caption}</p>` : ''}`;
}

function facts({ facts: list }: SlipView) {
  return list.length === 0 ? '' : html`<dl>${list.map(fact)}</dl>`;
}

const fact = ({ label, text, shape: kind }: Fact) =>
  html`<div class=${kind ?? ''}>
    <dt>${label}</dt>
    <dd>${kind ? shape(kind) : ''}${written(text)}</dd>
  </div>`;

/** The rest of the row: on a phone it is the point as a card, each line a way to its cell. */
function rest({ row }: SlipView, workbook: Workbook) {
  if (row.length === 0) return '';
  return html`<h3>${words.slip.inThisRow}</h3>
    <ul class="row-facts">
      ${row.map(
        ({ label, text, shape: kind, target }) =>
          html`<li>
            <button class=${kind ?? ''} @click=${() => workbook.jump(target)}>
              <span>${label}</span><b>${kind ? shape(kind) : ''}${written(text)}</b>
            </button>
          </li>`,
      )}
    </ul>`;
}

function why({ why: reason }: SlipView, shell: Shell) {
  if (!reason) return '';
  return html`<h3>${words.slip.why}</h3>
    <div class="worked">
      ${
        reason.worked.length > 0
          ? html`<p class="formula">
              ${reason.worked.map(({ text, number }) => (number ? html`<em>${text}</em>` : text))}
            </p>`
          : ''
      }
      ${reason.handed.length > 0 ? html`<dl>${reason.handed.map(fact)}</dl>` : ''}
      <p>${reason.summary}</p>
      <button class="link" @click=${() => shell.open('function', reason.function)}>
        ${reason.function}
      </button>
    </div>`;
}

/** Longer lists say how many more there are: a key side may go to thousands of cells. */
function chips(heading: string, { links: all, more }: Links, workbook: Workbook) {
  if (all.length === 0) return '';
  return html`<h3>${heading}</h3>
    <ul class="chips">
      ${all.map(
        ({ label, target }) =>
          html`<li>
            <button class="chip" @click=${() => workbook.jump(target)}>
              <span>${label}</span>
            </button>
          </li>`,
      )}
      ${more > 0 ? html`<li class="faint">${words.slip.more(more)}</li>` : ''}
    </ul>`;
}

function note(view: SlipView, workbook: Workbook) {
  return html`<label class="note">
    <span>${words.slip.note}</span>
    <textarea
      rows="2"
      placeholder=${words.slip.writeNote}
      .value=${view.note}
      @change=${(event: Event) =>
        workbook.run(verbs.setNote, { note: (event.currentTarget as HTMLTextAreaElement).value })}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === 'Escape') (event.currentTarget as HTMLTextAreaElement).blur();
        event.stopPropagation();
      }}
    ></textarea>
  </label>`;
}
