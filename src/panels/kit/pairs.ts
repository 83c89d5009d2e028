import { html, nothing } from 'lit-html';
import { written } from './written.ts';

interface Pair {
  readonly label: string;
  readonly text: string;
}

/** What is what, one below the other; nothing where there is none. */
export const pairs = (all: readonly Pair[], className = '') =>
  all.length === 0
    ? nothing
    : html`<dl class=${className || nothing}>
        ${all.map(
          ({ label, text }) =>
            html`<div>
              <dt>${label}</dt>
              <dd>${written(text)}</dd>
            </div>`,
        )}
      </dl>`;
