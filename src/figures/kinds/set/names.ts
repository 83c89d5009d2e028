import { length, minus } from '../../../../functions/fixture/rectangle.ts';
import { group, type Drawn } from '../../kit/element.ts';
import { boxAround } from '../../kit/places.ts';
import { lettering, shortened, widthOf, type WordsLook } from '../../kit/words.ts';
import { lampOf } from './lights.ts';
import { head } from './heads.ts';
import type { Layout, Spot } from './layout.ts';
import type { SetPoint } from './read.ts';
import { luxSaid, stopsFromKey } from './said.ts';

interface Line {
  readonly text: string;
  readonly look: WordsLook;
}

/** Ways from a thing to its words, the likeliest first. */
const ways: readonly Spot[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
  [-1, 1],
  [1, -1],
  [-1, -1],
];

/** Words beside a thing, where most room is; `first` is the way that is tried before others. */
function beside(
  layout: Layout,
  [x, y]: Spot,
  reach: number,
  lines: readonly Line[],
  first: readonly Spot[] = [],
): Drawn[] {
  const { places } = layout;
  const wide = Math.max(...lines.map(({ text, look }) => widthOf(text, look.size))) + 2;
  const high = lines.reduce((sum, { look }) => sum + look.size * 1.15, 0);
  const boxes = [...first, ...ways].flatMap(([dx, dy]) =>
    [1, 1.7].map((times) => {
      const middle: Spot = [
        x + dx * (reach * times + wide / 2),
        y + dy * (reach * times + high / 2),
      ];
      return boxAround(middle[0], middle[1], wide / 2, high / 2);
    }),
  );
  const box = places.best(boxes);
  if (!box) return [];
  let at = box.top;
  return lines.map(({ text, look }) => {
    at += look.size * 1.15;
    const side = box.left >= x ? 'start' : box.right <= x ? 'end' : 'middle';
    const anchor = { start: box.left, end: box.right, middle: (box.left + box.right) / 2 }[side];
    return lettering(anchor, at - look.size * 0.3, text, { ...look, anchor: side });
  });
}

/** Heads seen from above with what they read, the key’s filled. */
export function points(layout: Layout): Drawn[] {
  const { set, spot, places, letters } = layout;
  const size = letters * 0.46;
  for (const { at } of set.points) {
    const [x, y] = spot(at);
    places.take(boxAround(x, y, size * 1.2));
  }
  return set.points.map((point) =>
    group({ class: 'point' }, [
      head(layout, point, size),
      ...beside(layout, spot(point.at), size * 1.7, pointLines(layout, point)),
    ]),
  );
}

function pointLines({ set, theme, small, letters, writing }: Layout, point: SetPoint): Line[] {
  const key = point === set.key;
  const halo = theme.sheet;
  const reads = key ? luxSaid(point.lux, writing) : stopsFromKey(point.stops, writing);
  return [
    {
      text: shortened(point.name, letters * 12, small),
      look: { fill: theme.ink, size: small, weight: key ? 700 : 600, halo },
    },
    { text: reads, look: { fill: key ? theme.lamp : theme.ink, size: small, halo } },
  ];
}

/** Names of fixtures behind them, or numbers that are said below. */
export function lightNames(layout: Layout): Drawn[] {
  const { set, spot, theme, small, letters, named } = layout;
  return set.lights.map((light, index) => {
    const lamp = lampOf(light);
    const [at, aim] = [spot(lamp.at), spot(light.aim)];
    const far = length(minus([...aim, 0], [...at, 0])) || 1;
    const away: Spot = [(at[0] - aim[0]) / far, (at[1] - aim[1]) / far];
    const text = named ? shortened(light.name, letters * 13, small) : String(index + 1);
    const look = {
      fill: theme.mute,
      size: small,
      halo: theme.sheet,
      ...(!named && { weight: 700 }),
    };
    return group({}, beside(layout, at, letters * 0.95, [{ text, look }], [away]));
  });
}
