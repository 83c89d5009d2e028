import { html, nothing } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { signal } from '../kit/signals.ts';
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

/** What is over sooner is not spoken of. */
const patience = 500;

/** Says that something takes its time, once it does, and lets it be stopped. Returns how to say it is over. */
export function waitingBox(title: string, what: string, stop: () => void): () => void {
  const over = signal(false);
  const timer = setTimeout(() => {
    openDialogBox({ title, closed: () => over.value || stop() }, (close) => {
      if (over.value) queueMicrotask(close);
      return waiting(what, undefined, close);
    });
  }, patience);
  return () => {
    clearTimeout(timer);
    over.value = true;
  };
}
