/** Characters that no XML document may hold. */
const forbidden =
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\n': '&#10;',
  '\t': '&#9;',
};

export const escaped = (text: string): string =>
  text.replace(forbidden, '\uFFFD').replace(/[&<>"\n\t]/g, (sign) => entities[sign] ?? sign);

/** An element; attributes that are undefined are left out. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  inside = '',
): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => (value === undefined ? '' : ` ${key}="${escaped(String(value))}"`))
    .join('');
  return inside === '' ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}

/** Text as OpenDocument keeps it: a paragraph a line, runs of blanks spelled out. */
export function paragraphs(text: string): string {
  return text
    .split(/\r\n?|\n/)
    .map((line) =>
      element(
        'text:p',
        {},
        escaped(line)
          .replaceAll('&#9;', '<text:tab/>')
          .replace(/^ +|(?<= ) +/g, (blanks) => element('text:s', { 'text:c': blanks.length })),
      ),
    )
    .join('');
}
