/** What a journal line did to the history: something new, more of that, one step back, or one forward again. */
export type LineKind = 'do' | 'follow' | 'undo' | 'redo';

/**
 * How many of the first journal lines may be folded into a snapshot so that at least `keep` gestures
 * can still be undone or redone, and every undo and redo among the lines that stay finds its partner
 * among them too. Zero when none may.
 */
export function cutPoint(kinds: readonly LineKind[], keep: number): number {
  const depths: number[] = [];
  let done = 0;
  let undone = 0;
  for (const kind of kinds) {
    done += kind === 'undo' ? -1 : kind === 'follow' ? 0 : 1;
    if (kind === 'do') undone = 0;
    else if (kind !== 'follow') undone += kind === 'undo' ? 1 : -1;
    depths.push(done);
  }
  let lowestAfter = Infinity;
  for (let index = kinds.length - 1; index >= 0; index--) {
    const here = depths[index] ?? 0;
    // Right after something new there is nothing to redo, and nothing later goes below it.
    const possible = kinds[index] === 'do' && lowestAfter >= here;
    if (possible && done + undone - here >= keep) return index + 1;
    lowestAfter = Math.min(lowestAfter, here);
  }
  return 0;
}
