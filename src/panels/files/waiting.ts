import { html, nothing } from 'lit-html';
import { words } from '../../words/words.ts';

/** While a file is read or written: how far it is, and a way to stop it. */
export function waiting(what: string, share: number | undefined, stop: () => void) {
  return html`<div class="box-body stack">
    <label class="field"
      ><span role="status">${what}</span><progress max="1" value=${share ?? nothing}></progress
    ></label>
    <div class="row end">
      <button class="button" autofocus @click=${stop}>${words.exchange.stop}</button>
    </div>
  </div>`;
}
