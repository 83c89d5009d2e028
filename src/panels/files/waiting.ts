import { html, nothing } from 'lit-html';

/** While a file is read or written: how far it is, and a way to stop it. */
export function waiting(words: string, share: number | undefined, stop: () => void) {
  return html`<div class="box-body stack">
    <label class="field"
      ><span role="status">${words}</span><progress max="1" value=${share ?? nothing}></progress
    ></label>
    <div class="row end"><button class="button" autofocus @click=${stop}>Stop</button></div>
  </div>`;
}
