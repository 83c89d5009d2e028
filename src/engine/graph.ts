import type { HyperFormula } from 'hyperformula';

/** What this file needs of HyperFormula's graph. Lists of edges may name nodes that are gone. */
interface Graph {
  edgesSparseArray: number[][];
  nodesSparseArray: unknown[];
  addEdge(from: GraphNode | number, to: GraphNode | number): void;
  existsEdge(from: GraphNode, to: GraphNode): boolean;
  removeEdge(from: GraphNode | number, to: GraphNode | number): void;
  removeEdgeIfExists(from: GraphNode | number, to: GraphNode | number): void;
  adjacentNodesCount(node: GraphNode): number;
}

interface GraphNode {
  readonly idInGraph: number | undefined;
}

/** From here on a list is looked up by an index beside it; shorter ones are quicker read through. */
const long = 32;

const indexes = new WeakMap<readonly number[], Map<number, number>>();

function indexOf(list: readonly number[]): Map<number, number> {
  let index = indexes.get(list);
  if (index === undefined) {
    index = new Map(list.map((id, position) => [id, position]));
    indexes.set(list, index);
  }
  return index;
}

function position(list: readonly number[], id: number): number {
  return list.length < long ? list.indexOf(id) : (indexOf(list).get(id) ?? -1);
}

function add(list: number[], id: number): void {
  if (position(list, id) !== -1) return;
  indexes.get(list)?.set(id, list.length);
  list.push(id);
}

/** Puts the last edge into the gap: the order of a list has no meaning. */
function remove(list: number[], id: number): boolean {
  const at = position(list, id);
  if (at === -1) return false;
  const last = list.pop() as number;
  const index = indexes.get(list);
  index?.delete(id);
  if (at < list.length) {
    list[at] = last;
    index?.set(last, at);
  }
  return true;
}

function idOf(node: GraphNode | number): number | undefined {
  return typeof node === 'number' ? node : node.idInGraph;
}

function known(node: GraphNode | number): number {
  const id = idOf(node);
  if (id === undefined) throw new Error('The node is not in the graph.');
  return id;
}

/**
 * HyperFormula keeps who reads a cell as a plain list and walks it for each edge that comes or goes.
 * In our books everything is relative to the key: tens of thousands of formulas read one cell, and
 * each edit of theirs walked the whole list. Here a long list gets an index beside it.
 */
export function indexEdges(calculator: HyperFormula): void {
  const prototype: Graph = Object.getPrototypeOf(calculator.graph);
  Object.assign(prototype, quickGraph);
}

const quickGraph: Partial<Graph> & ThisType<Graph> = {
  addEdge(from, to) {
    const toId = known(to);
    const list = this.edgesSparseArray[known(from)];
    if (list === undefined) throw new Error('The node is not in the graph.');
    add(list, toId);
  },
  existsEdge(from, to) {
    const fromId = idOf(from);
    const toId = idOf(to);
    if (fromId === undefined || toId === undefined) return false;
    return position(this.edgesSparseArray[fromId] ?? [], toId) !== -1;
  },
  removeEdge(from, to) {
    if (!remove(this.edgesSparseArray[known(from)] ?? [], known(to))) {
      throw new Error('The edge does not exist.');
    }
  },
  removeEdgeIfExists(from, to) {
    const fromId = idOf(from);
    const toId = idOf(to);
    if (fromId === undefined || toId === undefined) return;
    const list = this.edgesSparseArray[fromId];
    if (list) remove(list, toId);
  },
  /** Exact at 0, which is all that callers ask; else at least the number of living nodes. */
  adjacentNodesCount(node) {
    const list = this.edgesSparseArray[known(node)] ?? [];
    for (let last = list.at(-1); last !== undefined; last = list.at(-1)) {
      if (this.nodesSparseArray[last] !== undefined) break;
      list.pop();
      indexes.get(list)?.delete(last);
    }
    return list.length;
  },
};
