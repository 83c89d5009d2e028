const tokens =
  /<!--[\s\S]*?-->|<(style|script)\b[\s\S]*?<\/\1\s*>|<\/?([a-z][a-z0-9]*)\b[^>]*>|[^<]+|</gi;

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
};

/**
 * The cells of the first table in a piece of HTML as they are read, which is how other programs put
 * values beside formulas on the clipboard. Only words are taken: nothing of it becomes a page.
 */
export function htmlTable(html: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let inCell = false;
  for (const [token, , name = ''] of html.matchAll(tokens)) {
    const tag = name.toLowerCase();
    const isEnd = token.startsWith('</');
    if (tag === 'table' && isEnd) break;
    if (tag === 'tr') {
      inCell = false;
      if (!isEnd) rows.push([]);
    } else if (tag === 'td' || tag === 'th') {
      inCell = !isEnd;
      if (inCell) rows.at(-1)?.push('');
    } else if (inCell && (tag === 'br' || !token.startsWith('<'))) {
      const row = rows.at(-1);
      row?.push(`${row.pop() ?? ''}${tag === 'br' ? ' ' : decoded(token)}`);
    }
  }
  return rows.map((row) => row.map((cell) => cell.replace(/\s+/g, ' ').trim()));
}

const decoded = (text: string): string =>
  text.replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z]+));/gi, (all, decimal, hex, name) => {
    if (typeof name === 'string') return entities[name.toLowerCase()] ?? all;
    const code = typeof decimal === 'string' ? Number(decimal) : parseInt(String(hex), 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : String(all);
  });

/** The same, where there are formulas in the tab-separated text beside it and both are of one size. */
export function valuesBeside(html: string, text: string): readonly (readonly string[])[] {
  if (!/(?:^|[\t\n])"?=/.test(text)) return [];
  const rows = htmlTable(html);
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '').split('\n');
  const isAlike =
    rows.length === lines.length &&
    rows.every((row, index) => row.length === lines[index]?.split('\t').length);
  return isAlike ? rows : [];
}
