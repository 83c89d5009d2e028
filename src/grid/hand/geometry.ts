import type { GridModel, Place, Range } from '../contract.ts';
import { within } from '../range.ts';

/** Row heights are fixed, so that a sheet of any length is laid out without measuring. */
export const densities = {
  fine: { row: 31, heading: 28 },
  coarse: { row: 44, heading: 36 },
} as const;

export type Density = keyof typeof densities;

/** Where cells lie below and right of the headers, in CSS pixels, from the model alone. */
export class Geometry {
  /** Left edge of each column; the last entry is the full width. */
  private lefts: readonly number[] = [0];
  private readonly model: GridModel;
  density: Density;

  constructor(model: GridModel, density: Density) {
    this.model = model;
    this.density = density;
    this.measure();
  }

  measure(): void {
    const lefts = [0];
    let sum = 0;
    for (let column = 0; column < this.model.columnCount; column += 1) {
      sum += this.model.columnWidth(column);
      lefts.push(sum);
    }
    this.lefts = lefts;
  }

  get rowHeight(): number {
    return densities[this.density].row;
  }

  get headingHeight(): number {
    return densities[this.density].heading;
  }

  /** Wide enough for the last row's label. */
  get rowHeadingWidth(): number {
    const label = this.model.rowLabel(Math.max(0, this.model.rowCount - 1));
    return Math.max(40, 18 + label.length * 8);
  }

  left(column: number): number {
    return this.lefts[Math.max(0, Math.min(column, this.lefts.length - 1))] ?? 0;
  }

  get frozenHeight(): number {
    return this.model.frozen.rows * this.rowHeight;
  }

  get frozenWidth(): number {
    return this.left(this.model.frozen.columns);
  }

  /** The cell at a distance from the corner of the first cell. */
  at(x: number, y: number): Place {
    let low = 0;
    let high = this.lefts.length - 1;
    while (low + 1 < high) {
      const middle = (low + high) >> 1;
      if (this.left(middle) <= x) low = middle;
      else high = middle;
    }
    return within({ row: Math.floor(y / this.rowHeight), column: low }, this.model);
  }

  /** The cells that `scroller` has in view beside the frozen ones, partly seen ones included. */
  visible(scroller: HTMLElement): Range {
    const left = scroller.scrollLeft + this.frozenWidth;
    const top = scroller.scrollTop + this.frozenHeight;
    return {
      from: this.at(left, top),
      to: this.at(
        scroller.scrollLeft + scroller.clientWidth - this.rowHeadingWidth - 1,
        scroller.scrollTop + scroller.clientHeight - this.headingHeight - 1,
      ),
    };
  }

  /** Scroll position that brings a cell fully into view with the least movement. */
  scrollFor(place: Place, scroller: HTMLElement): { left: number; top: number } {
    const { frozen } = this.model;
    const width = scroller.clientWidth - this.rowHeadingWidth;
    const height = scroller.clientHeight - this.headingHeight;
    const cellLeft = this.left(place.column);
    const cellTop = place.row * this.rowHeight;
    return {
      left:
        place.column < frozen.columns
          ? scroller.scrollLeft
          : nearest(
              scroller.scrollLeft,
              cellLeft,
              this.left(place.column + 1),
              this.frozenWidth,
              width,
            ),
      top:
        place.row < frozen.rows
          ? scroller.scrollTop
          : nearest(
              scroller.scrollTop,
              cellTop,
              cellTop + this.rowHeight,
              this.frozenHeight,
              height,
            ),
    };
  }

  /** Full rows below the frozen ones: how far Page Down goes. */
  page(scroller: HTMLElement): number {
    const height = scroller.clientHeight - this.headingHeight - this.frozenHeight;
    return Math.max(1, Math.floor(height / this.rowHeight) - 1);
  }
}

/** A cell longer than the view shows its start. */
function nearest(scroll: number, start: number, end: number, frozen: number, view: number): number {
  if (start < scroll + frozen) return Math.max(0, start - frozen);
  if (end > scroll + view) return Math.max(0, Math.min(end - view, start - frozen));
  return scroll;
}
