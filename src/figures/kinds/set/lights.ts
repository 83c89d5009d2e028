import { edgesOf } from '../../../../functions/fixture/fixture.ts';
import type { Placed } from '../../../../functions/fixture/rig.ts';
import { dot, length, minus, type Vector } from '../../../../functions/fixture/rectangle.ts';
import { element, group, rounded, type Drawn } from '../../kit/element.ts';
import { line } from '../../kit/ground.ts';
import { boxAround } from '../../kit/places.ts';
import { bodyOf, hull } from './faces.ts';
import type { Layout, Spot } from './layout.ts';
import type { SetLight } from './read.ts';

/** A fixture as people carry it: the lamp itself where a frame stands before it. */
export const lampOf = ({ placed }: SetLight): Placed => placed.lamp ?? placed;

const closed = (points: readonly Spot[]): string =>
  `M${points.map(([x, y]) => `${rounded(x)} ${rounded(y)}`).join('L')}Z`;

/** Aim lines and the edges of beams, under everything that has a name. */
export function throws(layout: Layout): Drawn[] {
  const { set, spot, theme, letters } = layout;
  return set.lights.map((light) => {
    const lamp = lampOf(light);
    const [from, to] = [spot(lamp.at), spot(light.aim)];
    const mark = letters * 0.3;
    const [x, y] = to;
    return group({}, [
      ...beamEdgesOf(layout, lamp, light.aim),
      line(from, to, theme.edge, { 'stroke-width': 1, 'stroke-dasharray': '1.5 3.5' }),
      ...facesOf(layout, light),
      element('path', {
        d: `M${rounded(x - mark)} ${rounded(y - mark)}L${rounded(x + mark)} ${rounded(y + mark)}M${rounded(x - mark)} ${rounded(y + mark)}L${rounded(x + mark)} ${rounded(y - mark)}`,
        ...{ fill: 'none', stroke: theme.edge, 'stroke-width': 1.5 },
      }),
    ]);
  });
}

/** Where a frame or a board looks: towards what is said, else a little way on. */
function facesOf({ spot, theme, letters, metre }: Layout, { placed, towards }: SetLight): Drawn[] {
  if (!placed.lamp) return [];
  const from = spot(placed.at);
  if (!towards) return [line(from, spot(ahead(placed, letters / metre)), theme.edge)];
  const [x, y] = spot(towards);
  return [line(from, [x, y], theme.edge, facingLook), diamond(x, y, letters * 0.34, theme.edge)];
}

/** Long and short, so that it is told from an aim line without colour. */
export const facingLook = { 'stroke-width': 1, 'stroke-dasharray': '7 3 1.5 3' };

export const diamond = (x: number, y: number, size: number, stroke: string): Drawn =>
  element('path', {
    d: `M${rounded(x)} ${rounded(y - size)}L${rounded(x + size)} ${rounded(y)}L${rounded(x)} ${rounded(y + size)}L${rounded(x - size)} ${rounded(y)}Z`,
    ...{ fill: 'none', stroke, 'stroke-width': 1.5 },
  });

const ahead = ({ at, forward }: Placed, by: number): Vector => [
  at[0] + forward[0] * by,
  at[1] + forward[1] * by,
  at[2] + forward[2] * by,
];

/** A beam as wide as this lights a room and has no edge that anyone aims by. */
const widest = 80;

/** Where the beam is half as bright as its middle, from the lamp as far as it is aimed. */
function beamEdgesOf({ set, spot, theme }: Layout, lamp: Placed, aim: Vector): Drawn[] {
  const [across, up] = set.axes;
  const { forward } = lamp;
  const reach = length(minus(aim, lamp.at));
  const [a, b] = [forward[across], forward[up]];
  const flat = Math.hypot(a, b);
  const look = { 'stroke-width': 1 };
  if (flat < 0.2) {
    // Seen along its own aim, a beam is round.
    const edges = edgesOf(lamp.fixture, 0.5, 0);
    if (!edges || edges.left + edges.right > widest) return [];
    const far = reach * Math.tan((((edges.left + edges.right) / 2) * Math.PI) / 180);
    const outer: Vector = [
      aim[0] + lamp.right[0] * far,
      aim[1] + lamp.right[1] * far,
      aim[2] + lamp.right[2] * far,
    ];
    const [[x, y], [px, py]] = [spot(aim), spot(outer)];
    const r = Math.hypot(px - x, py - y);
    return [element('circle', { cx: x, cy: y, r, fill: 'none', stroke: theme.edge, ...look })];
  }
  const sideways = [0, 0, 0];
  sideways[across] = -b / flat;
  sideways[up] = a / flat;
  const side: Vector = [sideways[0] ?? 0, sideways[1] ?? 0, sideways[2] ?? 0];
  const turn = Math.atan2(dot(lamp.up, side), dot(lamp.right, side));
  const edges = edgesOf(lamp.fixture, 0.5, (turn * 180) / Math.PI);
  if (!edges || edges.left + edges.right > widest) return [];
  return [edges.right, -edges.left].map((degrees) => {
    const far = reach * Math.tan((degrees * Math.PI) / 180);
    const off = (axis: 0 | 1 | 2) =>
      lamp.at[axis] +
      forward[axis] * reach +
      (lamp.right[axis] * Math.cos(turn) + lamp.up[axis] * Math.sin(turn)) * far;
    return line(spot(lamp.at), spot([off(0), off(1), off(2)]), theme.edge, look);
  });
}

/** Bodies to scale, their lit face in the colour of light. */
export function bodies(layout: Layout): Drawn[] {
  const { set, places, spot, letters } = layout;
  return set.lights.map((light) => {
    const { placed } = light;
    const all = placed.lamp ? [placed.lamp, placed] : [placed];
    const [x, y] = spot(lampOf(light).at);
    places.take(boxAround(x, y, letters * 0.7));
    return group(
      { class: 'light' },
      all.map((one) => body(layout, one)),
    );
  });
}

function body({ spot, theme, letters, metre }: Layout, light: Placed): Drawn {
  const { face, back } = bodyOf(light, (letters * 1.15) / metre);
  const [front, behind] = [face.map(spot), back.map(spot)];
  const outline = hull([...front, ...behind]);
  return group({}, [
    element('path', {
      d: closed(outline),
      ...{ fill: theme.paper, stroke: theme.ink, 'stroke-width': 1.4, 'stroke-linejoin': 'round' },
    }),
    element('path', {
      d: closed(hull(front)),
      ...{ fill: theme.glow, stroke: theme.lamp, 'stroke-width': 2.2, 'stroke-linejoin': 'round' },
    }),
  ]);
}
