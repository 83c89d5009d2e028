import type { BinaryOperator, Call, Node } from '../../formula/types.ts';

/** As every spreadsheet binds them; a sign binds tighter than a power. */
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

/** Errors that other programs know; any other is told as one they know. */
const knownErrors = ['#N/A', '#NUM!', '#VALUE!', '#DIV/0!', '#REF!', '#NAME?'];

/** Longer texts stand in a formula in pieces: 255 characters are the most in one. */
const longestText = 250;

const inQuotes = (text: string) => `"${text.replaceAll('"', '""')}"`;

/** Writes the tree of a formula, with brackets wherever programs could differ. */
export abstract class Writer {
  readonly #replaced = new Map<Node, string>();

  protected abstract reference(slot: number): string;
  protected abstract call(call: Call): string;
  /** Writes it, in fewer characters where it is too long. */
  protected abstract fit(write: () => string, parts: readonly Node[]): string;

  node(node: Node): string {
    const replaced = this.#replaced.get(node);
    if (replaced !== undefined) return replaced;
    switch (node.kind) {
      case 'number':
        return Number.isFinite(node.value) ? String(node.value).toUpperCase() : '#NUM!';
      case 'text':
        return textOf(node.value);
      case 'truth':
        return node.value ? 'TRUE' : 'FALSE';
      case 'error':
        return knownErrors.includes(node.value) ? node.value : '#VALUE!';
      case 'reference':
        return this.reference(node.slot);
      case 'call':
        return this.call(node);
      case 'sign':
        return node.operator + this.#operand(node.argument);
      case 'percent':
        return `${this.#operand(node.argument)}%`;
      case 'binary':
        return this.fit(() => this.#binary(node), [node.left, node.right]);
      case 'array':
        return `{${node.rows.map((row) => row.map((one) => this.node(one)).join(',')).join(';')}}`;
    }
  }

  protected ordinary({ name, arguments: args }: Call): string {
    const write = () =>
      `${name}(${args.map((argument) => (argument ? this.node(argument) : '')).join(',')})`;
    return this.fit(
      write,
      args.filter((argument) => argument !== null),
    );
  }

  /** From now on this stands for that part of the formula. */
  protected replace(part: Node, text: string): void {
    this.#replaced.set(part, text);
  }

  #binary({ operator, left, right }: Extract<Node, { kind: 'binary' }>): string {
    const own = strengths[operator];
    const binds = (node: Node) => (node.kind === 'binary' ? strengths[node.operator] : 9);
    const first = binds(left) >= own && binds(left) !== 5 ? this.node(left) : this.#operand(left);
    const second = binds(right) > own ? this.node(right) : this.#operand(right);
    return first + operator + (right.kind === 'sign' ? `(${this.node(right)})` : second);
  }

  /** Alone or in brackets. */
  #operand(node: Node): string {
    const text = this.node(node);
    const alone = node.kind !== 'binary' && node.kind !== 'sign' && node.kind !== 'percent';
    return alone ? text : `(${text})`;
  }
}

function textOf(text: string): string {
  if (text.length <= longestText) return inQuotes(text);
  const pieces = text.match(new RegExp(`[^]{1,${String(longestText)}}`, 'gu')) ?? [];
  return `(${pieces.map(inQuotes).join('&')})`;
}
