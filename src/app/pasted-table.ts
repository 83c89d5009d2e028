/**
 * The cells of the first table in a piece of HTML as they are read, which is how other programs put
 * values beside formulas on the clipboard; empty where it is not as large as the text beside it. The
 * HTML is parsed apart from the page: nothing of it runs or is fetched.
 */
export function valuesBeside(html: string, text: string): readonly (readonly string[])[] {
  if (html === '') return [];
  const table = new DOMParser().parseFromString(html, 'text/html').querySelector('table');
  const rows = Array.from(table?.rows ?? [], (row) =>
    Array.from(row.cells, (cell) => (cell.textContent ?? '').replace(/\s+/g, ' ').trim()),
  );
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '').split('\n');
  const isAlike =
    rows.length === lines.length &&
    rows.every((row, index) => row.length === lines[index]?.split('\t').length);
  return isAlike ? rows : [];
}
