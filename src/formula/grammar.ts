import { unitAnywhere } from '../../functions/quantities/lookUp.ts';
import type { Token } from './tokens.ts';
import type { BinaryOperator, Call, FormulaFault, Node } from './types.ts';
import { words } from '../words/words.ts';

/** Brackets, signs and functions within each other. */
export const maxDepth = 100;
/** Operators in one row: `1+1+…` makes a tree as deep as it is long. */
const maxChain = 1000;

const strengths: Readonly<Record<BinaryOperator, number>> = {
  '=': 1,
  '<>': 1,
  '<': 1,
  '>': 1,
  '<=': 1,
  '>=': 1,
  '&': 2,
  '+': 3,
  '-': 3,
  '*': 4,
  '/': 4,
  '^': 5,
};

const isBinary = (text: string): text is BinaryOperator => Object.hasOwn(strengths, text);
const unused: ReadonlyMap<string, string> = new Map([
  ['@', words.formula.atSign],
  ['#', words.formula.hashSign],
  ['!', words.formula.exclamation],
  [':', words.formula.colon],
]);

class Fault extends Error {
  constructor(
    readonly reason: string,
    readonly at: number,
  ) {
    super(reason);
  }
}

/**
 * Reads the tokens of a formula as a tree: binding strength decides, equal ones from left to right,
 * a percent before a sign before a power, as spreadsheets do (`-2^2` is 4).
 */
export function treeOf(tokens: readonly Token[]): Node | FormulaFault {
  try {
    return new Reader(tokens).whole();
  } catch (fault) {
    if (fault instanceof Fault) return { reason: fault.reason, at: fault.at };
    throw fault;
  }
}

class Reader {
  readonly #tokens: readonly Token[];
  #next = 0;
  #slots = 0;
  #depth = 0;
  #operators = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens.filter(({ kind }) => kind !== 'blank');
  }

  whole(): Node {
    this.#take();
    if (!this.#peek()) throw new Fault(words.formula.nothingAfter, 1);
    const tree = this.#expression(0);
    const rest = this.#peek();
    if (rest) throw this.#misplaced(rest);
    if (tree.kind === 'array') throw new Fault(words.formula.listInside, 1);
    return tree;
  }

  #expression(strength: number): Node {
    let left = this.#operand();
    for (;;) {
      const token = this.#peek();
      if (token?.kind !== 'operator' || !isBinary(token.text)) return left;
      const own = strengths[token.text];
      if (own <= strength) return left;
      this.#take();
      if (++this.#operators > maxChain)
        throw new Fault(words.formula.tooManyOperators(maxChain), token.start);
      left = { kind: 'binary', operator: token.text, left, right: this.#expression(own) };
    }
  }

  #operand(): Node {
    const token = this.#take();
    if (!token) throw new Fault(words.formula.endsEarly, this.#end());
    if (++this.#depth > maxDepth) throw new Fault(words.formula.tooDeep(maxDepth), token.start);
    let node = this.#single(token);
    this.#depth--;
    while (this.#peek()?.text === '%') {
      this.#take();
      node = { kind: 'percent', argument: node };
    }
    return node;
  }

  #single(token: Token): Node {
    const literal = literals[token.kind]?.(token);
    if (literal) return literal;
    if (token.kind === 'reference') return { kind: 'reference', slot: this.#slots++ };
    if (token.kind === 'name') return this.#name(token);
    if (token.kind === 'function') return this.#call(token);
    if (token.kind === 'open') return this.#bracket(token);
    if (token.kind === 'openList') return this.#list(token);
    if (token.text === '-' || token.text === '+')
      return { kind: 'sign', operator: token.text, argument: this.#operand() };
    throw this.#misplaced(token);
  }

  #name(token: Token): Node {
    if (this.#peek()?.kind === 'open') throw new Fault(words.formula.noBlank, token.end);
    return { kind: 'reference', slot: this.#slots++ };
  }

  #bracket(open: Token): Node {
    const node = this.#expression(0);
    if (this.#peek()?.kind === 'comma') throw new Fault(words.formula.comma, this.#at());
    this.#close(open, 'close', words.formula.bracketOpen);
    return node;
  }

  #call(name: Token): Call {
    const open = this.#take();
    const args: (Node | null)[] = [];
    if (open && this.#peek()?.kind !== 'close') {
      do args.push(this.#argument());
      while (this.#skip('comma'));
    }
    this.#close(open ?? name, 'close', words.formula.bracketOpen);
    return { kind: 'call', name: name.text.toUpperCase(), arguments: args };
  }

  #argument(): Node | null {
    const kind = this.#peek()?.kind;
    return kind === 'comma' || kind === 'close' ? null : this.#expression(0);
  }

  #list(open: Token): Node {
    const rows: Node[][] = [];
    do {
      const row: Node[] = [];
      do row.push(this.#element());
      while (this.#skip('comma'));
      rows.push(row);
    } while (this.#skip('semicolon'));
    this.#close(open, 'closeList', words.formula.braceOpen);
    return { kind: 'array', rows };
  }

  #element(): Node {
    const at = this.#at();
    const node = this.#operand();
    const value = node.kind === 'sign' ? node.argument : node;
    if (value.kind in plainValues) return node;
    throw new Fault(words.formula.listValues, at);
  }

  #close(open: Token, kind: Token['kind'], reason: string): void {
    const token = this.#peek();
    if (!token) throw new Fault(reason, open.start);
    if (!this.#skip(kind)) throw this.#misplaced(token);
  }

  #misplaced(token: Token): Fault {
    const reason =
      unused.get(token.text) ??
      misplaced[token.kind] ??
      this.#quantity(token) ??
      (token.kind === 'operator' || token.kind === 'unknown'
        ? words.formula.unreadableHere(token.text)
        : words.formula.operatorMissing(token.text));
    return new Fault(reason, token.start);
  }

  /** A number with its unit, as it is typed into a cell. */
  #quantity(unit: Token): string | undefined {
    const number = this.#tokens[this.#next - 1];
    return number?.kind === 'number' && unitAnywhere(unit.text)
      ? words.formula.unitOutside(`${number.text} ${unit.text}`)
      : undefined;
  }

  #skip(kind: Token['kind']): boolean {
    const fits = this.#peek()?.kind === kind;
    if (fits) this.#next++;
    return fits;
  }

  #peek(): Token | undefined {
    return this.#tokens[this.#next];
  }

  #take(): Token | undefined {
    return this.#tokens[this.#next++];
  }

  #at(): number {
    return this.#peek()?.start ?? this.#end();
  }

  #end(): number {
    return this.#tokens.at(-1)?.end ?? 0;
  }
}

const plainValues = { number: true, text: true, truth: true, error: true };

const misplaced: Partial<Record<Token['kind'], string>> = {
  close: words.formula.bracketCloses,
  closeList: words.formula.braceCloses,
  comma: words.formula.comma,
  semicolon: words.formula.semicolon,
};

const literals: Partial<Record<Token['kind'], (token: Token) => Node>> = {
  number: ({ text }) => ({ kind: 'number', value: Number(text) }),
  truth: ({ text }) => ({ kind: 'truth', value: text.toUpperCase() === 'TRUE' }),
  error: ({ text }) => ({ kind: 'error', value: text.toUpperCase() }),
  text: (token) => {
    if (token.unterminated) throw new Fault(words.formula.quoteMissing, token.start);
    return { kind: 'text', value: token.text.slice(1, -1).replaceAll('""', '"') };
  },
};
