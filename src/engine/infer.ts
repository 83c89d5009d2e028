import { byName } from '../../functions/index.ts';
import {
  lightQuantities,
  quantityNames,
  type QuantityName,
} from '../../functions/quantities/names.ts';
import type { BinaryOperator, Call, Node } from '../formula/types.ts';
import { products, quotients } from './algebra.ts';
import { agreed, type Kind } from './kinds.ts';
import type { Placed, PlacedCells } from './placed.ts';
import { ordinary } from './ordinary.ts';

/** What the cells behind a reference measure: one quantity, or undefined when they differ. */
export type AskCells = (cells: PlacedCells) => Kind;

interface Context {
  readonly references: readonly Placed[];
  readonly ask: AskCells;
}

/** What a formula comes to, read from its text alone. A first version: the unit check goes further. */
export function inferQuantity(
  tree: Node,
  references: readonly Placed[],
  ask: AskCells,
): QuantityName | undefined {
  const kind = kindOf(tree, { references, ask });
  return kind === 'any' ? undefined : kind;
}

function kindOf(node: Node, context: Context): Kind {
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
      return referenceKind(context.references[node.slot], context.ask);
    case 'sign':
      return kindOf(node.argument, context);
    case 'percent':
      return 'any';
    case 'binary':
      return operations[node.operator](
        kindOf(node.left, context),
        kindOf(node.right, context),
        node.right,
      );
    case 'call':
      return callKind(node, context);
  }
}

function referenceKind(placed: Placed | undefined, ask: AskCells): Kind {
  if (placed === undefined || placed.kind === 'refused') return undefined;
  return placed.kind === 'expression'
    ? kindOf(placed.tree, { references: placed.references, ask })
    : ask(placed);
}

type Operation = (left: Kind, right: Kind, rightNode: Node) => Kind;

const truth: Operation = () => 'truth';

const operations: Readonly<Record<BinaryOperator, Operation>> = {
  '=': truth,
  '<>': truth,
  '<': truth,
  '>': truth,
  '<=': truth,
  '>=': truth,
  '&': () => 'text',
  '+': (left, right) => agreed([left, right]),
  '-': (left, right) => agreed([left, right]),
  '*': (left, right) => multiplied(left, right) ?? multiplied(right, left),
  '/': divided,
  '^': raised,
};

/** A share, factor or ratio of something is some of it. */
const scales: ReadonlySet<Kind> = new Set<Kind>(['any', 'share', 'factor', 'ratio', 'number']);
const isLight: ReadonlySet<Kind> = new Set<Kind>(lightQuantities);

function multiplied(left: Kind, right: Kind): Kind {
  if (left === undefined || right === undefined) return undefined;
  if (left === right && scales.has(left)) return left;
  if (scales.has(right)) return left;
  return products[`${left} ${right}`];
}

function divided(left: Kind, right: Kind): Kind {
  if (left === undefined || right === undefined) return undefined;
  if (right === 'any' || (scales.has(right) && left !== right && left !== 'any')) return left;
  if (left === right) return isLight.has(left) ? 'ratio' : 'number';
  return quotients[`${left} ${right}`];
}

function raised(left: Kind, _right: Kind, rightNode: Node): Kind {
  if (left === 'any') return 'any';
  return left === 'length' && rightNode.kind === 'number' && rightNode.value === 2
    ? 'area'
    : undefined;
}

function callKind({ name, arguments: args }: Call, context: Context): Kind {
  const kinds = () => args.map((argument) => (argument ? kindOf(argument, context) : 'any'));
  const definition = byName.get(name);
  if (!definition) return ordinary[name]?.(kinds());
  const { result, parameters } = definition;
  if (typeof result === 'string') return result;
  const index = parameters.findIndex((parameter) => parameter.name === result.as);
  const given = kinds()[index];
  if (given !== undefined && given !== 'any') return given;
  return quantityNames.find((quantity) => quantity === parameters[index]?.quantity);
}
