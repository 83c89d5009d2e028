import { maxStoredLength, readFormula } from '../formula/read.ts';
import { tokensOf } from '../formula/tokens.ts';
import type { BinaryOperator, Node } from '../formula/types.ts';

/** A plain formula as a tree whose words are parameters, whatever cells they may look like. */
export type Term =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'word'; readonly text: string }
  | { readonly kind: 'call'; readonly name: string; readonly of: readonly Term[] }
  | { readonly kind: 'minus'; readonly of: Term }
  | {
      readonly kind: 'binary';
      readonly operator: BinaryOperator;
      readonly left: Term;
      readonly right: Term;
    };

/** Undefined where the formula is none, or holds more than sums, powers and functions. */
export function termOf(formula: string): Term | undefined {
  const text = `=${formula}`;
  const read = readFormula(text, maxStoredLength);
  if ('reason' in read) return undefined;
  const words = tokensOf(text)
    .filter(({ kind }) => kind === 'reference' || kind === 'name')
    .map((token) => token.text);
  return termFrom(read.shape.tree, words);
}

function termFrom(node: Node, words: readonly string[]): Term | undefined {
  const inner = (part: Node | null) => (part ? termFrom(part, words) : undefined);
  if (node.kind === 'number') return { kind: 'number', value: node.value };
  if (node.kind === 'reference') return { kind: 'word', text: words[node.slot] ?? '' };
  if (node.kind === 'sign') {
    const of = inner(node.argument);
    return of && node.operator === '-' ? { kind: 'minus', of } : of;
  }
  if (node.kind === 'binary') {
    const left = inner(node.left);
    const right = inner(node.right);
    return left && right && { kind: 'binary', operator: node.operator, left, right };
  }
  if (node.kind !== 'call') return undefined;
  const of = node.arguments.flatMap((part) => inner(part) ?? []);
  return of.length === node.arguments.length ? { kind: 'call', name: node.name, of } : undefined;
}

/** The terms that a term is made of. */
export function partsOf(term: Term): readonly Term[] {
  if (term.kind === 'call') return term.of;
  if (term.kind === 'minus') return [term.of];
  return term.kind === 'binary' ? [term.left, term.right] : [];
}

/** How many numbers, words and signs are in it. */
export const sizeOf = (term: Term): number =>
  partsOf(term).reduce((sum, part) => sum + sizeOf(part), 1);
