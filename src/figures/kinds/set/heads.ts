import { element, group, rounded, type Drawn } from '../../kit/element.ts';
import type { Theme } from '../../kit/theme.ts';
import type { Layout } from './layout.ts';
import type { SetPoint } from './read.ts';

/** A head seen from above: its nose points where the receptor faces. */
export function head({ set, spot, theme }: Layout, point: SetPoint, size: number): Drawn {
  const [x, y] = spot(point.at);
  const [across, up] = [point.look[set.axes[0]], -point.look[set.axes[1]]];
  const level = Math.hypot(across, up);
  const way = level > 0.35 ? ([across / level, up / level] as const) : undefined;
  return headAt(x, y, size, way, point === set.key, theme);
}

export function headAt(
  x: number,
  y: number,
  size: number,
  way: readonly [number, number] | undefined,
  filled: boolean,
  theme: Theme,
): Drawn {
  const fill = filled ? theme.lamp : theme.paper;
  const look = { fill, stroke: filled ? theme.lamp : theme.ink, 'stroke-width': 1.4 };
  const nose = way && nosePath(x, y, size, way);
  return group({}, [
    element('circle', { cx: x, cy: y, r: size + 2, fill: theme.sheet, 'fill-opacity': 0.75 }),
    nose !== undefined && element('path', { d: nose, ...look, 'stroke-linejoin': 'round' }),
    element('circle', { cx: x, cy: y, r: size, ...look }),
    // Facing along the line of sight: an eye.
    !way &&
      element('circle', { cx: x, cy: y, r: size * 0.3, fill: filled ? theme.paper : theme.ink }),
  ]);
}

function nosePath(x: number, y: number, size: number, [dx, dy]: readonly [number, number]): string {
  const at = (ahead: number, aside: number) =>
    `${rounded(x + dx * ahead - dy * aside)} ${rounded(y + dy * ahead + dx * aside)}`;
  return `M${at(size * 0.7, size * 0.7)}L${at(size * 1.85, 0)}L${at(size * 0.7, -size * 0.7)}Z`;
}
