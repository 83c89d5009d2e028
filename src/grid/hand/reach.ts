import type { RangeKind } from '../contract.ts';
import type { Spot } from '../painter.ts';
import type { Between } from './carry.ts';

export interface Ground {
  readonly scroller: HTMLElement;
  spotOf(target: EventTarget | null): Spot | null;
}

/** Over the headings a drag of cells scrolls back. */
const headingWidth = 36;
const headingHeight = 24;

/** What a drag reaches: what is under the pointer, and more of the sheet when it goes beyond. */
export class Reach {
  private readonly ground: Ground;
  private point = { x: 0, y: 0 };
  private scrolling = 0;

  constructor(ground: Ground) {
    this.ground = ground;
  }

  at({ clientX, clientY }: PointerEvent): void {
    this.point = { x: clientX, y: clientY };
  }

  /** The cell or heading under the pointer, or the nearest one in view when it is outside. */
  spot(kind: RangeKind): Spot | null {
    const spot = this.ground.spotOf(this.under());
    return kind !== 'cells' || spot?.on === 'cell' ? spot : null;
  }

  /** Between which lines the pointer is. */
  between(axis: 'rows' | 'columns'): Between | null {
    const target = this.under()?.closest('td,th') ?? null;
    const spot = this.ground.spotOf(target);
    if (!target || !spot) return null;
    const line = lineOf(spot, axis);
    if (line === null) return null;
    const { left, top, width, height } = target.getBoundingClientRect();
    const after =
      axis === 'rows' ? this.point.y > top + height / 2 : this.point.x > left + width / 2;
    return { line, after };
  }

  private under(): Element | null {
    const box = this.ground.scroller.getBoundingClientRect();
    const right = box.left + this.ground.scroller.clientWidth - 2;
    const bottom = box.top + this.ground.scroller.clientHeight - 2;
    const x = Math.max(box.left + 2, Math.min(right, this.point.x));
    const y = Math.max(box.top + 2, Math.min(bottom, this.point.y));
    return document.elementFromPoint(x, y);
  }

  /** Dragging beyond the edge scrolls, faster the farther out, and says so each time. */
  scrollAlong(kind: RangeKind, scrolled: () => void): void {
    if (this.scrolling || !this.beyond(kind)) return;
    const step = () => {
      const out = this.beyond(kind);
      if (!out) return this.rest();
      this.ground.scroller.scrollBy(out.x / 3, out.y / 3);
      scrolled();
      this.scrolling = requestAnimationFrame(step);
    };
    this.scrolling = requestAnimationFrame(step);
  }

  /** The drag is over. */
  rest(): void {
    cancelAnimationFrame(this.scrolling);
    this.scrolling = 0;
  }

  private beyond(kind: RangeKind): { x: number; y: number } | null {
    const box = this.ground.scroller.getBoundingClientRect();
    const past = (at: number, low: number, high: number) =>
      at < low ? at - low : at > high ? at - high : 0;
    const { x: atX, y: atY } = this.point;
    const x = kind === 'rows' ? 0 : past(atX, box.left + headingWidth, box.right - 4);
    const y = kind === 'columns' ? 0 : past(atY, box.top + headingHeight, box.bottom - 4);
    return x === 0 && y === 0 ? null : { x, y };
  }
}

function lineOf(spot: Spot, axis: 'rows' | 'columns'): number | null {
  if (spot.on === 'cell') return axis === 'rows' ? spot.place.row : spot.place.column;
  if (axis === 'rows') return spot.on === 'row' ? spot.row : null;
  return spot.on === 'column' ? spot.column : null;
}
