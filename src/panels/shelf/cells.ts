import { html } from 'lit-html';
import { Trash2 } from 'lucide-static';
import { icon } from '../kit/icon.ts';

/** The name of a thing on a shelf, to be typed over; `rename` says whether it was taken. */
export function nameField(name: string, label: string, rename: (wanted: string) => boolean) {
  return html`<input
    class="input"
    aria-label=${label}
    .value=${name}
    @change=${(event: Event) => {
      const input = event.currentTarget as HTMLInputElement;
      if (!rename(input.value)) input.value = name;
    }}
  />`;
}

export const removeButton = (label: string, remove: () => void) =>
  html`<button class="glyph" aria-label=${label} @click=${remove}>${icon(Trash2)}</button>`;
