import type { GridEvents, GridKind, GridModel, GridView } from './contract.ts';

export type * from './contract.ts';

/**
 * Builds a grid in `host`, an empty element whose size is set by CSS. The code is fetched on first
 * use, after the shell has painted.
 */
export async function createGrid(
  host: HTMLElement,
  model: GridModel,
  events: GridEvents,
  kind: GridKind = 'sheet',
): Promise<GridView> {
  const { openGrid } =
    kind === 'sheet' ? await import('./handsontable/open.ts') : await import('./plain/open.ts');
  return openGrid(host, model, events);
}
