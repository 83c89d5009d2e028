import type { RangeKind } from '../contract.ts';
import type { Spot } from '../painter.ts';
import type { Between } from './carry.ts';
import { Reach, type Ground } from './reach.ts';
import { Taps } from './taps.ts';

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
  /** Whether a drag from here takes rows or columns along instead of selecting. */
  carries(spot: Spot): boolean;
  carryBegin(spot: Spot): boolean;
  carryTo(between: Between): void;
  carryEnd(how: 'keep' | 'drop'): void;
  resize(column: number, width: number, done: boolean): void;
  fit(column: number): void;
}

export interface PointerGround extends Ground {
  readonly shell: HTMLElement;
  columnWidth(column: number): number;
}

type Drag =
  | { readonly of: 'cells'; readonly kind: RangeKind; readonly pointer: number }
  | { readonly of: 'fill' | 'grow'; readonly pointer: number }
  | { readonly of: 'lines'; readonly axis: 'rows' | 'columns'; readonly pointer: number }
  | {
      /** A press that is a drag of lines if it moves, and selects if it does not. */
      readonly of: 'heading';
      readonly spot: Spot;
      readonly pointer: number;
      readonly x: number;
      readonly y: number;
    }
  | {
      readonly of: 'edge';
      readonly pointer: number;
      readonly column: number;
      readonly startX: number;
      readonly startWidth: number;
    };

/** A mouse that moved no farther than this has not begun to drag a heading. */
const steady = 4;
/** No column is dragged narrower than this. */
const narrowest = 28;

const plainly = { shift: false, ctrl: false } as const;

export class Pointer {
  private drag: Drag | null = null;
  private menuShownAt = -Infinity;
  private readonly ground: PointerGround;
  private readonly listener: PointerListener;
  private readonly reach: Reach;
  private readonly taps: Taps;
  private readonly done = new AbortController();

  constructor(ground: PointerGround, listener: PointerListener) {
    this.ground = ground;
    this.listener = listener;
    this.reach = new Reach(ground);
    this.taps = new Taps({
      tapped: (spot) => listener.press(spot, { ...plainly, touch: true }),
      tappedTwice: (spot) => listener.open(spot),
      held: (spot, x, y) => this.showMenu(spot, x, y, true),
      slipped: (spot, pointer) => {
        if (listener.carries(spot)) this.carry(spot, pointer);
      },
    });
    const { shell } = ground;
    const { signal } = this.done;
    shell.addEventListener('pointerdown', (event) => this.down(event), { signal });
    // A drag goes on outside the grid.
    window.addEventListener('pointermove', (event) => this.move(event), { signal });
    window.addEventListener('pointerup', (event) => this.up(event), { signal });
    window.addEventListener('pointercancel', () => this.cancel(), { signal });
    const letGo = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || this.drag?.of !== 'lines') return;
      event.preventDefault();
      event.stopPropagation();
      this.cancel();
    };
    window.addEventListener('keydown', letGo, { signal, capture: true });
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
      this.taps.begin(event, spot);
      return;
    }
    if (event.button !== 0) return;
    this.reach.at(event);
    const { pointerId: pointer, clientX: x, clientY: y } = event;
    if (grip === 'edge' && spot.on === 'column') {
      const startWidth = this.ground.columnWidth(spot.column);
      this.drag = { of: 'edge', pointer, column: spot.column, startX: x, startWidth };
      return;
    }
    if (grip === 'handle') {
      const of = event.pointerType === 'touch' ? 'grow' : 'fill';
      this.drag = { of, pointer };
      if (of === 'fill') this.listener.fillBegin();
      return;
    }
    const how = { shift: event.shiftKey, ctrl: event.ctrlKey || event.metaKey, touch: false };
    if (!how.shift && !how.ctrl && this.listener.carries(spot)) {
      this.drag = { of: 'heading', spot, pointer, x, y };
      return;
    }
    if (!this.listener.press(spot, how)) return;
    const kind = spot.on === 'row' ? 'rows' : spot.on === 'column' ? 'columns' : 'cells';
    this.drag = { of: 'cells', kind, pointer };
  }

  private carry(spot: Spot, pointer: number): void {
    this.drag = null;
    if (!this.listener.carryBegin(spot)) return;
    this.drag = { of: 'lines', axis: spot.on === 'row' ? 'rows' : 'columns', pointer };
  }

  private move(event: PointerEvent): void {
    if (this.taps.owns(event)) {
      this.taps.move(event);
      return;
    }
    const { drag } = this;
    if (!drag || event.pointerId !== drag.pointer) return;
    this.reach.at(event);
    if (drag.of === 'edge') {
      this.listener.resize(drag.column, this.widthAt(drag, event.clientX), false);
      return;
    }
    if (drag.of === 'heading') {
      const moved = Math.hypot(event.clientX - drag.x, event.clientY - drag.y);
      if (moved <= steady) return;
      this.carry(drag.spot, drag.pointer);
    }
    this.dragTo();
    if (this.drag) this.reach.scrollAlong(kindOf(this.drag), () => this.dragTo());
  }

  private up(event: PointerEvent): void {
    if (this.taps.owns(event)) {
      this.taps.end();
      return;
    }
    const { drag } = this;
    if (!drag || event.pointerId !== drag.pointer) return;
    this.drag = null;
    this.reach.rest();
    if (drag.of === 'edge') {
      this.listener.resize(drag.column, this.widthAt(drag, event.clientX), true);
    }
    if (drag.of === 'fill') this.listener.fillEnd();
    if (drag.of === 'lines') this.listener.carryEnd('keep');
    if (drag.of === 'heading') this.listener.press(drag.spot, { ...plainly, touch: false });
  }

  private cancel(): void {
    this.taps.cancel();
    this.reach.rest();
    if (this.drag?.of === 'fill') this.listener.fillEnd();
    if (this.drag?.of === 'lines') this.listener.carryEnd('drop');
    this.drag = null;
  }

  private widthAt(drag: { startX: number; startWidth: number }, x: number): number {
    return Math.max(narrowest, Math.round(drag.startWidth + x - drag.startX));
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
    if (drag.of === 'lines') {
      const between = this.reach.between(drag.axis);
      if (between) this.listener.carryTo(between);
      return;
    }
    const spot = this.reach.spot(kindOf(drag));
    if (!spot) return;
    if (drag.of === 'fill') this.listener.fillTo(spot);
    else this.listener.drag(spot, drag.of === 'grow');
  }
}

function kindOf(drag: Drag): RangeKind {
  if (drag.of === 'cells') return drag.kind;
  return drag.of === 'lines' ? drag.axis : 'cells';
}

function gripOf(target: Element): 'edge' | 'handle' | null {
  if (target.classList.contains('edge')) return target.nodeName === 'SPAN' ? 'edge' : null;
  return target.classList.contains('handle') ? 'handle' : null;
}
