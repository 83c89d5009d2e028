import { html } from 'lit-html';
import { manners } from '../../reference/manners.ts';
import type { Shell } from '../frame.ts';
import type { Browse } from './browse.ts';

/** What holds for every function, until one is chosen. */
export function opening({ groups }: Browse, shell: Shell) {
  const count = groups.value.reduce((sum, { functions }) => sum + functions.length, 0);
  return html`
    <p class="lead">
      Type what you want to know, in the words of the trade: how far, too hot, which ratio.
    </p>
    <p>
      ${count} functions are listed. Arrow keys go through them, Enter reads on, and
      ${shell.keys('F1')} in a cell opens the one that it is made of.
    </p>
    <h4>what holds for all of them</h4>
    <ul class="manners">
      ${manners.map((one) => html`<li>${withCode(one)}</li>`)}
    </ul>
  `;
}

const withCode = (text: string) =>
  text.split('`').map((piece, index) => (index % 2 === 1 ? html`<code>${piece}</code>` : piece));
