import type { Geometry } from './geometry.ts';

/**
 * Words run on over blank neighbours, as far as the next cell that is written or marked, and no
 * farther: beyond it they would read as if they stood there. Each cell is told how much room its words have.
 */
export class Room {
  private readonly geometry: Geometry;
  private readonly isTaken: (row: number, column: number) => boolean;
  private readonly written = new WeakMap<Element, boolean>();

  /** @param isTaken whether a cell, which may have no element beside this one, stops words */
  constructor(geometry: Geometry, isTaken: (row: number, column: number) => boolean) {
    this.geometry = geometry;
    this.isTaken = isTaken;
  }

  /** A cell was painted: its own room, and that of the words which it lets pass or stops. */
  painted(cell: HTMLElement, row: number, column: number, isTaken: boolean): void {
    const was = this.written.get(cell) ?? false;
    this.written.set(cell, isTaken);
    if (isTaken) this.give(cell, row, column);
    if (was === isTaken) return;
    const before = this.writtenBefore(cell);
    if (before) this.give(before.cell, row, column - before.steps);
  }

  private writtenBefore(cell: Element): { cell: HTMLElement; steps: number } | null {
    let steps = 1;
    for (let at = cell.previousElementSibling; at; at = at.previousElementSibling) {
      if (this.written.get(at)) return { cell: at as HTMLElement, steps };
      steps += 1;
    }
    return null;
  }

  private give(cell: HTMLElement, row: number, column: number): void {
    let end = column + 1;
    let next = cell.nextElementSibling;
    for (; next && !this.written.get(next); next = next.nextElementSibling) end += 1;
    // A frozen pane ends here; the neighbour stands in the pane beside it.
    const stops = next !== null || this.isTaken(row, end);
    const room = stops ? `${this.geometry.left(end) - this.geometry.left(column)}px` : '';
    if (cell.style.getPropertyValue('--room') !== room) cell.style.setProperty('--room', room);
  }
}
