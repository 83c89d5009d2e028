import { html, svg } from 'lit-html';
import type { Shape } from '../shown.ts';

const outlines: Record<Shape, unknown> = {
  over: svg`<path d="M6 2 11 10.5H1Z" fill="currentColor" />`,
  under: svg`<path d="M6 10 11 1.5H1Z" fill="currentColor" />`,
  agrees: svg`<path d="M1.5 4.2h9M1.5 7.8h9" stroke="currentColor" stroke-width="1.8" />`,
  waits: svg`<path d="M3 6h6" stroke="currentColor" stroke-width="1.6" />`,
  clips: svg`<path d="M1 1.2h10M6 3.4l4.6 7.4H1.4Z" fill="currentColor" stroke="currentColor" stroke-width="1.3" />`,
};

/** The shape before the words of a verdict: each differs in outline, colour only supports. */
export const shape = (kind: Shape) =>
  html`<svg class="shape ${kind}" viewBox="0 0 12 12" aria-hidden="true">${outlines[kind]}</svg>`;
