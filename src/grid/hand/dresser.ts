import type { GridModel, Outline, Place, Range, Selection } from '../contract.ts';
import type { Dress, Spot } from '../painter.ts';
import { holds, isOneCell, samePlace } from '../range.ts';
import { lastRange } from '../select.ts';
import { isTaken, paintCell } from './cell.ts';
import type { Geometry } from './geometry.ts';
import { Room } from './room.ts';
import { words } from '../../words/words.ts';

const isCellElement = (element: Element): boolean =>
  element.nodeName === 'TD' || element.nodeName === 'TH';

/**
 * Dresses cells and headings, remembers which element stands for what, and draws the selection as
 * classes on them: no layer of its own that could drift from the cells.
 */
export class Dresser implements Dress {
  private readonly spots = new WeakMap<Element, Spot>();
  private readonly pictured = new WeakMap<Element, string>();
  private readonly model: GridModel;
  private readonly room: Room;
  selection: Selection;
  outlines: readonly Outline[] = [];

  constructor(model: GridModel, geometry: Geometry, selection: Selection) {
    this.model = model;
    this.room = new Room(
      geometry,
      (row, column) => column < model.columnCount && isTaken(model.cell(row, column)),
    );
    this.selection = selection;
  }

  cell(element: HTMLElement, row: number, column: number): void {
    const known = this.spots.get(element);
    if (known?.on !== 'cell' || known.place.row !== row || known.place.column !== column) {
      this.spots.set(element, { on: 'cell', place: { row, column } });
      element.setAttribute('role', 'gridcell');
      element.setAttribute('aria-colindex', String(column + 2));
      element.parentElement?.setAttribute('role', 'row');
      element.parentElement?.setAttribute('aria-rowindex', String(row + 2));
    }
    const picture = this.model.cell(row, column);
    this.pictured.set(element, paintCell(element, picture));
    this.mark(element, row, column);
    this.room.painted(element, row, column, isTaken(picture));
  }

  columnHeading(element: HTMLElement, column: number): void {
    this.spots.set(element, { on: 'column', column });
    setText(element, this.model.columnLabel(column));
    if (!element.querySelector('.edge')) element.append(edge());
    element.setAttribute('role', 'columnheader');
    element.setAttribute('aria-colindex', String(column + 2));
    element.parentElement?.setAttribute('role', 'row');
    element.parentElement?.setAttribute('aria-rowindex', '1');
    this.markHeading(element, { on: 'column', column });
  }

  rowHeading(element: HTMLElement, row: number): void {
    this.spots.set(element, { on: 'row', row });
    setText(element, this.model.rowLabel(row));
    element.setAttribute('role', 'rowheader');
    element.setAttribute('aria-colindex', '1');
    element.parentElement?.setAttribute('role', 'row');
    element.parentElement?.setAttribute('aria-rowindex', String(row + 2));
    this.markHeading(element, { on: 'row', row });
  }

  corner(element: HTMLElement): void {
    this.spots.set(element, { on: 'corner' });
    element.className = 'corner';
    element.setAttribute('role', 'gridcell');
    element.setAttribute('aria-label', words.grid.whole);
    element.setAttribute('aria-colindex', '1');
    element.parentElement?.setAttribute('role', 'row');
    element.parentElement?.setAttribute('aria-rowindex', '1');
  }

  /** What the element, or the cell around it, stands for. */
  spotOf(target: EventTarget | null): Spot | null {
    const element = target instanceof Element ? target.closest('td,th') : null;
    return (element && this.spots.get(element)) ?? null;
  }

  /** Draws the selection anew on elements that are already dressed. */
  remark(elements: Iterable<HTMLElement>): void {
    for (const element of elements) {
      const spot = this.spots.get(element);
      if (!spot || !isCellElement(element)) continue;
      if (spot.on === 'cell') this.mark(element, spot.place.row, spot.place.column);
      else if (spot.on !== 'corner') this.markHeading(element, spot);
    }
  }

