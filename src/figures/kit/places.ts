import type { Box } from './ground.ts';

/** Where letters and signs stand already, so that the next find room of their own. */
export class Places {
  readonly #taken: Box[] = [];
  readonly #bounds: Box;

  constructor(bounds: Box) {
    this.#bounds = bounds;
  }

  take(box: Box): void {
    this.#taken.push(box);
  }

  isFree(box: Box): boolean {
    const { left, right, top, bottom } = this.#bounds;
    return (
      box.left >= left &&
      box.right <= right &&
      box.top >= top &&
      box.bottom <= bottom &&
      this.#taken.every((other) => covered(box, other) === 0)
    );
  }

  /** The first of these that is free, else the one that covers least; taken from now on. */
  best(boxes: readonly Box[]): Box | undefined {
    const free = boxes.find((box) => this.isFree(box));
    const best = free ?? boxes.toSorted((a, b) => this.#cost(a) - this.#cost(b))[0];
    if (best) this.take(best);
    return best;
  }

  #cost(box: Box): number {
    const outside = size(box) - covered(box, this.#bounds);
    return this.#taken.reduce((sum, other) => sum + covered(box, other), outside * 4);
  }
}

const size = ({ left, right, top, bottom }: Box): number => (right - left) * (bottom - top);

function covered(one: Box, other: Box): number {
  const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return wide > 0 && high > 0 ? wide * high : 0;
}

export const boxAround = (x: number, y: number, half: number, high = half): Box => ({
  left: x - half,
  right: x + half,
  top: y - high,
  bottom: y + high,
});
