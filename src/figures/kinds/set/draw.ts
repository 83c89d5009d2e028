import type { Size, Surroundings } from '../../figure.ts';
import { element, group, rounded, type Drawing, type Drawn } from '../../kit/element.ts';
import type { Box } from '../../kit/ground.ts';
import type { Theme } from '../../kit/theme.ts';
import { border, grid, walls } from './ground.ts';
import { layoutOf } from './layout.ts';
import { legend } from './legend.ts';
import { levelsOf } from './levels.ts';
import { bodies, lampOf, throws } from './lights.ts';
import { coats, drawnLines, lineLabels, stopLines, wholeStops, zone } from './lines.ts';
import { lightNames, points } from './names.ts';
import type { SetPicture } from './read.ts';

export function drawSet(
  set: SetPicture,
  theme: Theme,
  size: Size,
  surroundings: Surroundings,
): Drawing {
  const layout = layoutOf(set, theme, size, surroundings);
  const { box, spot, metre } = layout;
  const levels = levelsOf(layout);
  const whole = levels ? wholeStops(levels) : [];
  const lines = levels ? stopLines(layout, levels, whole) : [];
  const bodiesDrawn = bodies(layout);
  const pointsDrawn = points(layout);
  const names = lightNames(layout);
  const labels = lineLabels(layout, lines);
  const told = legend(layout);
  return {
    width: size.width,
    height: told.bottom,
    held: {
      metre,
      hands: [
        ...set.lights.flatMap(({ row, towards }) =>
          towards ? [{ id: `towards ${row}`, ...placed(spot(towards)) }] : [],
        ),
        ...set.lights.map(({ row, aim }) => ({ id: `aim ${row}`, ...placed(spot(aim)) })),
        ...set.points.map(({ row, at }) => ({ id: `point ${row}`, ...placed(spot(at)) })),
        ...set.lights.map((light) => ({
          id: `rig ${light.row}`,
          ...placed(spot(lampOf(light).at)),
        })),
      ],
    },
    children: [
      element('rect', {
        ...{ x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top },
        fill: theme.paper,
      }),
      levels ? cut(box, coats(layout, levels, whole)) : group({}, []),
      group({}, grid(layout)),
      levels ? cut(box, [...zone(layout, levels), ...drawnLines(layout, lines)]) : group({}, []),
      border(layout),
      walls(layout),
      cut(box, throws(layout)),
      group({}, labels),
      group({}, bodiesDrawn),
      group({}, names),
      group({}, pointsDrawn),
      group({}, told.drawn),
    ],
  };
}

/** An inner picture is cut off at its edges, without a name that another on the page could bear. */
const cut = ({ left, top, right, bottom }: Box, children: readonly Drawn[]): Drawn => {
  const [width, height] = [right - left, bottom - top];
  const viewBox = [left, top, width, height].map(rounded).join(' ');
  return element(
    'svg',
    { x: left, y: top, width, height, viewBox, overflow: 'hidden' },
    ...children,
  );
};

const placed = ([x, y]: readonly [number, number]) => ({ x, y });
