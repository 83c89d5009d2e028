import { html } from 'lit-html';
import { until } from 'lit-html/directives/until.js';
import type { Photo } from '../../book/types.ts';
import type { Workbook } from '../workbook.ts';
import { openDialogBox } from './dialog.ts';
import { words } from '../../words/words.ts';

/** The picture once it is there; words where it is not on this device. */
const picture = (workbook: Workbook, { hash, name }: Photo) => {
  const drawn = workbook
    .photo(hash)
    .then((url) =>
      url === undefined
        ? html`<span class="faint">${words.photo.elsewhere(name)}</span>`
        : html`<img src=${url} alt=${name} />`,
    );
  return until(drawn, html`<span class="faint">${name}</span>`);
};

/** Small pictures in a row; each opens large, and can be taken away where `drop` is given. */
export function photoRow(
  workbook: Workbook,
  photos: readonly Photo[],
  drop?: (photo: Photo) => void,
) {
  const open = (photo: Photo) =>
    openDialogBox(
      { title: photo.name || words.photo.photo, className: 'wide-box photo-box' },
      (close) => {
        const away = () => {
          close();
          drop?.(photo);
        };
        return html`<div class="box-body">
          ${picture(workbook, photo)}
          ${drop ? html`<button class="button" @click=${away}>${words.photo.takeAway}</button>` : ''}
        </div>`;
      },
    );
  return photos.length === 0
    ? ''
    : html`<ul class="photos">
        ${photos.map(
          (photo) =>
            html`<li>
              <button aria-label=${words.photo.called(photo.name)} @click=${() => open(photo)}>
                ${picture(workbook, photo)}
              </button>
            </li>`,
        )}
      </ul>`;
}
