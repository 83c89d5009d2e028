import { element, type Drawn } from './element.ts';

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * A box filled with slanting lines: it tells one ground from another on black-and-white paper too.
 * Drawn as one path of lines rather than as a pattern, which would need an id of its own on the page.
 */
export function hatched(box: Box, stroke: string, apart = 6): Drawn | undefined {
  const { left, right, top, bottom } = box;
  const [width, height] = [right - left, bottom - top];
  if (width <= 0 || height <= 0) return undefined;
  const lines: string[] = [];
  for (let along = apart / 2; along < width + height; along += apart) {
    // From the upper edge or the right one, down to the left: x + y stays the same.
    const start = along <= width ? [along, 0] : [width, along - width];
    const end = along <= height ? [0, along] : [along - height, height];
    lines.push(
      `M${at(left, start[0])} ${at(top, start[1])}L${at(left, end[0])} ${at(top, end[1])}`,
    );
  }
  return element('path', { d: lines.join(''), fill: 'none', stroke, 'stroke-width': 1 });
}

const at = (from: number, by = 0): string => String(Math.round((from + by) * 10) / 10);

export const filled = ({ left, right, top, bottom }: Box, fill: string): Drawn | undefined =>
  right > left && bottom > top
    ? element('rect', { x: left, y: top, width: right - left, height: bottom - top, fill })
    : undefined;

/** A straight line. */
export const line = (
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  stroke: string,
  more: Drawn['attributes'] = {},
): Drawn => element('line', { x1, y1, x2, y2, stroke, ...more });
