import { tokensOf } from '../../src/formula/tokens.ts';

/** What stands in a cell of a sheet for LibreOffice; a formula is a text that begins with `=`. */
export type Cell = number | string | null;

/** Stored as the result of every formula. No formula gives it. */
const wrongOnPurpose = -987_654.321;

/** A sheet as a flat OpenDocument file, with wrong results stored beside the formulas. */
export function flatSheet(rows: readonly (readonly Cell[])[]): string {
  const body = rows
    .map((row) => `<table:table-row>${row.map(cell).join('')}</table:table-row>`)
    .join('\n');
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
 office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet><table:table table:name="Plain">
${body}
</table:table></office:spreadsheet></office:body></office:document>`;
}

function cell(content: Cell): string {
  if (content === null) return '<table:table-cell/>';
  if (typeof content === 'number')
    return `<table:table-cell office:value-type="float" office:value="${String(content)}"/>`;
  if (content.startsWith('='))
    return `<table:table-cell table:formula="of:${escaped(openFormula(content))}" office:value-type="float" office:value="${String(wrongOnPurpose)}"/>`;
  return `<table:table-cell office:value-type="string"><text:p>${escaped(content)}</text:p></table:table-cell>`;
}

/** `=SUM(A1:A2,3)` as the standard writes it in files: `=SUM([.A1:.A2];3)`. */
function openFormula(text: string): string {
  return tokensOf(text)
    .map(({ kind, text: piece }) => {
      if (kind === 'comma') return ';';
      return kind === 'reference'
        ? `[${piece
            .split(':')
            .map((end) => `.${end}`)
            .join(':')}]`
        : piece;
    })
    .join('');
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
const escaped = (text: string) => text.replaceAll(/[&<>"]/g, (sign) => entities[sign] ?? sign);
