import { html, nothing } from 'lit-html';

/** A line to write in, with its help below. */
export function textField(name: string, label: string, help: string, value: string) {
  return html`<label class="field"
    ><span>${label}</span
    ><input
      class="input"
      name=${name}
      .defaultValue=${value}
      autocomplete="off"
      spellcheck="false"
    />${help === '' ? nothing : html`<small>${help}</small>`}</label
  >`;
}
