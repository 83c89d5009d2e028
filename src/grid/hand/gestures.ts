import type { GridEvents, GridModel, Place, Range, RangeKind } from '../contract.ts';
import type { Spot } from '../painter.ts';
import { fillTarget, holds, samePlace } from '../range.ts';
import * as select from '../select.ts';
import { Carry, type Between } from './carry.ts';
import type { Entry } from './entry.ts';
import type { PointerListener } from './pointer.ts';
import type { Surface } from './surface.ts';

/** What presses, drags and taps do to the selection and the entry. */
export class Gestures implements PointerListener {
  private readonly surface: Surface;
  private readonly entry: Entry;
  private readonly model: GridModel;
  private readonly events: GridEvents;
  private readonly carry: Carry;
  private filling: { readonly from: Range; to: Range | null } | null = null;

  constructor(surface: Surface, entry: Entry, model: GridModel, events: GridEvents) {
    this.surface = surface;
    this.entry = entry;
    this.model = model;
    this.events = events;
    this.carry = new Carry(surface, events);
  }

  press(spot: Spot, how: { shift: boolean; ctrl: boolean; touch: boolean }): boolean {
    const { entry, model, surface } = this;
    if (entry.point(spot, false)) return true;
    if (!entry.close()) return false;
    const kind = kindOf(spot);
    const place = this.placeOf(spot);
    const next = how.shift
      ? select.extend(surface.selection, place, model, kind)
      : how.ctrl
        ? select.beginAnother(surface.selection, place, kind, model)
        : select.begin(place, kind, model);
    surface.settle(next, how.touch ? 'touch' : 'mouse');
    entry.focus();
    return true;
  }

  drag(spot: Spot, touch: boolean): void {
    const { entry, model, surface } = this;
    if (entry.isPointing) {
      entry.point(spot, true);
      return;
    }
    if (entry.isOpen) return;
    const lead = this.placeOf(spot);
    if (samePlace(lead, surface.selection.lead)) return;
    const next = select.extend(surface.selection, lead, model);
    surface.settle(next, touch ? 'touch' : 'mouse');
  }

  carries(spot: Spot): boolean {
    return this.carry.canBegin(spot);
  }

  carryBegin(spot: Spot): boolean {
    if (!this.entry.close()) return false;
    this.carry.begin(spot);
    this.entry.focus();
    return true;
  }

  carryTo(between: Between): void {
    this.carry.over(between);
  }

  carryEnd(how: 'keep' | 'drop'): void {
    this.carry.end(how);
  }

  open(spot: Spot): void {
    if (spot.on === 'cell' && !this.entry.isOpen) this.entry.change(spot.place);
  }

  /** A menu is for the selection if it was asked for inside it, else for what was pressed. */
  menu(spot: Spot, x: number, y: number, touch: boolean): void {
    if (!this.entry.close()) return;
    const place = this.placeOf(spot);
    const kind = kindOf(spot);
    const inside = this.surface.selection.ranges.some(
      (range) => (kind === 'cells' || kind === range.kind) && holds(range, place.row, place.column),
    );
    if (!inside) {
      this.surface.settle(select.begin(place, kind, this.model), touch ? 'touch' : 'mouse');
    }
    this.entry.focus();
    this.events.menu({ on: spot.on, place, x, y });
  }

  fillBegin(): void {
    if (this.entry.close()) {
      this.filling = { from: select.lastRange(this.surface.selection), to: null };
    }
  }

  fillTo(spot: Spot): void {
    if (!this.filling || spot.on !== 'cell') return;
    this.filling.to = fillTarget(this.filling.from, spot.place);
    this.surface.preview(this.filling.to);
  }

  fillEnd(): void {
    const { filling } = this;
    this.filling = null;
    this.surface.preview(null);
    if (!filling?.to) return;
    const { from, to } = filling.from;
    this.surface.settle(select.selectBlock(filling.to), 'mouse');
    this.events.fill({ from, to }, filling.to);
  }

  resize(column: number, width: number, done: boolean): void {
    const heading = done ? null : this.surface.headingRect('columns', column);
    this.surface.shell.guide(heading && { axis: 'columns', at: heading.left + width });
    if (done && width !== this.model.columnWidth(column)) this.events.resizeColumn(column, width);
  }

  fit(column: number): void {
    this.events.fitColumn?.(column);
  }

  /** A row is begun at its first cell in view, so that nothing scrolls along it. */
  private placeOf(spot: Spot): Place {
    const { from } = this.surface.visible();
    const { frozen } = this.model;
    if (spot.on === 'cell') return spot.place;
    if (spot.on === 'row') return { row: spot.row, column: frozen.columns > 0 ? 0 : from.column };
    if (spot.on === 'column') return { row: frozen.rows > 0 ? 0 : from.row, column: spot.column };
    return { row: 0, column: 0 };
  }
}

function kindOf(spot: Spot): RangeKind {
  return ({ cell: 'cells', row: 'rows', column: 'columns', corner: 'all' } as const)[spot.on];
}
