import type { QuantityName } from '../../functions/quantities/names.ts';
import type { Call, Node } from '../formula/types.ts';
import { callKind } from './calls.ts';
import { shownAs } from './dimensions.ts';
import type { Finding, Part } from './findings.ts';
import type { Handed } from './handed.ts';
import { agreed, type Kind, type KnownKind } from './kinds.ts';
import { operation } from './operations.ts';
import type { Placed, PlacedCells } from './placed.ts';
import { writtenNumber } from './written.ts';

/** What the cells behind a reference measure, each kind once. */
export type AskCells = (cells: PlacedCells) => readonly Kind[];

/** Where a formula stands while it is read. */
export interface Reading {
  readonly references: readonly Placed[];
  readonly ask: AskCells;
  /** Hears what does not go together; without it nobody listens. */
  readonly hear?: (finding: Finding) => void;
  /** A part of the formula as people write it. */
  readonly textOf?: (node: Node) => string;
}

/** What a formula comes to, read from its text alone. */
export function inferQuantity(
  tree: Node,
  references: readonly Placed[],
  ask: AskCells,
): QuantityName | undefined {
  return shownAs(kindOf(tree, { references, ask }));
}

/** The same, before it is given the name of a quantity. */
export function kindOf(node: Node, reading: Reading): Kind {
  switch (node.kind) {
    case 'number':
      return 'any';
    case 'text':
      return node.value === '' ? 'any' : 'text';
    case 'truth':
      return 'truth';
    case 'error':
    case 'array':
      return undefined;
    case 'reference':
      return agreed(kindsOf(node, reading));
    case 'sign':
    case 'percent':
      return kindOf(node.argument, reading);
    case 'binary':
      return binaryKind(node, reading);
    case 'call':
      return callKind(handedTo(node, reading));
  }
}

/** Every kind in a part of a formula: a range may hold several. */
function kindsOf(node: Node, reading: Reading): readonly Kind[] {
  if (node.kind !== 'reference') return [kindOf(node, reading)];
  const placed = reading.references[node.slot];
  if (placed === undefined || placed.kind === 'refused') return [undefined];
  if (placed.kind !== 'expression') return reading.ask(placed);
  return [kindOf(placed.tree, inName(node, placed.references, reading))];
}

/** Inside a name the references are the name's, and what is found there is told under its name. */
function inName(node: Node, references: readonly Placed[], reading: Reading): Reading {
  const { ask, hear, textOf } = reading;
  if (!hear) return { references, ask };
  const inside = textOf?.(node) ?? '';
  return { references, ask, hear: (finding) => hear({ inside, ...finding }) };
}

type Binary = Extract<Node, { kind: 'binary' }>;

function binaryKind({ operator, ...nodes }: Binary, reading: Reading): Kind {
  const left = { kind: kindOf(nodes.left, reading), written: writtenNumber(nodes.left) };
  const right = { kind: kindOf(nodes.right, reading), written: writtenNumber(nodes.right) };
  const outcome = operation(operator, left, right);
  if ('kind' in outcome) return outcome.kind;
  if (left.kind !== undefined && right.kind !== undefined) {
    reading.hear?.({
      about: 'operation',
      operator,
      left: partOf(nodes.left, left.kind, reading),
      right: partOf(nodes.right, right.kind, reading),
    });
  }
  return undefined;
}

/** Its text is only written out when somebody reads it. */
function partOf(node: Node, kind: KnownKind, { textOf }: Reading): Part {
  return {
    kind,
    get text() {
      return textOf?.(node) ?? '';
    },
  };
}

function handedTo(call: Call, reading: Reading): Handed {
  const known = call.arguments.map((node) => (node ? kindsOf(node, reading) : []));
  const node = (index: number) => call.arguments[index] ?? null;
  return {
    call,
    count: known.length,
    node,
    kindOf: (part) => kindOf(part, { references: reading.references, ask: reading.ask }),
    kind: (index) => (node(index) ? agreed(known[index] ?? []) : 'any'),
    kinds: (index) => known[index] ?? [],
    line(index, axis, line) {
      const argument = node(index);
      const placed = argument?.kind === 'reference' && reading.references[argument.slot];
      const narrow = placed ? lineOf(placed, axis, line) : undefined;
      return narrow ? reading.ask(narrow) : [undefined];
    },
    part: (index, kind) => {
      const argument = node(index);
      return argument ? partOf(argument, kind, reading) : { text: '', kind };
    },
    hear: (finding) => reading.hear?.(finding),
  };
}

/** One column or row of a range. */
function lineOf(placed: Placed, axis: 'rows' | 'columns', line: number): PlacedCells | undefined {
  if (placed.kind !== 'range') return undefined;
  const end = axis === 'columns' ? 'column' : 'row';
  const index = placed.from[end].index + line - 1;
  if (index < placed.from[end].index || index > placed.to[end].index) return undefined;
  const at = { ...placed.from[end], index };
  return { ...placed, from: { ...placed.from, [end]: at }, to: { ...placed.to, [end]: at } };
}
