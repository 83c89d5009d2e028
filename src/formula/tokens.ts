import { tokenize } from '@borgar/fx';
import { readCorner } from './address.ts';

export type TokenKind =
  /** The `=` in front. */
  | 'start'
  | 'function'
  /** A cell, a range, whole columns or whole rows. */
  | 'reference'
  | 'name'
  | 'number'
  | 'text'
  | 'truth'
  | 'error'
  | 'operator'
  | 'open'
  | 'close'
  | 'openList'
  | 'closeList'
  | 'comma'
  | 'semicolon'
  | 'blank'
  | 'unknown';

/** A run of characters of a formula. Tokens follow each other without gaps. */
export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** A text whose closing quote is missing. */
  readonly unterminated?: true;
  /** Only in ranges written with blanks around the colon: `A1 : B2`. */
  readonly parts?: { readonly from: string; readonly joint: string; readonly to: string };
}

const kindOfType: Readonly<Record<string, TokenKind>> = {
  fx_prefix: 'start',
  func: 'function',
  range: 'reference',
  range_beam: 'reference',
  range_named: 'name',
  number: 'number',
  string: 'text',
  bool: 'truth',
  error: 'error',
  operator: 'operator',
  whitespace: 'blank',
  newline: 'blank',
};

const kindOfSign: Readonly<Record<string, TokenKind>> = {
  '(': 'open',
  ')': 'close',
  '{': 'openList',
  '}': 'closeList',
  ',': 'comma',
  ';': 'semicolon',
};

/**
 * Splits a formula for colouring, for the caret and for reading. Never fails: what makes no sense
 * is `unknown`, so it also serves while a formula is being typed.
 */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let start = 0;
  for (const { type, value, unterminated } of tokenize(text, {
    withLocation: false,
    negativeNumbers: false,
  })) {
    const end = start + value.length;
    const kind = kindOf(type, value);
    tokens.push({ kind, text: value, start, end, ...(unterminated && { unterminated }) });
    start = end;
  }
  return joinRanges(tokens);
}

function kindOf(type: string, value: string): TokenKind {
  if (type === 'operator') return kindOfSign[value] ?? 'operator';
  // The tokenizer takes `A1048577` for a name, because it lies beyond its own sheet.
  if (type === 'range_named' && readCorner(value)) return 'reference';
  return kindOfType[type] ?? 'unknown';
}

/** The tokenizer leaves `a2 : a10` in pieces; a range is one reference, however it is spaced. */
function joinRanges(tokens: Token[]): Token[] {
  if (!tokens.some(({ text }) => text === ':')) return tokens;
  const joined: Token[] = [];
  for (let i = 0; i < tokens.length;) {
    const range = rangeAt(tokens, i);
    const token = range?.token ?? tokens[i];
    if (token) joined.push(token);
    i += range?.length ?? 1;
  }
  return joined;
}

function rangeAt(tokens: Token[], at: number): { token: Token; length: number } | undefined {
  const colon = skipBlanks(tokens, at + 1);
  const last = skipBlanks(tokens, colon + 1);
  const [from, to] = [tokens[at], tokens[last]];
  if (!from || !to || tokens[colon]?.text !== ':' || !fitTogether(from, to)) return undefined;
  const joint = tokens
    .slice(at + 1, last)
    .map(({ text }) => text)
    .join('');
  const token: Token = {
    kind: 'reference',
    text: from.text + joint + to.text,
    start: from.start,
    end: to.end,
    parts: { from: from.text, joint, to: to.text },
  };
  return { token, length: last - at + 1 };
}

function skipBlanks(tokens: Token[], at: number): number {
  let index = at;
  while (tokens[index]?.kind === 'blank') index++;
  return index;
}

const columnText = /^(?:.*!)?\$?[A-Za-z]{1,3}$/;
const rowText = /^(?:.*!)?\$?\d+$/;

function fitTogether(from: Token, to: Token): boolean {
  const cells = [from, to].every(({ kind, text }) => kind === 'reference' && !text.includes(':'));
  return (
    cells ||
    [columnText, rowText].some((pattern) => pattern.test(from.text) && pattern.test(to.text))
  );
}
