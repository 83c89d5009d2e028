import { treeOf } from './grammar.ts';
import type { Token } from './tokens.ts';
import { tokensOf } from './tokens.ts';
import type { FormulaFault, Shape } from './types.ts';
import type { WrittenReference } from './written.ts';
import { readReference } from './written.ts';
import { words } from '../words/words.ts';

/** Characters of a formula as entered, with its `=`. */
export const maxFormulaLength = 8_192;
/** As read from a file: renaming sheets and inserting rows make a formula longer than it was typed. */
export const maxStoredLength = 200_000;

export interface ReadFormula {
  readonly shape: Shape;
  readonly references: readonly WrittenReference[];
}

/**
 * Reads a text that begins with `=`. Blanks, numbers, texts and the order of everything stay as
 * typed; functions, references, TRUE, FALSE and errors are put in capitals.
 */
export function readFormula(
  text: string,
  limit: number = maxFormulaLength,
): ReadFormula | FormulaFault {
  if (text.length > limit)
    return {
      reason: words.formula.tooLong(limit, text.length),
      at: limit,
    };
  // A null character stands between pieces in the list of shapes.
  const broken = text.indexOf('\u0000');
  if (broken >= 0) return { reason: words.formula.character, at: broken };
  const tokens = tokensOf(text);
  const pieces = [''];
  const references: WrittenReference[] = [];
  for (const token of tokens) {
    if (token.kind === 'reference' || token.kind === 'name') {
      const reference = readReference(token);
      if ('reason' in reference) return { reason: reference.reason, at: token.start };
      references.push(reference);
      pieces.push('');
    } else
      pieces[pieces.length - 1] += inCapitals.has(token.kind)
        ? token.text.toUpperCase()
        : token.text;
  }
  const shape = shapeOf(pieces, tokens);
  return 'reason' in shape ? shape : { shape, references };
}

const inCapitals: ReadonlySet<Token['kind']> = new Set(['function', 'truth', 'error']);

const shapes = new Map<string, Shape>();
const shapesKept = 20_000;

/** A filled column has one shape: its tree is read once. */
function shapeOf(pieces: readonly string[], tokens: readonly Token[]): Shape | FormulaFault {
  const key = pieces.join('\u0000');
  const known = shapes.get(key);
  if (known) return known;
  const tree = treeOf(tokens);
  if ('reason' in tree) return tree;
  const shape: Shape = { pieces, tree };
  if (shapes.size >= shapesKept) shapes.clear();
  shapes.set(key, shape);
  return shape;
}

/** The shape with these pieces, as when it is read back from a journal. */
export function shapeFrom(pieces: readonly string[]): Shape | FormulaFault {
  const key = pieces.join('\u0000');
  const known = pieces.some((piece) => piece.includes('\u0000')) ? undefined : shapes.get(key);
  if (known) return known;
  const read = readFormula(pieces.join('A1'), Infinity);
  if ('reason' in read) return read;
  const same = read.shape.pieces.join('\u0000') === key;
  return same ? read.shape : { reason: words.formula.damaged, at: 0 };
}
