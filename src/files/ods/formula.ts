import { splitSheetPrefix } from '../../formula/sheetprefix.ts';
import { tokensOf, type Token } from '../../formula/tokens.ts';
import { storedName } from './functions.ts';

/** Rows and columns of the largest sheet that programs know: whole lines are written as ranges. */
const lastRow = 1_048_576;
const lastColumn = 'XFD';

const signs: Partial<Record<Token['kind'], string>> = { comma: ';' };
const inLists: Partial<Record<Token['kind'], string>> = { comma: ';', semicolon: '|' };

/** A formula in A1 form as OpenFormula (ISO/IEC 26300, part 2) writes it, without its `=`. */
export function openFormula(formula: string): string {
  let lists = 0;
  return tokensOf(formula)
    .map((token) => {
      if (token.kind === 'openList') lists += 1;
      if (token.kind === 'closeList') lists -= 1;
      if (token.kind === 'reference') return reference(token);
      if (token.kind === 'function') return storedName(token.text);
      return (lists > 0 ? inLists : signs)[token.kind] ?? token.text;
    })
    .join('')
    .slice(1);
}

/** `Walk!$A$2:B3` is written `[$Walk.$A$2:.B3]`. */
function reference({ text }: Token): string {
  const { sheet, rest } = splitSheetPrefix(text);
  const prefix = sheet === undefined ? '' : `$'${sheet.replaceAll("'", "''")}'`;
  const [from = '', to] = rest.split(':').map((end) => end.trim());
  const whole = wholeLines(from, to);
  if (whole) return `[${prefix}.${whole[0]}:.${whole[1]}]`;
  return to === undefined ? `[${prefix}.${from}]` : `[${prefix}.${from}:.${to}]`;
}

function wholeLines(from: string, to: string | undefined): readonly [string, string] | undefined {
  if (to === undefined) return undefined;
  if (/^\$?[A-Z]+$/i.test(from)) return [`${from}$1`, `${to}$${String(lastRow)}`];
  if (/^\$?\d+$/.test(from)) return [`$A${from}`, `$${lastColumn}${to}`];
  return undefined;
}
