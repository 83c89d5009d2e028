import { html } from 'lit-html';
import type { FunctionPage } from '../../reference/page.ts';
import { spoken } from '../../reference/spoken.ts';
import { equationOf, type Equation } from '../../reference/typeset.ts';
import { mathematics } from './mathematics.ts';
import { words } from '../../words/words.ts';

/** How a function is worked out, as it would stand on paper. */
export function equation({ name, equation: text, plain }: FunctionPage) {
  if (text === undefined) return '';
  const printed = plain.expands ? equationOf(text) : undefined;
  return html`<h4>${words.reference.workedOut}</h4>
    ${printed ? lines(name, printed) : html`<p class="equation in-words">${raised(text)}</p>`}`;
}

function lines(name: string, { is, where }: Equation) {
  const all = [
    { name, is },
    ...where.map(({ letter, is: meant }) => ({ name: letter, is: meant })),
  ];
  return html`<div
    class="equation"
    tabindex="0"
    role="group"
    aria-label=${words.reference.equation}
  >
    ${all.map(
      (line, index) =>
        html`<p>
          ${index === 1 ? html`<span class="where">${words.reference.where}</span>` : ''}
          <span
            class="math"
            role="math"
            aria-label=${words.reference.equals(line.name, spoken(line.is))}
            ><span class=${index === 0 ? 'called' : 'word'}>${line.name}</span
            ><span class="sign">=</span>${mathematics(line.is)}</span
          >
        </p>`,
    )}
  </div>`;
}

/** An equation in words, with its powers raised: `2^(k / 2p)`, `2^−loss`. */
function raised(text: string) {
  return text
    .replaceAll(/\^([−±]?[\p{L}\p{N}.]+)/gu, '^($1)')
    .split(/\^\(([^()]*)\)/)
    .map((piece, index) => (index % 2 === 1 ? html`<sup>${piece}</sup>` : piece));
}
