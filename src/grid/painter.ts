import type { Place } from './contract.ts';
import type { Geometry } from './hand/geometry.ts';

/** Fills in the elements that a painter has made; everything seen in a cell comes from here. */
export interface Dress {
  cell(element: HTMLElement, row: number, column: number): void;
  columnHeading(element: HTMLElement, column: number): void;
  rowHeading(element: HTMLElement, row: number): void;
  corner(element: HTMLElement): void;
}

/** What an adapter is: tables whose cells it dresses, inside an element that scrolls. */
export interface Painter {
  /** Scrolls, and carries role `grid`. */
  readonly scroller: HTMLElement;
  /** Lays everything out again: counts, widths, frozen panes, size of the host. */
  draw(): void;
  /** Draws what came into view after `scroller` was scrolled by program. */
  settle(): void;
  dispose(): void;
}

export type MakePainter = (host: HTMLElement, geometry: Geometry, dress: Dress) => Painter;

/** What an element of the grid stands for. */
export type Spot =
  | { readonly on: 'cell'; readonly place: Place }
  | { readonly on: 'row'; readonly row: number }
  | { readonly on: 'column'; readonly column: number }
  | { readonly on: 'corner' };
