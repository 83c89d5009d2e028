import '../grid.css';
import './handsontable.css';
import type { GridEvents, GridModel, GridView } from '../contract.ts';
import { HandView } from '../hand/view.ts';
import { paintHandsontable } from './paint.ts';

/** A virtual sheet: only what is in view is in the document, so it may have any size. */
export function openGrid(host: HTMLElement, model: GridModel, events: GridEvents): GridView {
  return new HandView(host, model, events, (shell, geometry, dress) =>
    paintHandsontable(shell, model, geometry, dress),
  );
}
