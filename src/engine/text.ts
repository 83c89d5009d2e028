import type { FunctionError } from '../../functions/values.ts';
import { writeColumn, writeCorner, writeRow } from '../formula/address.ts';
import type { BinaryOperator, Id, Node } from '../formula/types.ts';
import { errorCodes } from './errors.ts';
import { lost, type Placed } from './placed.ts';
import { words } from '../words/words.ts';

/**
 * Formulas as HyperFormula reads them. It is not given what people typed: it refuses `TRUE` and
 * `1E3`, stumbles over names that look like addresses, and has a name of its own for every sheet.
 * So the tree is written out anew, with named cells as what they stand for.
 */
type Pieces = readonly (string | number)[];

/** How a formula that cannot be calculated answers. */
export const refusing = 'HALFSTOP.REFUSE';

interface Dialect {
  /** Whether a function is to be had. */
  knows(name: string): boolean;
  /** A sentence about a function that is not. */
  unknown(name: string): string;
  readonly truths: readonly [no: string, yes: string];
}

/** HyperFormula has no TRUE and FALSE, only functions that give them. */
const engineTruths = ['FALSE()', 'TRUE()'] as const;

export interface Vocabulary extends Omit<Dialect, 'truths'> {
  /** HyperFormula's name of a sheet. */
  sheetName(sheet: Id): string;
}

const forPeople: Dialect = { knows: () => true, unknown: () => '', truths: ['FALSE', 'TRUE'] };

/** Part of a formula as people read it, references between the pieces as slots. */
export function piecesForPeople(node: Node): Pieces {
  const compiler = new Compiler(forPeople);
  compiler.write(node);
  return compiler.pieces;
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
    return `=${givesMany(tree, references) ? refuse(oneValue) : this.#written(tree, references, own)}`;
  }

  #written(tree: Node, references: readonly Placed[], own: Id): string {
    let text = '';
    for (const piece of this.#pieces(tree)) {
      text += typeof piece === 'string' ? piece : this.#reference(references[piece] ?? lost, own);
    }
    return text;
  }

  #pieces(tree: Node): Pieces {
    const known = this.#compiled.get(tree);
    if (known) return known;
    const compiler = new Compiler({ ...this.#vocabulary, truths: engineTruths });
    compiler.write(tree);
    this.#compiled.set(tree, compiler.pieces);
    return compiler.pieces;
  }

  #reference(placed: Placed, own: Id): string {
    // Read quicker than a refusal: deleting a row can leave thousands of these.
    if (placed === lost) return '#REF!';
    if (placed.kind === 'refused') return refuse(placed.error);
    if (placed.kind === 'expression')
      return `(${this.#written(placed.tree, placed.references, own)})`;
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
  message: words.engine.oneValue,
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
  readonly #dialect: Dialect;

  constructor(dialect: Dialect) {
    this.#dialect = dialect;
  }

  write(node: Node): void {
    switch (node.kind) {
      case 'number':
        return this.#put(Number.isFinite(node.value) ? String(node.value) : '#NUM!');
      case 'text':
        return this.#put(quoted(node.value));
      case 'truth':
        return this.#put(this.#dialect.truths[node.value ? 1 : 0]);
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
    if (!this.#dialect.knows(name))
      return this.#put(refuse({ code: '#NAME?', message: this.#dialect.unknown(name) }));
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
