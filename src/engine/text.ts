import type { FunctionError } from '../../functions/values.ts';
import { writeColumn, writeCorner, writeRow } from '../formula/address.ts';
import type { BinaryOperator, Id, Node } from '../formula/types.ts';
import { errorCodes } from './errors.ts';
import type { Placed } from './placed.ts';

/**
 * Formulas as HyperFormula reads them. It is not given what people typed: it refuses `TRUE` and
 * `1E3`, splits `A1 : B2`, and would convert `4:1` to a time. So the tree is written out anew, with
 * names of our own for sheets and named cells, which HyperFormula never has to see renamed.
 */
type Pieces = readonly (string | number)[];

/** How a formula that cannot be calculated answers. */
export const refusing = 'HALFSTOP.REFUSE';

export interface Vocabulary {
  /** Whether a function is to be had. */
  knows(name: string): boolean;
  /** A sentence about a function that is not. */
  unknown(name: string): string;
  /** HyperFormula's name of a sheet. */
  sheetName(sheet: Id): string;
}

/** Writes formulas for one calculator. */
export class EngineWriter {
  readonly #vocabulary: Vocabulary;
  /** One compilation for each shape of formula: a filled column has one. */
  readonly #compiled = new WeakMap<Node, Pieces>();

  constructor(vocabulary: Vocabulary) {
    this.#vocabulary = vocabulary;
  }

  /** The formula with its `=`. `own` is the sheet it stands on. */
  write(tree: Node, references: readonly Placed[], own: Id): string {
    if (givesMany(tree, references)) return `=${refuse(oneValue)}`;
    let pieces = this.#compiled.get(tree);
    if (pieces === undefined) {
      const compiler = new Compiler(this.#vocabulary);
      compiler.write(tree);
      pieces = compiler.pieces;
      this.#compiled.set(tree, pieces);
    }
    let text = '=';
    for (const piece of pieces) {
      text += typeof piece === 'string' ? piece : this.#reference(references[piece], own);
    }
    return text;
  }

  #reference(placed: Placed | undefined, own: Id): string {
    if (placed === undefined || placed.kind === 'lost') return '#REF!';
    if (placed.kind === 'name') return engineName(placed.name);
    const sheet = placed.sheet === own ? '' : `${this.#vocabulary.sheetName(placed.sheet)}!`;
    if (placed.kind === 'cell') return sheet + writeCorner(placed.at);
    if (placed.kind === 'range')
      return `${sheet}${writeCorner(placed.from)}:${writeCorner(placed.to)}`;
    const end = placed.kind === 'rows' ? writeRow : writeColumn;
    return `${sheet}${end(placed.from)}:${end(placed.to)}`;
  }
}

/** For a formula that comes to several values. */
export const oneValue: FunctionError = {
  code: '#VALUE!',
  message: 'A cell holds one value: take one with INDEX, or join them with SUM, MAX and the like.',
};

function givesMany(tree: Node, references: readonly Placed[]): boolean {
  if (tree.kind !== 'reference') return tree.kind === 'array';
  const kind = references[tree.slot]?.kind;
  return kind === 'range' || kind === 'rows' || kind === 'columns';
}

function refuse({ code, message }: FunctionError): string {
  return `${refusing}(${quoted(code)},${quoted(message)})`;
}

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

class Compiler {
  readonly pieces: (string | number)[] = [];
  readonly #vocabulary: Vocabulary;

  constructor(vocabulary: Vocabulary) {
    this.#vocabulary = vocabulary;
  }

  write(node: Node): void {
    switch (node.kind) {
      case 'number':
        return this.#put(Number.isFinite(node.value) ? String(node.value) : '#NUM!');
      case 'text':
        return this.#put(quoted(node.value));
      case 'truth':
        return this.#put(node.value ? 'TRUE()' : 'FALSE()');
      case 'error':
        return this.#put(isErrorCode(node.value) ? node.value : '#VALUE!');
      case 'reference':
        this.pieces.push(node.slot);
        return;
      case 'call':
        return this.#call(node.name, node.arguments);
      case 'sign':
        this.#put(node.operator);
        return this.#operand(node.argument, !isOperation(node.argument));
      case 'percent':
        this.#operand(node.argument, !isOperation(node.argument));
        return this.#put('%');
      case 'binary': {
        const own = strengths[node.operator];
        this.#operand(
          node.left,
          node.left.kind !== 'binary' || strengths[node.left.operator] >= own,
        );
        this.#put(node.operator);
        return this.#operand(
          node.right,
          node.right.kind === 'binary'
            ? strengths[node.right.operator] > own
            : !isOperation(node.right),
        );
      }
      case 'array':
        this.#put('{');
        node.rows.forEach((row, index) => {
          if (index > 0) this.#put(';');
          this.#list(row);
        });
        return this.#put('}');
    }
  }

  #call(name: string, args: readonly (Node | null)[]): void {
    if (!this.#vocabulary.knows(name))
      return this.#put(refuse({ code: '#NAME?', message: this.#vocabulary.unknown(name) }));
    this.#put(`${name}(`);
    this.#list(args);
    this.#put(')');
  }

  #list(nodes: readonly (Node | null)[]): void {
    nodes.forEach((node, index) => {
      if (index > 0) this.#put(',');
      if (node) this.write(node);
    });
  }

  #operand(node: Node, bare: boolean): void {
    if (bare) return this.write(node);
    this.#put('(');
    this.write(node);
    this.#put(')');
  }

  #put(text: string): void {
    const last = this.pieces.at(-1);
    if (typeof last === 'string') this.pieces[this.pieces.length - 1] = last + text;
    else this.pieces.push(text);
  }
}

function isOperation(node: Node): boolean {
  return node.kind === 'binary' || node.kind === 'sign' || node.kind === 'percent';
}

function isErrorCode(text: string): boolean {
  return (errorCodes as readonly string[]).includes(text);
}

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/**
 * A named cell as HyperFormula knows it: never like an address, in letters it takes, and without
 * regard to case.
 */
export function engineName(name: string): string {
  const plain = name.toLowerCase().replace(/[^a-z0-9]/g, (sign) => `_${sign.codePointAt(0) ?? 0}_`);
  return `n_${plain}`;
}
