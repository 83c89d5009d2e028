import { attributeText, type Drawing, type Drawn } from '../../figures/kit/element.ts';

const namespace = 'http://www.w3.org/2000/svg';

/** A drawing as an element of the page, at its own size: built node by node, never set as markup. */
export function svgOf(drawing: Drawing, label: string): SVGElement {
  const { width, height, children } = drawing;
  return build({
    tag: 'svg',
    attributes: {
      width: Math.ceil(width),
      height: Math.ceil(height),
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      role: 'img',
      'aria-label': label,
    },
    children,
  });
}

function build({ tag, attributes, children }: Drawn): SVGElement {
  const made = document.createElementNS(namespace, tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined) made.setAttribute(name, attributeText(value));
  for (const child of children) made.append(typeof child === 'string' ? child : build(child));
  return made as SVGElement;
}
