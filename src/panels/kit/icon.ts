import { html } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';

const drawn = new Map<string, SVGElement>();

/** An icon of the library as an element: parsed, never set as markup. */
function draw(svg: string): SVGElement {
  let original = drawn.get(svg);
  if (!original) {
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    original = document.importNode(parsed, true) as Element as SVGElement;
    original.setAttribute('class', 'icon');
    original.setAttribute('aria-hidden', 'true');
    drawn.set(svg, original);
  }
  return original.cloneNode(true) as SVGElement;
}

export const icon = (svg: string) => html`${guard([svg], () => draw(svg))}`;
