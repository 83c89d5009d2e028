import { html } from 'lit-html';
import { written } from '../kit/written.ts';
import type { CellChanged, Changed, ComparisonView, SheetChanged } from './view.ts';
import { words } from '../../words/words.ts';

/** Two states of a book: what stood there, what stands there. */
export function comparison({ before, after, book, sheets }: ComparisonView) {
  return html`
    <p class="compared"><span>${before}</span> → <span>${after}</span></p>
    ${
      book.length + sheets.length === 0
        ? html`<p class="none">${words.kept.same}</p>`
        : html`<p class="faint">${words.kept.typedOnly}</p>`
    }
    ${
      book.length > 0
        ? html`<section>
            <h3>${words.kept.book}</h3>
            ${table(book.map((one) => row(one, one.what)))}
          </section>`
        : ''
    }
    ${sheets.map(sheet)}
  `;
}

const sheet = ({ title, notes, cells, more }: SheetChanged) =>
  html`<section>
    <h3>${title}</h3>
    ${notes.length > 0 ? html`<p>${notes.join('; ')}</p>` : ''}
    ${cells.length > 0 ? table(cells.map((cell) => row(cell, label(cell), cell.notes))) : ''}
    ${more > 0 ? html`<p class="faint">${words.kept.moreCells(more)}</p>` : ''}
  </section>`;

const label = ({ what, address }: CellChanged) =>
  html`${what ? html`${what} ` : ''}<small>${address}</small>`;

const table = (rows: readonly unknown[]) =>
  html`<table class="changes-table">
    <thead>
      <tr>
        <th scope="col">${words.kept.where}</th>
        <th scope="col">${words.kept.was}</th>
        <th scope="col">${words.kept.is}</th>
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;

const row = (
  { before, after }: Pick<Changed, 'before' | 'after'>,
  where: unknown,
  notes: readonly string[] = [],
) =>
  html`<tr>
    <th scope="row">${where}</th>
    ${
      before === '' && after === ''
        ? html`<td colspan="2" class="faint">${notes.join(', ')}</td>`
        : html`<td>${value(before)}</td>
            <td>
              ${value(after)} ${notes.length > 0 ? html`<small>${notes.join(', ')}</small>` : ''}
            </td>`
    }
  </tr>`;

const value = (text: string) =>
  text === '' ? html`<span class="faint">${words.kept.nothing}</span>` : written(text);
