import type { RangeKind } from '../contract.ts';
import type { Spot } from '../painter.ts';

/** What a hand can do with a pointer, already told apart: mouse and pen drag, a finger taps. */
export interface PointerListener {
  press(spot: Spot, how: { shift: boolean; ctrl: boolean; touch: boolean }): boolean;
  /** The pointer is dragged from a pressed cell or heading. */
  drag(spot: Spot, touch: boolean): void;
  open(spot: Spot): void;
  menu(spot: Spot, x: number, y: number, touch: boolean): void;
  fillBegin(): void;
  fillTo(spot: Spot): void;
  fillEnd(): void;
  resize(column: number, width: number, done: boolean): void;
  fit(column: number): void;
}

export interface PointerGround {
  readonly shell: HTMLElement;
  readonly scroller: HTMLElement;
  spotOf(target: EventTarget | null): Spot | null;
  columnWidth(column: number): number;
}

type Drag =
  | { readonly of: 'cells'; readonly kind: RangeKind; readonly pointer: number }
  | { readonly of: 'fill' | 'grow'; readonly pointer: number }
  | {
      readonly of: 'edge';
      readonly pointer: number;
      readonly column: number;
      readonly startX: number;
      readonly startWidth: number;
    };

/** A finger held still this long asks for the menu. */
const longPress = 500;
const doubleTap = 400;
/** A finger that moved farther than this is scrolling. */
const slack = 10;
/** No column is dragged narrower than this. */
const narrowest = 28;
/** Over the headings a drag of cells scrolls back. */
const headingWidth = 36;
const headingHeight = 24;

export class Pointer {
  private drag: Drag | null = null;
  private tap: { spot: Spot; x: number; y: number; pointer: number } | null = null;
  private lastTap: { spot: Spot; at: number } | null = null;
  private held: ReturnType<typeof setTimeout> | undefined;
  private menuShownAt = -Infinity;
  private scrolling = 0;
  private lastPoint = { x: 0, y: 0 };
  private readonly ground: PointerGround;
  private readonly listener: PointerListener;
  private readonly done = new AbortController();

  constructor(ground: PointerGround, listener: PointerListener) {
    this.ground = ground;
    this.listener = listener;
    const { shell } = ground;
    const { signal } = this.done;
    shell.addEventListener('pointerdown', (event) => this.down(event), { signal });
    // A drag goes on outside the grid.
    window.addEventListener('pointermove', (event) => this.move(event), { signal });
    window.addEventListener('pointerup', (event) => this.up(event), { signal });
    window.addEventListener('pointercancel', () => this.cancel(), { signal });
    shell.addEventListener('dblclick', (event) => this.doubleClick(event), { signal });
    shell.addEventListener('contextmenu', (event) => this.contextMenu(event), { signal });
    // The text box keeps the focus, whatever is pressed.
    const keepFocus = (event: MouseEvent) => {
      if (this.ground.spotOf(event.target)) event.preventDefault();
    };
    shell.addEventListener('mousedown', keepFocus, { signal });
  }

  dispose(): void {
    this.cancel();
    this.done.abort();
  }

  private down(event: PointerEvent): void {
    const target = event.target as Element;
    const spot = this.ground.spotOf(target);
    if (!spot || this.drag) return;
    const grip = gripOf(target);
    if (event.pointerType === 'touch' && grip === null) {
      this.beginTap(event, spot);
      return;
    }
    if (event.button !== 0) return;
    this.lastPoint = { x: event.clientX, y: event.clientY };
    if (grip === 'edge' && spot.on === 'column') {
      this.drag = {
        of: 'edge',
        pointer: event.pointerId,
        column: spot.column,
        startX: event.clientX,
        startWidth: this.ground.columnWidth(spot.column),
      };
      return;
    }
    if (grip === 'handle') {
      const of = event.pointerType === 'touch' ? 'grow' : 'fill';
      this.drag = { of, pointer: event.pointerId };
      if (of === 'fill') this.listener.fillBegin();
      return;
    }
    const how = { shift: event.shiftKey, ctrl: event.ctrlKey || event.metaKey, touch: false };
    if (!this.listener.press(spot, how)) return;
    const kind = spot.on === 'row' ? 'rows' : spot.on === 'column' ? 'columns' : 'cells';
    this.drag = { of: 'cells', kind, pointer: event.pointerId };
  }

  private move(event: PointerEvent): void {
    if (this.tap && event.pointerId === this.tap.pointer) {
      const moved = Math.hypot(event.clientX - this.tap.x, event.clientY - this.tap.y);
      if (moved > slack) this.cancel();
      return;
    }
    const { drag } = this;
    if (!drag || event.pointerId !== drag.pointer) return;
    this.lastPoint = { x: event.clientX, y: event.clientY };
    if (drag.of === 'edge') {
      this.listener.resize(drag.column, this.widthAt(drag, event.clientX), false);
      return;
    }
    this.dragTo();
    this.scrollAlong();
  }

  private up(event: PointerEvent): void {
    if (this.tap && event.pointerId === this.tap.pointer) {
      this.endTap();
      return;
    }
    const { drag } = this;
    if (!drag || event.pointerId !== drag.pointer) return;
    this.drag = null;
    this.stopScrolling();
    if (drag.of === 'edge') {
      this.listener.resize(drag.column, this.widthAt(drag, event.clientX), true);
    }
    if (drag.of === 'fill') this.listener.fillEnd();
  }

