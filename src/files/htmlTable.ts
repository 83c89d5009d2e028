const entities: ReadonlyMap<string, string> = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
  ['nbsp', ' '],
]);

interface Piece {
  /** Of a tag its name in small letters; empty for words. */
  readonly tag: string;
  readonly isEnd: boolean;
  readonly words: string;
}

const words = (text: string): Piece => ({ tag: '', isEnd: false, words: text });
const start = /^<(\/?)([a-z][a-z0-9]*)\b/i;
/** Longer than any name of a tag. */
const longestName = 40;

/** Tags and the words between them, in one walk: whatever does not end ends it. */
function* piecesOf(html: string): Generator<Piece> {
  const small = html.toLowerCase();
  const after = (sought: string, from: number) => {
    const found = small.indexOf(sought, from);
    return found < 0 ? html.length : found + sought.length;
  };
  for (let at = 0; at < html.length;) {
    if (html[at] !== '<') {
      const end = small.indexOf('<', at);
      const to = end < 0 ? html.length : end;
      yield words(html.slice(at, to));
      at = to;
    } else if (html.startsWith('<!--', at)) at = after('-->', at + 4);
    else {
      const [, slash, name] = start.exec(html.slice(at, at + longestName)) ?? [];
      if (name === undefined) {
        yield words('<');
        at += 1;
        continue;
      }
      const tag = name.toLowerCase();
      yield { tag, isEnd: slash === '/', words: '' };
      at = after('>', at);
      if (slash === '' && (tag === 'style' || tag === 'script'))
        at = after('>', after(`</${tag}`, at));
    }
  }
}

/**
 * The cells of the first table in a piece of HTML as they are read, which is how other programs put
 * values beside formulas on the clipboard. Only words are taken: nothing of it becomes a page.
 */
export function htmlTable(html: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let inCell = false;
  for (const { tag, isEnd, words } of piecesOf(html)) {
    if (tag === 'table' && isEnd) break;
    if (tag === 'tr') {
      inCell = false;
      if (!isEnd) rows.push([]);
    } else if (tag === 'td' || tag === 'th') {
      inCell = !isEnd;
      if (inCell) rows.at(-1)?.push('');
    } else if (inCell && (tag === 'br' || tag === '')) {
      const row = rows.at(-1);
      row?.push(`${row.pop() ?? ''}${tag === 'br' ? ' ' : decoded(words)}`);
    }
  }
  return rows.map((row) => row.map((cell) => cell.replace(/\s+/g, ' ').trim()));
}

const decoded = (text: string): string =>
  text.replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z]+));/gi, (all, decimal, hex, name) => {
    if (typeof name === 'string') return entities.get(name.toLowerCase()) ?? all;
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
