import '../grid.css';
import './plain.css';
import type { GridEvents, GridModel, GridView } from '../contract.ts';
import { HandView } from '../hand/view.ts';
import { paintPlain } from './paint.ts';

/** A real table with every cell in the document: for reading, printing and small sheets. */
export function openGrid(host: HTMLElement, model: GridModel, events: GridEvents): GridView {
  return new HandView(host, model, events, (shell, geometry, dress) =>
    paintPlain(shell, model, geometry, dress),
  );
}
