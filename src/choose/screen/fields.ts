import { html, nothing } from 'lit-html';

/** A line to write in, with its help below; `begin` where writing is to begin. */
export function textField(name: string, label: string, help: string, value: string, begin = false) {
  return html`<label class="field"
    ><span>${label}</span
    ><input
      class="input"
      name=${name}
      .defaultValue=${value}
      autocomplete="off"
      spellcheck="false"
      ?autofocus=${begin}
    />${help === '' ? nothing : html`<small>${help}</small>`}</label
  >`;
}
