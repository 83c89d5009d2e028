import type { XY } from '../../../../functions/colour/chromaticity.ts';
import { words } from '../../../words/words.ts';
import { element, group, rounded, type Drawn } from '../../kit/element.ts';
import { boxAround } from '../../kit/places.ts';
import { lettering, shortened, widthOf } from '../../kit/words.ts';
import type { Spot } from './diagram.ts';
import { screenColour } from './screenColour.ts';
import type { View } from './view.ts';

export const dotSize = (letters: number): number => letters * 0.42;

const outline = (places: readonly Spot[]): string =>
  `M${places.map(([x, y]) => `${rounded(x)} ${rounded(y)}`).join('L')}Z`;

/** A full circle for what is there, a diamond for what it comes to: apart on black-and-white paper too. */
export function mark(
  [x, y]: Spot,
  kind: 'before' | 'after',
  fill: string,
  { theme, letters }: Pick<View, 'theme' | 'letters'>,
): Drawn {
  const r = dotSize(letters);
  const look = { class: 'screen-colour', fill, stroke: theme.ink, 'stroke-width': 1.5 };
  return kind === 'before'
    ? element('circle', { cx: x, cy: y, r, ...look })
    : element('path', {
        d: outline([
          [x, y - r * 1.25],
          [x + r * 1.25, y],
          [x, y + r * 1.25],
          [x - r * 1.25, y],
        ]),
        'stroke-linejoin': 'round',
        ...look,
      });
}

/** What agrees with the white, and a cross on the white itself. */
export function whiteMark({ colours, agrees, spot, theme, letters }: View): Drawn[] {
  const { white } = colours;
  if (!white) return [];
  return [
    ...(agrees.length > 0
      ? [
          element('path', {
            d: outline(agrees.map(spot)),
            ...{ fill: theme.lampbg, 'fill-opacity': 0.85, stroke: theme.lamp },
            ...{ 'stroke-width': 1.5, 'stroke-linejoin': 'round' },
          }),
        ]
      : []),
    cross(spot(white.at), letters * 0.5, theme.lamp),
  ];
}

export const cross = ([x, y]: Spot, reach: number, stroke: string): Drawn =>
  element('path', {
    d: `M${rounded(x - reach)} ${rounded(y)}h${rounded(2 * reach)}M${rounded(x)} ${rounded(y - reach)}v${rounded(2 * reach)}`,
    ...{ fill: 'none', stroke, 'stroke-width': 1.75 },
  });

/** From what is there to what it comes to, as far as there is room for a line between the marks. */
function arrow([x1, y1]: Spot, [x2, y2]: Spot, { theme, letters }: View): Drawn | undefined {
  const far = Math.hypot(x2 - x1, y2 - y1);
  const r = dotSize(letters);
  if (far < r * 3.2) return undefined;
  const [dx, dy] = [(x2 - x1) / far, (y2 - y1) / far];
  const [tipX, tipY] = [x2 - dx * r * 1.5, y2 - dy * r * 1.5];
  const [backX, backY] = [tipX - dx * r * 1.6, tipY - dy * r * 1.6];
  const wide = r * 0.8;
  return group({}, [
    element('path', {
      d: `M${rounded(x1 + dx * r)} ${rounded(y1 + dy * r)}L${rounded(backX)} ${rounded(backY)}`,
      ...{ fill: 'none', stroke: theme.ink, 'stroke-width': 1.25 },
    }),
    element('path', {
      d: outline([
        [tipX, tipY],
        [backX - dy * wide, backY + dx * wide],
        [backX + dy * wide, backY - dx * wide],
      ]),
      fill: theme.ink,
    }),
  ]);
}

/** The sources with their arrows and names; marks take their room before any name does. */
export function sourceMarks(view: View): Drawn[] {
  const { colours, spot, places, theme, letters, small } = view;
  const tint = (at: XY) => screenColour(at, colours.white?.at);
  const r = dotSize(letters) * 1.3;
  const all = colours.sources.map((source) => ({
    source,
    from: spot(source.at),
    to: source.then && spot(source.then.at),
  }));
  for (const { from, to } of all)
    for (const place of to ? [from, to] : [from]) places.take(boxAround(place[0], place[1], r));
  if (colours.white) {
    const [x, y] = spot(colours.white.at);
    places.take(boxAround(x, y, letters * 0.5));
  }
  return [
    ...all.map(({ source, from, to }) =>
      group({}, [
        to && arrow(from, to, view),
        to && mark(to, 'after', tint(source.then!.at), view),
        mark(from, 'before', tint(source.at), view),
      ]),
    ),
    ...all.map(({ source, from }) => name(shortened(source.name, letters * 14, small), from)),
    ...(colours.white ? [name(words.chromaticity.targetName, spot(colours.white.at), true)] : []),
  ];

  function name(text: string, [x, y]: Spot, quiet = false): Drawn {
    const [wide, high] = [widthOf(text, small) + 2, small * 1.15];
    const boxes = [1, 1.8, 2.8].flatMap((times) =>
      ways.map(([dx, dy]) => {
        const reach = r * 1.6 * times;
        return boxAround(
          x + dx * (reach + wide / 2),
          y + dy * (reach * (dx === 0 ? 1 : 0.6) + high / 2),
          wide / 2,
          high / 2,
        );
      }),
    );
    const box = places.best(boxes) ?? boxAround(x, y, wide / 2, high / 2);
    return lettering((box.left + box.right) / 2, box.bottom - high * 0.25, text, {
      ...{ fill: quiet ? theme.lamp : theme.ink, size: small, anchor: 'middle' },
      ...{ weight: 600, halo: theme.sheet },
    });
  }
}

/** Ways from a mark to its name, the likeliest first. */
const ways: readonly Spot[] = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
];
