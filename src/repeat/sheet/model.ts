import { captionsIn, cellsOf } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';

/** The share of a light in what is read at a point; undefined for a light that the plan has not. */
type Shares = (light: string) => number | undefined;

/**
 * Who lights what, from the set plans of the book: their points stand under “Point” and their shares
 * under the names of the lights.
 */
export function modelOf(look: Look): (point: string) => Shares | undefined {
  const known = new Map<string, Shares>();
  for (const { id, properties } of look.document.sheets) {
    if (properties.phase !== 'rig') continue;
    const cells = cellsOf(look, id);
    for (let head = 0; head < cells.rows; head += 1) {
      const captions = captionsIn(cells, head, cells.said);
      const point = captions.get('point');
      if (point === undefined || !captions.has('ambient')) continue;
      for (let row = head + 1; row < cells.rows && cells.said(row, point) !== ''; row += 1) {
        known.set(cells.said(row, point).toLowerCase(), (light) => {
          const column = captions.get(light.toLowerCase());
          const at = { sheet: id, row, column: column ?? -1 };
          const value = column === undefined ? undefined : look.engine.valueOf(at);
          const isShare = column !== undefined && look.engine.quantityOf(at) === 'share';
          return isShare && typeof value === 'number' ? value : undefined;
        });
      }
    }
  }
  return (point) => known.get(point.toLowerCase());
}
