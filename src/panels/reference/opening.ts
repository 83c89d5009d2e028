import { html } from 'lit-html';
import { manners } from '../../reference/manners.ts';
import type { Shell } from '../frame.ts';
import type { Browse } from './browse.ts';
import { words } from '../../words/words.ts';

/** What holds for every function, until one is chosen. */
export function opening({ groups }: Browse, shell: Shell) {
  const count = groups.value.reduce((sum, { functions }) => sum + functions.length, 0);
  return html`
    <p class="lead">${words.reference.opening}</p>
    <p>${words.reference.listed(count, shell.keys('F1'))}</p>
    <h4>${words.reference.holdsForAll}</h4>
    <ul class="manners">
      ${manners.map((one) => html`<li>${withCode(one)}</li>`)}
    </ul>
  `;
}

const withCode = (text: string) =>
  text.split('`').map((piece, index) => (index % 2 === 1 ? html`<code>${piece}</code>` : piece));
