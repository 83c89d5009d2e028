import type { Box } from '../../kit/ground.ts';
import { shortened, widthOf } from '../../kit/words.ts';

export interface Point {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

export interface Label extends Point {
  readonly anchor: 'start' | 'end';
}

interface Room {
  readonly box: Box;
  readonly letters: number;
  /** From the middle of a dot to its words. */
  readonly gap: number;
}

/** Each dot's words beside it, on the side and at the height where they run into no others. */
export function placed(points: readonly Point[], { box, letters, gap }: Room): readonly Label[] {
  const taken: Box[] = points.map(({ x, y }) => ({
    left: x - gap * 0.7,
    right: x + gap * 0.7,
    top: y - gap * 0.7,
    bottom: y + gap * 0.7,
  }));
  return points.map(({ text, x, y }, index) => {
    const others = taken.filter((_, at) => at !== index);
    const choices = heights(letters).flatMap((down) => sides(text, x, y + down));
    const free = choices.find(({ ground }) => !others.some((other) => meets(other, ground)));
    const { label, ground } = free ?? choices[0]!;
    taken.push(ground);
    return label;
  });

  function sides(text: string, x: number, y: number) {
    return (['start', 'end'] as const)
      .map((anchor) => {
        const edge = anchor === 'start' ? box.right - x - gap : x - gap - box.left;
        const other = anchor === 'start' ? x - gap - box.left : box.right - x - gap;
        // Cut only where the words fit on neither side.
        const fits = shortened(text, Math.max(edge, letters * 4), letters);
        const width = widthOf(fits, letters);
        const start = anchor === 'start' ? x + gap : x - gap - width;
        const ground = {
          left: start,
          right: start + width,
          top: y - letters,
          bottom: y + letters * 0.3,
        };
        const label = {
          text: fits,
          x: anchor === 'start' ? x + gap : x - gap,
          y: y + letters * 0.34,
          anchor,
        };
        return { label, ground, cut: fits !== text && other > edge };
      })
      .toSorted((a, b) => Number(a.cut) - Number(b.cut));
  }
}

/** Beside the dot first, then above and below it by turns. */
const heights = (letters: number): readonly number[] =>
  [0, -1, 1, -2, 2, -3, 3].map((step) => step * letters * 1.15);

const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
