import Handsontable from 'handsontable';
import type { GridModel } from '../contract.ts';
import type { Geometry } from '../hand/geometry.ts';
import type { Dress, Painter } from '../painter.ts';
import { isWalkontable, settingsFor, type Walkontable } from './walkontable.ts';

/**
 * Handsontable 6.2.2 as a painter and nothing else: no data, no selection, no editor, no plugins, and
 * it never listens to a key. It lays out the visible cells and the frozen panes; we fill them in.
 */
export function paintHandsontable(
  shell: HTMLElement,
  model: GridModel,
  geometry: Geometry,
  dress: Dress,
): Painter {
  const frame = document.createElement('div');
  frame.className = 'sheet-frame';
  const root = document.createElement('div');
  frame.append(root);
  shell.append(frame);

  const grid = new Handsontable(root, {
    data: [[]],
    beforeInitWalkontable: (settings: object) => {
      Object.assign(settings, settingsFor(model, geometry, dress));
    },
    rowHeaders: true,
    colHeaders: true,
    autoColumnSize: false,
    autoRowSize: false,
    copyPaste: false,
    fillHandle: false,
    undo: false,
    outsideClickDeselects: false,
  });
  const walkontable = walkontableOf(grid);
  const scroller = walkontable.wtTable.holder;

  function draw(): void {
    walkontable.wtViewport.resetHasOversizedColumnHeadersMarked();
    walkontable.draw(false);
    walkontable.wtOverlays.adjustElementsSize(true);
    walkontable.draw(false);
    describeTables();
  }

  /** The layout tables are not tables to a screen reader; frozen copies belong to the grid. */
  function describeTables(): void {
    const owned: string[] = [];
    for (const table of root.querySelectorAll('table')) {
      table.setAttribute('role', 'presentation');
      for (const part of table.querySelectorAll('thead,tbody'))
        part.setAttribute('role', 'rowgroup');
      const clone = table.closest('[class*="ht_clone"]');
      if (!clone) continue;
      for (const twin of table.querySelectorAll('thead, tbody th')) {
        twin.setAttribute('aria-hidden', 'true');
      }
      const frozen = table.querySelector('td') !== null;
      if (frozen) {
        clone.removeAttribute('aria-hidden');
        clone.id = `${scroller.id}-${clone.className.split(' ')[0] ?? ''}`;
        owned.push(clone.id);
      } else clone.setAttribute('aria-hidden', 'true');
    }
    if (owned.length > 0) scroller.setAttribute('aria-owns', owned.join(' '));
    else scroller.removeAttribute('aria-owns');
  }

  return {
    scroller,
    draw,
    settle: () => walkontable.wtOverlays.syncScrollPositions(),
    dispose: () => {
      grid.destroy();
      frame.remove();
    },
  };
}

function walkontableOf(grid: Handsontable): Walkontable {
  const view: unknown = Reflect.get(grid, 'view');
  const walkontable: unknown =
    typeof view === 'object' && view ? Reflect.get(view, 'wt') : undefined;
  if (!isWalkontable(walkontable)) throw new Error('This is not the grid that was pinned.');
  return walkontable;
}
