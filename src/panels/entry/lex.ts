/** A piece of what is being typed, for colouring. The pieces joined are the text. */
export interface Piece {
  readonly kind: 'call' | 'reference' | 'name' | 'number' | 'text' | 'sign' | 'blank' | 'plain';
  readonly text: string;
}

/** Tried in order at each place. It must take half-written formulas, which a parser would refuse. */
const patterns: readonly (readonly [Piece['kind'], RegExp])[] = [
  ['blank', /\s+/y],
  ['text', /"(?:[^"]|"")*"?/y],
  [
    'reference',
    /(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?(?![\p{L}\p{N}_.(])/iuy,
  ],
  [
    'reference',
    /(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\p{L}\p{N}_.(])/iuy,
  ],
  ['call', /[\p{L}_][\p{L}\p{N}_.]*(?=\s*\()/uy],
  ['name', /[\p{L}_][\p{L}\p{N}_.]*/uy],
  ['number', /\d+(?:\.\d*)?(?:e[+-]?\d+)?|\.\d+/iy],
  ['sign', /./suy],
];

export function lex(text: string): readonly Piece[] {
  if (!text.startsWith('=')) return [{ kind: 'plain', text }];
  const pieces: Piece[] = [];
  for (let at = 0; at < text.length;) {
    const piece = pieceAt(text, at);
    pieces.push(piece);
    at += piece.text.length;
  }
  return pieces;
}

function pieceAt(text: string, at: number): Piece {
  for (const [kind, pattern] of patterns) {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found) return { kind, text: found };
  }
  return { kind: 'sign', text: text.charAt(at) };
}

export interface OpenCall {
  readonly name: string;
  /** Which argument the caret stands in, from 0. */
  readonly argument: number;
}

/** The innermost function whose arguments are being written at the caret. */
export function openCall(text: string, caret: number): OpenCall | undefined {
  const open: (OpenCall | null)[] = [];
  let before: Piece | undefined;
  for (const piece of lex(text.slice(0, caret))) {
    if (piece.text === '(')
      open.push(
        before?.kind === 'call' || before?.kind === 'name'
          ? { name: before.text, argument: 0 }
          : null,
      );
    else if (piece.text === ')') open.pop();
    else if (piece.text === ',' || piece.text === ';') {
      const last = open.pop();
      if (last) open.push({ ...last, argument: last.argument + 1 });
      else if (last === null) open.push(null);
    }
    if (piece.kind !== 'blank') before = piece;
  }
  return open.findLast((call) => call !== null) ?? undefined;
}
