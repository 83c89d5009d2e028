import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Where we are, and a place to write where to go: an address, a name, a sheet. */
export function nameBox(workbook: Workbook) {
  const { address, label } = workbook.entry.value;
  const onKey = (event: KeyboardEvent) => {
    const input = event.currentTarget as HTMLInputElement;
    if (event.key === 'Enter') {
      // The rest of this key press must not reach the grid, which has the focus then.
      event.preventDefault();
      const reason = workbook.jumpTo(input.value);
      if (reason) {
        workbook.say(reason);
        input.select();
      }
    } else if (event.key === 'Escape') {
      input.value = address;
      workbook.cancel();
    } else return;
    event.stopPropagation();
  };
  return html`<label class="name-box">
    <input
      aria-label=${words.entry.goTo}
      autocomplete="off"
      spellcheck="false"
      size=${Math.max(3, address.length)}
      .value=${live(address)}
      @focus=${(event: Event) => (event.currentTarget as HTMLInputElement).select()}
      @blur=${(event: Event) => ((event.currentTarget as HTMLInputElement).value = workbook.entry.value.address)}
      @keydown=${onKey}
    />
    <span>${label}</span>
  </label>`;
}
