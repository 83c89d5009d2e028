import type { Call, Node } from './types.ts';

/** Every call of a formula, outer ones before what stands in them. */
export function* callsIn(node: Node): Iterable<Call> {
  if (node.kind === 'call') {
    yield node;
    for (const argument of node.arguments) if (argument) yield* callsIn(argument);
  } else if (node.kind === 'binary') {
    yield* callsIn(node.left);
    yield* callsIn(node.right);
  } else if (node.kind === 'sign' || node.kind === 'percent') {
    yield* callsIn(node.argument);
  } else if (node.kind === 'array') {
    for (const row of node.rows) for (const item of row) yield* callsIn(item);
  }
}
