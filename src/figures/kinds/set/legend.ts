import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import { element, group, rounded, type Drawn } from '../../kit/element.ts';
import { hatched, line } from '../../kit/ground.ts';
import { lettering, said, widthOf, wrapped } from '../../kit/words.ts';
import { measureOf } from './ground.ts';
import { headAt } from './heads.ts';
import type { Layout } from './layout.ts';
import { diamond, facingLook } from './lights.ts';
import { lineLook } from './lines.ts';
import { linesInWords } from './said.ts';
import { words } from '../../../words/words.ts';

/** A sign and what it means. */
interface Entry {
  readonly wide: number;
  readonly text: string;
  sign(x: number, y: number): readonly (Drawn | undefined)[];
}

/** The scale, which way is up, and every sign that is used, in lines below the picture. */
export function legend(layout: Layout): {
  readonly drawn: readonly Drawn[];
  readonly bottom: number;
} {
  const { theme, small, letters, width, box } = layout;
  const step = small * 1.75;
  const gap = letters * 1.5;
  let [x, y] = [box.left, box.bottom + letters * 2.9];
  const drawn: Drawn[] = [];
  for (const { wide, text, sign } of [...entriesOf(layout), ...numbersOf(layout)]) {
    const before = wide + small * 0.5;
    const [first = '', ...rest] = wrapped(text, width - box.left - before, small);
    const room = before + widthOf(first, small) * 1.05;
    if (x > box.left && x + room > width) {
      x = box.left;
      y += step;
    }
    const words = (line: string) =>
      lettering(x + before, y, line, { fill: theme.mute, size: small });
    drawn.push(group({}, [...sign(x, y - small * 0.34), words(first)]));
    x += room + gap;
    for (const line of rest) {
      x = box.left;
      y += small * 1.3;
      drawn.push(words(line));
      x = width;
    }
  }
  return { drawn, bottom: y + small * 0.6 };
}

/** Which fixture bears which number, where names had no room. */
const numbersOf = ({ set, named, theme, small }: Layout): readonly Entry[] =>
  named
    ? []
    : set.lights.map(({ name }, index) => ({
        wide: small * 1.1,
        text: name,
        sign: (x, y) => [
          lettering(x, y + small * 0.34, String(index + 1), {
            ...{ fill: theme.mute, size: small, weight: 700 },
          }),
        ],
      }));

function entriesOf(layout: Layout): readonly Entry[] {
  const { theme, letters, small, metre, writing, set, tolerance } = layout;
  const { unit, every } = measureOf(layout, letters * 3.2);
  const bar = every * unit * metre;
  const dash = letters * 2.2;
  const stroke =
    (look: Drawn['attributes']): Entry['sign'] =>
    (x, y) => [element('line', { x1: x, y1: y, x2: x + dash, y2: y, ...look })];
  const [receptor, where] = linesInWords(set, writing);
  const scale: Entry = {
    wide: bar,
    text: said('length', every * unit, writing),
    sign: (x, y) => [
      element('path', {
        d: `M${rounded(x)} ${rounded(y - 4)}V${rounded(y + 4)}M${rounded(x + bar)} ${rounded(y - 4)}V${rounded(y + 4)}`,
        ...{ fill: 'none', stroke: theme.ink },
      }),
      element('rect', { x, y: y - 1.5, width: bar / 2, height: 3, fill: theme.ink }),
      line([x, y], [x + bar, y], theme.ink),
    ],
  };
  const up: Entry = {
    wide: small * 0.7,
    text: words.set.upThePlan,
    sign: (x, y) => [
      element('path', {
        d: `M${rounded(x + small * 0.35)} ${rounded(y + small * 0.6)}V${rounded(y - small * 0.6)}M${rounded(x)} ${rounded(y - small * 0.15)}L${rounded(x + small * 0.35)} ${rounded(y - small * 0.7)}L${rounded(x + small * 0.7)} ${rounded(y - small * 0.15)}`,
        ...{ fill: 'none', stroke: theme.ink, 'stroke-width': 1.4 },
      }),
    ],
  };
  const lines: Entry[] = set.lines
    ? [
        {
          wide: dash,
          text: words.set.asTheKey(receptor, where),
          sign: stroke(lineLook(0, theme)),
        },
        { wide: dash, text: words.set.more, sign: stroke(lineLook(1, theme)) },
        { wide: dash, text: words.set.less, sign: stroke(lineLook(-1, theme)) },
        {
          wide: dash,
          text: words.set.zone(stopsInWords(tolerance)),
          sign: (x, y) => {
            const patch = {
              left: x,
              right: x + dash,
              top: y - small * 0.5,
              bottom: y + small * 0.5,
            };
            return [
              element('rect', {
                ...{ x, y: patch.top, width: dash, height: small },
                ...{ fill: theme.glow, 'fill-opacity': 0.3 },
              }),
              hatched(patch, theme.lamp, letters * 0.55),
            ];
          },
        },
      ]
    : [];
  const size = letters * 0.4;
  return [
    scale,
    ...(set.axes[1] === 1 ? [up] : []),
    ...lines,
    {
      wide: dash,
      text: words.set.aimLine,
      sign: stroke({ stroke: theme.edge, 'stroke-dasharray': '1.5 3.5' }),
    },
    ...(set.lights.some(({ towards, placed }) => towards && placed.lamp)
      ? [
          {
            wide: dash,
            text: words.set.sheetFaces,
            sign: (x: number, y: number) => [
              line([x, y], [x + dash - size, y], theme.edge, facingLook),
              diamond(x + dash - size, y, letters * 0.3, theme.edge),
            ],
          },
        ]
      : []),
    { wide: dash, text: words.set.beamEdge, sign: stroke({ stroke: theme.edge }) },
    {
      wide: size * 3,
      text: words.set.facing,
      sign: (x, y) => [headAt(x + size, y, size, [1, 0], false, theme)],
    },
  ];
}
