import { scaleLinear } from 'd3-scale';
import type { Size, Surroundings } from '../../figure.ts';
import { element, group, rounded, type Drawing, type Drawn } from '../../kit/element.ts';
import { hatched, line } from '../../kit/ground.ts';
import type { Theme } from '../../kit/theme.ts';
import { lettering, wrapped } from '../../kit/words.ts';
import { whole } from './describe.ts';
import type { RenderingRead } from './read.ts';
import { words } from '../../../words/words.ts';

const said = words.renderingFigure;

/** Below this a bar is cut: nobody needs to know how far. */
const lowest = -100;

interface Bar {
  readonly label: string;
  readonly index: number;
  /** Ra, the mean, stands apart from what it is the mean of. */
  readonly isMean: boolean;
}

export function drawRendering(
  read: RenderingRead,
  theme: Theme,
  { width, letters }: Size,
  { writing }: Surroundings,
): Drawing {
  const small = letters * 0.88;
  const bars: readonly Bar[] = [
    { label: said.ra, index: read.general, isMean: true },
    ...read.tested.map(({ index }, at) => ({
      ...{ label: said.r(at + 1), index, isMean: false },
    })),
  ];
  const least = Math.max(lowest, Math.min(0, ...bars.map(({ index }) => index)));
  const low = Math.floor(least / 25) * 25;
  const left = letters * 2.8;
  const right = width - letters * 0.3;
  const top = letters * 1.6;
  const tall = Math.min(Math.max(width * 0.32, letters * 11), letters * 15);
  const y = scaleLinear([low, 100], [top + tall, top]);
  // A bar’s room, and one half more between the mean and the rest.
  const room = (right - left) / (bars.length + 0.5);
  const x = (at: number) => left + room * (at + (at > 0 ? 0.5 : 0));
  const bottom = top + tall + (low < 0 ? small * 1.1 : 0);
  const scale = [-100, -75, -50, -25, 0, 25, 50, 75, 100].filter((value) => value >= low);
  const quiet = { fill: theme.mute, size: small } as const;
  const grid = scale.flatMap((value) => [
    line([left, y(value)], [right, y(value)], value === 0 ? theme.edge : theme.line),
    ...(value % 50 === 0
      ? [
          lettering(
            left - letters * 0.5,
            y(value) + small * 0.34,
            String(value).replace('-', '−'),
            {
              ...quiet,
              anchor: 'end',
            },
          ),
        ]
      : []),
  ]);
  const drawn = bars.map(({ label, index, isMean }, at) => {
    const end = Math.max(low, index);
    const [from, to] = [Math.min(y(0), y(end)), Math.max(y(0), y(end))];
    const box = { left: x(at) + room * 0.16, right: x(at) + room * 0.84, top: from, bottom: to };
    const middle = (box.left + box.right) / 2;
    const letter = Math.min(small, room * 0.52);
    return group({}, [
      element('rect', {
        ...{ x: rounded(box.left), y: rounded(from), width: rounded(box.right - box.left) },
        ...{ height: rounded(to - from), fill: index < 0 ? theme.over : theme.glow },
        'fill-opacity': index < 0 ? 0.35 : isMean ? 0.9 : 0.5,
        // Paper has no glow: there the outline is the bar.
        ...{ stroke: index < 0 ? theme.over : theme.lamp, 'stroke-width': isMean ? 1.5 : 0.75 },
      }),
      index < 0 ? hatched(box, theme.over, 5) : undefined,
      lettering(
        middle,
        index < 0 ? to + letter * 1.05 : from - letter * 0.4,
        whole(index, writing),
        { fill: theme.ink, size: letter, anchor: 'middle', ...(isMean && { weight: 600 }) },
      ),
      lettering(middle, bottom + letters * 1.3, label, {
        ...{ fill: isMean ? theme.ink : theme.mute, size: Math.min(small, room * 0.6) },
        ...{ anchor: 'middle', ...(isMean && { weight: 600 }) },
      }),
    ]);
  });
  const patches = read.tested.flatMap(({ wanted, under }, at): Drawn[] => {
    const box = { x: rounded(x(at + 1) + room * 0.1), width: rounded(room * 0.8) };
    const [level, high] = [bottom + letters * 1.8, letters * 0.95];
    return [
      element('rect', { ...box, y: level, height: high, fill: wanted }),
      element('rect', { ...box, y: level + high, height: high, fill: under }),
    ];
  });
  const notes = wrapped(said.colours, width, small);
  const first = bottom + letters * 5;
  return {
    width,
    height: first + (notes.length - 1) * small * 1.35 + small * 0.6,
    children: [
      group({}, grid),
      group({}, drawn),
      group({ class: 'screen-colours' }, patches),
      group(
        {},
        notes.map((text, row) =>
          lettering(0, first + row * small * 1.35, text, { fill: theme.faint, size: small }),
        ),
      ),
    ],
  };
}
