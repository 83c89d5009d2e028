import { html } from 'lit-html';
import { written } from '../kit/written.ts';
import { words } from '../../words/words.ts';

/** What a figure says beyond its first sentence, folded away until it is wanted. */
export const furtherSentences = (rest: readonly string[]) =>
  rest.length > 0
    ? html`<details>
        <summary>${words.figures.inWords}</summary>
        <ul>
          ${rest.map((sentence) => html`<li>${written(sentence)}</li>`)}
        </ul>
      </details>`
    : '';
