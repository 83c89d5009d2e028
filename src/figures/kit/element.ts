/** An SVG element as a value. Numbers are written with at most two decimals. */
export interface Drawn {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number | undefined>>;
  readonly children: readonly (Drawn | string)[];
}

/** A whole picture: its size in CSS pixels and what is in it. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly children: readonly Drawn[];
  /** Where what can be moved stands, in CSS pixels, and how many of them a metre is. */
  readonly held?: {
    readonly metre: number;
    readonly hands: readonly { readonly id: string; readonly x: number; readonly y: number }[];
  };
}

/** `tag` with attributes and children; what is empty or false among the children is left out. */
export function element(
  tag: string,
  attributes: Drawn['attributes'],
  ...children: readonly (Drawn | string | false | undefined)[]
): Drawn {
  const kept = children.filter(isThere);
  return { tag, attributes, children: kept };
}

const isThere = (one: Drawn | string | false | undefined): one is Drawn | string =>
  one !== undefined && one !== false && one !== '';

export const group = (
  attributes: Drawn['attributes'],
  children: readonly (Drawn | string | false | undefined)[],
): Drawn => element('g', attributes, ...children);

/** Hundredths of a pixel are enough for any screen and any paper. */
export const rounded = (value: number): number => Math.round(value * 100) / 100;

export const attributeText = (value: string | number): string =>
  typeof value === 'number' ? String(rounded(value)) : value;

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
/** No character that XML 1.0 refuses outright. */
const refused = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

const escaped = (text: string): string =>
  text.replace(refused, '').replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign);

/** The element as markup, for files. */
export function markup({ tag, attributes, children }: Drawn): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${escaped(attributeText(value ?? ''))}"`)
    .join('');
  if (children.length === 0) return `<${tag}${written}/>`;
  const inner = children.map((one) => (typeof one === 'string' ? escaped(one) : markup(one)));
  return `<${tag}${written}>${inner.join('')}</${tag}>`;
}
