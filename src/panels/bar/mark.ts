import { svg, html } from 'lit-html';

/** Our sign: two whole stops and, lit between them, the half. */
export const mark = () =>
  html`<svg class="mark" viewBox="0 0 24 24" aria-hidden="true">
    ${svg`<path class="stops" d="M4 4v16M20 4v16M4 20h16" />
    <path class="half" d="M12 11v9" /><circle class="half-light" cx="12" cy="6" r="2" />`}
  </svg>`;
