import fc from 'fast-check';
import { HyperFormula } from 'hyperformula';
import { expect, it } from 'vitest';
import { prepare } from '../../../src/engine/door.ts';
import { runs } from '../../support/runs.ts';

type Graph = HyperFormula['graph'];
type Vertex = Parameters<Graph['addNodeIfNotExists']>[0];

/** A graph with one node that many others may read, and those others. */
function oneAndMany(count: number) {
  prepare();
  const { graph } = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3' });
  const vertex = () => ({ idInGraph: undefined }) as unknown as Vertex;
  const [one, ...many] = Array.from({ length: count + 1 }, vertex) as [Vertex, ...Vertex[]];
  for (const node of [one, ...many]) graph.addNodeIfNotExists(node);
  return { graph, one, many };
}

const steps = fc.array(fc.tuple(fc.constantFrom('add', 'take', 'ask'), fc.nat(79)), {
  maxLength: 600,
});

it('the indexed lists of readers hold what a set would', () => {
  fc.assert(
    fc.property(steps, (all) => {
      const { graph, one, many } = oneAndMany(80);
      const readers = new Set<Vertex>();
      for (const [what, number] of all) {
        const reader = many[number] as Vertex;
        if (what === 'add') {
          graph.addEdge(one, reader);
          readers.add(reader);
        } else if (what === 'take') {
          graph.removeEdgeIfExists(one, reader);
          readers.delete(reader);
        }
        expect(graph.existsEdge(one, reader)).toBe(readers.has(reader));
        expect(graph.adjacentNodesCount(one)).toBe(readers.size);
      }
      const kept = graph.adjacentNodes(one);
      expect(kept.size).toBe(readers.size);
      expect([...readers].every((reader) => kept.has(reader))).toBe(true);
    }),
    { numRuns: runs(25) },
  );
});

it('an edge that is not there cannot be removed, and one to nowhere not be made', () => {
  const { graph, one, many } = oneAndMany(2);
  const [reader] = many as [Vertex];
  expect(() => graph.removeEdge(one, reader)).toThrow('The edge does not exist.');
  const stranger = { idInGraph: undefined } as unknown as Vertex;
  expect(() => graph.addEdge(one, stranger)).toThrow('The node is not in the graph.');
  expect(graph.existsEdge(one, stranger)).toBe(false);
});
