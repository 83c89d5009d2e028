import { html, svg } from 'lit-html';
import type { Fence, Typeset } from '../../reference/typeset.ts';
import { words } from '../../words/words.ts';

/** A line that is stretched to the height of what it stands beside. */
const stretched = (className: string, path: string) =>
  html`<svg class=${className} viewBox="0 0 10 100" preserveAspectRatio="none" aria-hidden="true">
    ${svg`<path d=${path} vector-effect="non-scaling-stroke" />`}
  </svg>`;

const fences: Readonly<Record<Fence, readonly [left: string, right: string]>> = {
  brackets: ['M8 2Q0 50 8 98', 'M2 2Q10 50 2 98'],
  size: ['M5 0V100', 'M5 0V100'],
  floor: ['M4 0V98H10', 'M6 0V98H0'],
  ceiling: ['M10 2H4V100', 'M0 2H6V100'],
};
const brace = 'M9 2Q5 2 5 12V40Q5 50 1 50Q5 50 5 60V88Q5 98 9 98';
const radical = 'M0 62L3 56L6 97L10 2';

/** Mathematics from boxes and hairlines of our own: no typeface for it has to be there. */
export function mathematics(set: Typeset): unknown {
  if (set.kind === 'row') return set.parts.map(mathematics);
  if (set.kind === 'fraction')
    return html`<span class="fraction-of"
      ><span>${mathematics(set.over)}</span><span>${mathematics(set.under)}</span></span
    >`;
  if (set.kind === 'power')
    return html`<span class="power"
      >${mathematics(set.base)}<sup>${mathematics(set.exponent)}</sup></span
    >`;
  if (set.kind === 'logarithm')
    return html`<span class="function">log<sub>${set.base}</sub></span>`;
  if (set.kind === 'root')
    return html`<span class="root"
      >${stretched('radical', radical)}<span>${mathematics(set.of)}</span></span
    >`;
  if (set.kind === 'fence') {
    const [left, right] = fences[set.fence];
    return html`<span class="fence"
      >${stretched('', left)}<span>${mathematics(set.of)}</span>${stretched('', right)}</span
    >`;
  }
  if (set.kind === 'cases')
    return html`<span class="fence"
      >${stretched('', brace)}<span class="cases"
        >${set.cases.map(
          ({ is, when }) =>
            html`<span>${mathematics(is)}</span
              ><span
                >${when ? html`<i>${words.reference.if}</i> ${mathematics(when)}` : html`<i>${words.reference.otherwise}</i>`}</span
              >`,
        )}</span
      ></span
    >`;
  return html`<span class=${set.kind}>${set.text}</span>`;
}