  private mark(element: HTMLElement, row: number, column: number): void {
    const { selection } = this;
    const place: Place = { row, column };
    const classes = [this.pictured.get(element) ?? 'cell', ...this.lines(row, column)];
    const selected = selection.ranges.some((range) => holds(range, row, column));
    const last = lastRange(selection);
    const isFocus = samePlace(selection.focus, place);
    if (selected && !this.isOneCell()) classes.push('selected');
    if (isFocus) classes.push('focus');
    element.className = classes.join(' ');
    element.setAttribute('aria-selected', String(selected || isFocus));
    this.markHandle(element, samePlace(last.to, place) && last.kind === 'cells');
  }

  private isOneCell(): boolean {
    const { ranges } = this.selection;
    return ranges.length === 1 && isOneCell(ranges[0]);
  }

  /**
   * Outlines lie on the hairlines themselves: a cell's right and bottom border are coloured where a
   * range ends, and where the next cell's range begins. Headings count as row and column −1.
   */
  private lines(row: number, column: number): string[] {
    const { frozen } = this.model;
    const classes: string[] = [];
    if (frozen.rows > 0 && row === frozen.rows - 1) classes.push('frozen-bottom');
    if (frozen.columns > 0 && column === frozen.columns - 1) classes.push('frozen-right');
    for (const { range, as } of this.outlines) classes.push(...borders(range, row, column, as));
    if (this.isOneCell()) return classes;
    for (const range of this.selection.ranges)
      classes.push(...borders(range, row, column, 'chosen'));
    return classes;
  }

  /** The small square by which a block is continued (with a finger: made larger). */
  private markHandle(element: HTMLElement, wanted: boolean): void {
    const present = element.querySelector(':scope > .handle');
    if (wanted && !present) {
      const handle = document.createElement('span');
      handle.className = 'handle';
      element.append(handle);
    } else if (!wanted) present?.remove();
  }

  private markHeading(
    element: HTMLElement,
    spot: { on: 'row'; row: number } | { on: 'column'; column: number },
  ): void {
    const along = spot.on === 'row' ? 'rows' : 'columns';
    const across = spot.on === 'row' ? 'columns' : 'rows';
    const { focus } = this.selection;
    const touching = this.selection.ranges.filter(({ from, to }) =>
      spot.on === 'row'
        ? spot.row >= from.row && spot.row <= to.row
        : spot.column >= from.column && spot.column <= to.column,
    );
    const ofFocus = spot.on === 'row' ? spot.row === focus.row : spot.column === focus.column;
    // A whole column touches every row, which would light them all for nothing.
    const lit = ofFocus || touching.some(({ kind }) => kind !== across);
    const whole = touching.some(({ kind }) => kind === 'all' || kind === along);
    const lines = spot.on === 'row' ? this.lines(spot.row, -1) : this.lines(-1, spot.column);
    const classes = [`${spot.on}-heading`, ...lines];
    if (lit) classes.push('lit');
    if (whole) classes.push('whole');
    if (touching.some(({ kind }) => kind === along)) classes.push('movable');
    element.className = classes.join(' ');
    element.setAttribute('aria-selected', String(whole));
  }
}

function borders(range: Range, row: number, column: number, name: string): string[] {
  const { from, to } = range;
  const inRows = row >= from.row && row <= to.row;
  const inColumns = column >= from.column && column <= to.column;
  const classes: string[] = [];
  if (inRows && (column === to.column || column === from.column - 1)) classes.push(`${name}-right`);
  if (inColumns && (row === to.row || row === from.row - 1)) classes.push(`${name}-bottom`);
  return classes;
}

function setText(element: HTMLElement, text: string): void {
  const label = element.firstElementChild;
  if (label?.className === 'label') {
    if (label.textContent !== text) label.textContent = text;
    return;
  }
  const fresh = document.createElement('span');
  fresh.className = 'label';
  fresh.textContent = text;
  element.replaceChildren(fresh);
}

function edge(): HTMLElement {
  const grip = document.createElement('span');
  grip.className = 'edge';
  return grip;
}
