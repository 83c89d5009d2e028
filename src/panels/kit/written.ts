import { html } from 'lit-html';
import { spelled } from './spelled.ts';
import type { Shown } from '../shown.ts';

/** A lone fraction such as the 2/3 of `1 2/3`; not f/2.8, not 25/50, not a date. */
const fraction = /(?<![\d/.])([1-9]\/(?:[2-9]|1[0-9]))(?![\d/.])/;

/** Text with thirds set as fractions, from figures of the typeface itself. */
export function written(text: string): unknown {
  const parts = spelled(text).split(fraction);
  if (parts.length === 1) return text;
  return parts.map((piece, index) =>
    index % 2 === 1 ? html`<span class="fraction">${piece}</span>` : piece,
  );
}

export const shown = ({ text, unit, tone }: Shown) =>
  html`<span class="shown ${tone ?? ''}"
    >${written(text)}${unit ? html` <small>${unit}</small>` : ''}</span
  >`;
