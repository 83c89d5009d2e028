/** What a journal line did to the history: something new, one step back, or one step forward again. */
export type LineKind = 'do' | 'undo' | 'redo';

/**
 * How many of the first journal lines may be folded into a snapshot so that at least `keep` lines
 * stay and every undo and redo among those finds its partner among them too. Zero when none may.
 */
export function cutPoint(kinds: readonly LineKind[], keep: number): number {
  const depths: number[] = [];
  let depth = 0;
  for (const kind of kinds) {
    depth += kind === 'undo' ? -1 : 1;
    depths.push(depth);
  }
  let cut = 0;
  let lowestAfter = Infinity;
  for (let index = kinds.length - 1; index >= 0; index--) {
    const here = depths[index] ?? 0;
    // Right after something new there is nothing to redo, and nothing later goes below it.
    const possible = kinds[index] === 'do' && lowestAfter >= here;
    if (possible && kinds.length - (index + 1) >= keep) {
      cut = index + 1;
      break;
    }
    lowestAfter = Math.min(lowestAfter, here);
  }
  return cut;
}
