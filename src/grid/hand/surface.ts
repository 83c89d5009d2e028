import type {
  GridEvents,
  GridModel,
  Move,
  Origin,
  Outline,
  Place,
  Range,
  Selection,
} from '../contract.ts';
import type { MakePainter, Painter, Spot } from '../painter.ts';
import { samePlace, within } from '../range.ts';
import * as select from '../select.ts';
import * as travel from '../travel.ts';
import { Dresser } from './dresser.ts';
import { Geometry, type Density } from './geometry.ts';
import { Shell } from './shell.ts';

/** The painted cells and the selection on them: what keys, pointer and editor all act on. */
export class Surface {
  readonly shell: Shell;
  readonly geometry: Geometry;
  readonly painter: Painter;
  private readonly dresser: Dresser;
  private readonly model: GridModel;
  private readonly events: GridEvents;
  /** Where a run of Tabs began: Enter goes back to that column. */
  private tabColumn: number | null = null;
  private seen = '';
  private outlines: readonly Outline[] = [];
  /** Cells moved on the screen: what lies over them follows. */
  follow: () => void = () => undefined;

  constructor(host: HTMLElement, model: GridModel, events: GridEvents, make: MakePainter) {
    this.model = model;
    this.events = events;
    this.shell = new Shell(host);
    this.geometry = new Geometry(model, this.shell.density);
    this.dresser = new Dresser(model, this.geometry, select.selectCell({ row: 0, column: 0 }));
    this.painter = make(this.shell.element, this.geometry, this.dresser);
    this.shell.adopt(this.painter.scroller);
  }

  get selection(): Selection {
    return this.dresser.selection;
  }

  visible(): Range {
    return this.geometry.visible(this.painter.scroller);
  }

  spotOf(target: EventTarget | null): Spot | null {
    return this.dresser.spotOf(target);
  }

  /** The element of a cell; of the copies in frozen panes the one on top. */
  elementOf(place: Place): HTMLElement | null {
    let found: HTMLElement | null = null;
    for (const element of this.shell.cellsAt(place)) {
      const spot = this.dresser.spotOf(element);
      if (spot?.on === 'cell' && samePlace(spot.place, place)) found = element;
    }
    return found;
  }

  headingRect(axis: 'rows' | 'columns', line: number): DOMRect | null {
    return this.shell.headingRect((target) => {
      const spot = this.dresser.spotOf(target);
      return axis === 'rows'
        ? spot?.on === 'row' && spot.row === line
        : spot?.on === 'column' && spot.column === line;
    });
  }

  // Painting.

  paint(places?: Iterable<Place>): void {
    const wanted = places && new Set(Array.from(places, keyOf));
    for (const element of this.shell.cells()) {
      const spot = this.dresser.spotOf(element);
      if (spot?.on !== 'cell') continue;
      if (wanted && !wanted.has(keyOf(spot.place))) continue;
      this.dresser.cell(element, spot.place.row, spot.place.column);
    }
    this.markActive();
  }

  refresh(): void {
    this.geometry.measure();
    const fitted = select.refit(this.selection, this.model);
    const changed = JSON.stringify(fitted) !== JSON.stringify(this.selection);
    this.dresser.selection = fitted;
    this.shell.describe(this.model);
    this.relay();
    if (changed) this.events.selected(fitted, 'program');
  }

  relay(): void {
    this.painter.draw();
    this.markActive();
    this.moved();
  }

  outline(outlines: readonly Outline[]): void {
    this.outlines = outlines;
    this.preview(null);
  }

  /** Shows where a fill would reach, beside the host's own outlines. */
  preview(range: Range | null): void {
    const added: Outline[] = range ? [{ range, as: 'reference' }] : [];
    this.dresser.outlines = [...this.outlines, ...added];
    this.remark();
  }

  setDensity(density: Density): void {
    this.geometry.density = density;
    this.refresh();
  }

  moved(): void {
    this.follow();
    const visible = this.visible();
    const key = JSON.stringify(visible);
    if (key === this.seen) return;
    this.seen = key;
    // The painter may have put another cell into the element that was the active one.
    this.markActive();
    this.events.scrolled?.(visible);
  }

  scrollTo(place: Place): void {
    const { scroller } = this.painter;
    const target = this.geometry.scrollFor(within(place, this.model), scroller);
    if (target.left === scroller.scrollLeft && target.top === scroller.scrollTop) return;
    scroller.scrollLeft = target.left;
    scroller.scrollTop = target.top;
    this.painter.settle();
    this.moved();
  }

  say(place: Place, sentence: string): void {
    this.scrollTo(place);
    this.shell.say(sentence, this.elementOf(place));
  }

  // Selecting.

  /** Takes a selection, shows `end` of it and tells the host. */
  settle(selection: Selection, origin: Origin, end: Place = this.endOf(selection)): void {
    this.tabColumn = null;
    this.dresser.selection = selection;
    this.shell.hush();
    this.remark();
    this.scrollTo(end);
    this.moved();
    this.events.selected(selection, origin);
  }

  /** After Enter, Tab or a finished entry. An arrow means the neighbour, wherever the host sends Enter. */
  advance(move: Move, from: Place, byArrow = false): void {
    if (move === 'stay') {
      this.moved();
      return;
    }
    if (!select.isSingle(this.selection)) {
      const focus = travel.cycle(this.selection, move);
      this.settle({ ...this.selection, focus }, 'keyboard', focus);
      return;
    }
    const across = move === 'right' || move === 'left';
    const began = this.tabColumn;
    const base = move === 'down' && began !== null ? { row: from.row, column: began } : from;
    const told = byArrow ? undefined : this.events.next?.(from, move);
    const to = told ?? travel.stepFrom(base, travel.steps[move], this.model);
    this.settle(select.selectCell(within(to, this.model)), 'keyboard');
    this.tabColumn = across ? (began ?? from.column) : null;
  }

  /** Whole rows and columns are shown from where the view is. */
  private endOf({ lead, ranges }: Selection): Place {
    const { from } = this.visible();
    const kind = ranges[ranges.length - 1]?.kind;
    return {
      row: kind === 'columns' || kind === 'all' ? from.row : lead.row,
      column: kind === 'rows' || kind === 'all' ? from.column : lead.column,
    };
  }

  private remark(): void {
    this.dresser.remark(this.shell.cells());
    this.markActive();
  }

  /** Screen readers follow the id: it is on the copy of the focus cell that is seen. */
  markActive(): void {
    this.shell.markActive(this.elementOf(this.selection.focus));
  }
}

function keyOf(place: Place): number {
  return place.row * 16384 + place.column;
}
