import { html } from 'lit-html';

/** Rows under captions, the first cell of each its heading; scrolls sideways where it is wider than its place. */
export const table = (
  captions: readonly string[],
  rows: readonly (readonly unknown[])[],
  name = captions[0] ?? '',
) =>
  html`<div class="scroll" tabindex="0" role="group" aria-label=${name}>
    <table>
      <thead>
        <tr>
          ${captions.map((caption) => html`<th scope="col">${caption}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([first, ...rest]) =>
            html`<tr>
              <th scope="row">${first}</th>
              ${rest.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