  private cancel(): void {
    clearTimeout(this.held);
    this.stopScrolling();
    if (this.drag?.of === 'fill') this.listener.fillEnd();
    this.tap = null;
    this.drag = null;
  }

  private widthAt(drag: { startX: number; startWidth: number }, x: number): number {
    return Math.max(narrowest, Math.round(drag.startWidth + x - drag.startX));
  }

  private beginTap(event: PointerEvent, spot: Spot): void {
    this.tap = { spot, x: event.clientX, y: event.clientY, pointer: event.pointerId };
    clearTimeout(this.held);
    this.held = setTimeout(() => {
      const { tap } = this;
      this.tap = null;
      if (tap) this.showMenu(tap.spot, tap.x, tap.y, true);
    }, longPress);
  }

  private endTap(): void {
    clearTimeout(this.held);
    const { tap, lastTap } = this;
    this.tap = null;
    if (!tap) return;
    const now = performance.now();
    if (lastTap && now - lastTap.at < doubleTap && sameSpot(lastTap.spot, tap.spot)) {
      this.lastTap = null;
      this.listener.open(tap.spot);
      return;
    }
    this.lastTap = { spot: tap.spot, at: now };
    this.listener.press(tap.spot, { shift: false, ctrl: false, touch: true });
  }

  private doubleClick(event: MouseEvent): void {
    const spot = this.ground.spotOf(event.target);
    if (!spot || ('pointerType' in event && event.pointerType === 'touch')) return;
    if (gripOf(event.target as Element) === 'edge' && spot.on === 'column') {
      this.listener.fit(spot.column);
    } else this.listener.open(spot);
  }

  private contextMenu(event: MouseEvent): void {
    const spot = this.ground.spotOf(event.target);
    if (!spot) return;
    event.preventDefault();
    // The keyboard's request is answered by its key; a held finger may have been answered already.
    if (event.button !== 2 && !('pointerType' in event && event.pointerType === 'touch')) return;
    const touch = 'pointerType' in event && event.pointerType === 'touch';
    this.cancel();
    this.showMenu(spot, event.clientX, event.clientY, touch);
  }

  private showMenu(spot: Spot, x: number, y: number, touch: boolean): void {
    const now = performance.now();
    if (touch && now - this.menuShownAt < 1000) return;
    this.menuShownAt = now;
    this.listener.menu(spot, x, y, touch);
  }

  private dragTo(): void {
    const { drag } = this;
    if (!drag) return;
    const spot = this.spotUnder(drag.of === 'cells' ? drag.kind : 'cells');
    if (!spot) return;
    if (drag.of === 'fill') this.listener.fillTo(spot);
    else this.listener.drag(spot, drag.of === 'grow');
  }

  /** The cell under the pointer, or the nearest one in view when it is outside. */
  private spotUnder(kind: RangeKind): Spot | null {
    const box = this.ground.scroller.getBoundingClientRect();
    const right = box.left + this.ground.scroller.clientWidth - 2;
    const bottom = box.top + this.ground.scroller.clientHeight - 2;
    const x = Math.max(box.left + 2, Math.min(right, this.lastPoint.x));
    const y = Math.max(box.top + 2, Math.min(bottom, this.lastPoint.y));
    const spot = this.ground.spotOf(document.elementFromPoint(x, y));
    if (kind !== 'cells' || spot?.on === 'cell') return spot;
    return null;
  }

  /** Dragging beyond the edge scrolls, faster the farther out. */
  private scrollAlong(): void {
    if (this.scrolling || !this.beyond()) return;
    const step = () => {
      const out = this.drag && this.beyond();
      if (!out) {
        this.scrolling = 0;
        return;
      }
      this.ground.scroller.scrollBy(out.x / 3, out.y / 3);
      this.dragTo();
      this.scrolling = requestAnimationFrame(step);
    };
    this.scrolling = requestAnimationFrame(step);
  }

  private beyond(): { x: number; y: number } | null {
    const box = this.ground.scroller.getBoundingClientRect();
    const past = (at: number, low: number, high: number) =>
      at < low ? at - low : at > high ? at - high : 0;
    const kind = this.drag?.of === 'cells' ? this.drag.kind : 'cells';
    const { x: atX, y: atY } = this.lastPoint;
    const x = kind === 'rows' ? 0 : past(atX, box.left + headingWidth, box.right - 4);
    const y = kind === 'columns' ? 0 : past(atY, box.top + headingHeight, box.bottom - 4);
    return x === 0 && y === 0 ? null : { x, y };
  }

  private stopScrolling(): void {
    cancelAnimationFrame(this.scrolling);
    this.scrolling = 0;
  }
}

function gripOf(target: Element): 'edge' | 'handle' | null {
  if (target.classList.contains('edge')) return target.nodeName === 'SPAN' ? 'edge' : null;
  return target.classList.contains('handle') ? 'handle' : null;
}

function sameSpot(a: Spot, b: Spot): boolean {
  return (
    a.on === 'cell' &&
    b.on === 'cell' &&
    a.place.row === b.place.row &&
    a.place.column === b.place.column
  );
}
