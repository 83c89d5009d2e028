import type { GridEvents, GridKind, GridModel, GridView } from './contract.ts';
import { thinned } from './thinned.ts';

export type * from './contract.ts';
export { seenRows } from './seen-rows.ts';

/**
 * Builds a grid in `host`, an empty element whose size is set by CSS. The code is fetched on first
 * use, after the shell has painted. `leftOut` says which rows are out of view, from the top.
 */
export async function createGrid(
  host: HTMLElement,
  model: GridModel,
  events: GridEvents,
  kind: GridKind = 'sheet',
  leftOut: () => readonly number[] = () => none,
): Promise<GridView> {
  const { openGrid } =
    kind === 'sheet' ? await import('./handsontable/open.ts') : await import('./plain/open.ts');
  return thinned(model, events, leftOut, (seen, heard) => openGrid(host, seen, heard));
}

const none: readonly number[] = [];
