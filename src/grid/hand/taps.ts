import type { Spot } from '../painter.ts';

/** What a finger did that did not scroll. */
export interface TapListener {
  tapped(spot: Spot): void;
  tappedTwice(spot: Spot): void;
  held(spot: Spot, x: number, y: number): void;
  /** It moved off without being lifted: a drag, where one may begin, else the browser scrolls. */
  slipped(spot: Spot, pointer: number): void;
}

/** A finger held still this long asks for the menu. */
const longPress = 500;
const doubleTap = 400;
/** A finger that moved farther than this is scrolling. */
const slack = 10;

/** Tells taps, double taps and long presses of a finger apart. */
export class Taps {
  private tap: { spot: Spot; x: number; y: number; pointer: number } | null = null;
  private last: { spot: Spot; at: number } | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private readonly listener: TapListener;

  constructor(listener: TapListener) {
    this.listener = listener;
  }

  begin(event: PointerEvent, spot: Spot): void {
    this.tap = { spot, x: event.clientX, y: event.clientY, pointer: event.pointerId };
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      const { tap } = this;
      this.tap = null;
      if (tap) this.listener.held(tap.spot, tap.x, tap.y);
    }, longPress);
  }

  /** True if this is the finger of a tap. */
  owns(event: PointerEvent): boolean {
    return this.tap?.pointer === event.pointerId;
  }

  move(event: PointerEvent): void {
    const { tap } = this;
    if (!tap || Math.hypot(event.clientX - tap.x, event.clientY - tap.y) <= slack) return;
    this.cancel();
    this.listener.slipped(tap.spot, tap.pointer);
  }

  end(): void {
    const { tap, last } = this;
    this.cancel();
    if (!tap) return;
    const now = performance.now();
    if (last && now - last.at < doubleTap && sameCell(last.spot, tap.spot)) {
      this.last = null;
      this.listener.tappedTwice(tap.spot);
      return;
    }
    this.last = { spot: tap.spot, at: now };
    this.listener.tapped(tap.spot);
  }

  cancel(): void {
    clearTimeout(this.timer);
    this.tap = null;
  }
}

function sameCell(a: Spot, b: Spot): boolean {
  return (
    a.on === 'cell' &&
    b.on === 'cell' &&
    a.place.row === b.place.row &&
    a.place.column === b.place.column
  );
}
