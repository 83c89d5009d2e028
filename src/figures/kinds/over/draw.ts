import { words } from '../../../words/words.ts';
import type { Size, Surroundings } from '../../figure.ts';
import { thatFit } from '../../kit/apart.ts';
import { element, group, rounded, type Drawing, type Drawn } from '../../kit/element.ts';
import { line, type Box } from '../../kit/ground.ts';
import type { Theme } from '../../kit/theme.ts';
import { lettering, shortened, widthOf } from '../../kit/words.ts';
import type { Family, Line } from './read.ts';
import { sayer } from './sayer.ts';
import { axisOf, type Axis } from './scale.ts';

interface Plan {
  readonly family: Family;
  readonly lines: readonly Line[];
  readonly theme: Theme;
  readonly letters: number;
  readonly box: Box;
  readonly x: Axis;
  readonly y: Axis;
  sayX(value: number): string;
  sayY(value: number): string;
}

/** One picture above the other, all of them over the same values. */
export function drawFamily(
  family: Family,
  theme: Theme,
  { width, letters }: Size,
  { writing }: Surroundings,
): Drawing {
  const tall = Math.min(Math.max(width * 0.3, letters * 11), letters * 18);
  const room = letters * 5.2;
  const all = family.pictures.flat();
  const longest = Math.max(...all.map(({ name }) => widthOf(name, letters)));
  const right = width - Math.min(longest + letters * 2, width * 0.32);
  const scaled = family.pictures.map((lines) => {
    const values = lines.flatMap(({ pieces }) => pieces.flat().map(({ value }) => value));
    const quantity = lines[0]?.quantity;
    const scale = (box: Pick<Box, 'top' | 'bottom'>) =>
      axisOf(values, quantity, [box.bottom, box.top], tall / (letters * 2.2));
    return { lines, scale, say: sayer(quantity, writing) };
  });
  const left =
    Math.max(
      ...scaled.flatMap(({ scale, say }) =>
        scale({ top: 0, bottom: tall }).ticks.map((tick) => widthOf(say(tick), letters)),
      ),
      letters * 3,
    ) +
    letters * 1.4;
  const across = [...all.flatMap(({ pieces }) => pieces.flat().map(({ at }) => at))];
  const x = axisOf(
    across,
    family.along,
    [left, right],
    Math.max(2, (right - left) / (letters * 6)),
  );
  const children = scaled.map(({ lines, scale, say }, index) => {
    const top = letters * 1.8 + index * (tall + room);
    const box = { left, right, top, bottom: top + tall };
    const y = scale(box);
    const plan: Plan = {
      ...{ family, lines, theme, letters, box, x, y },
      sayX: sayer(family.along, writing),
      sayY: say,
    };
    return group({}, [...levels(plan), ...tried(plan), ...now(plan), ...curves(plan)]);
  });
  return { width, height: family.pictures.length * (tall + room), children };
}

function levels({ box, y, theme, letters, sayY }: Plan): Drawn[] {
  return y.ticks.flatMap((value) => [
    line([box.left, y.place(value)], [box.right, y.place(value)], theme.line),
    lettering(box.left - letters * 0.6, y.place(value) + letters * 0.34, sayY(value), {
      ...{ fill: theme.mute, size: letters, anchor: 'end' },
    }),
  ]);
}

function tried({ box, x, theme, letters, family, sayX }: Plan): Drawn[] {
  const labels = thatFit(
    x.ticks.map((tick) => {
      const text = sayX(tick);
      return { text, at: x.place(tick), room: widthOf(text, letters) };
    }),
    letters * 0.8,
  );
  return [
    line([box.left, box.bottom], [box.right, box.bottom], theme.line2),
    ...labels.flatMap(({ text, at }) => [
      line([at, box.bottom], [at, box.bottom + letters * 0.4], theme.edge),
      lettering(at, box.bottom + letters * 1.6, text, {
        ...{ fill: theme.mute, size: letters, anchor: 'middle' },
      }),
    ]),
    ...(family.caption === ''
      ? []
      : [
          lettering(box.left, box.bottom + letters * 3.1, family.caption, {
            ...{ fill: theme.ink, size: letters },
          }),
        ]),
  ];
}

/** Where the sheet itself stands, if that is among what was tried. */
function now({ box, x, theme, letters, family }: Plan): Drawn[] {
  const at = family.now === undefined ? Number.NaN : x.place(family.now);
  if (!(at >= box.left && at <= box.right)) return [];
  return [
    line([at, box.top - letters * 0.4], [at, box.bottom], theme.lamp, {
      'stroke-dasharray': '2 3',
    }),
    lettering(at, box.top - letters * 0.7, words.over.mark, {
      ...{ fill: theme.lamp, size: letters * 0.88, anchor: 'middle' },
    }),
  ];
}

/** Lines are told apart by their dashes and their names, not by colour. */
const dashes = [undefined, '7 4', '2 3', '9 3 2 3', '14 4'] as const;

function curves({ lines, x, y, box, theme, letters }: Plan): Drawn[] {
  const ends = lines.map(({ pieces }) => y.place(pieces.at(-1)?.at(-1)?.value ?? 0));
  const heights = spread(ends, letters * 1.15, box);
  return lines.flatMap(({ name, pieces }, index): Drawn[] => {
    const points = pieces.map((piece) =>
      piece.map(({ at, value }) => [x.place(at), y.place(value)]),
    );
    const d = points
      .map((piece) => piece.map(([a = 0, b = 0]) => `${rounded(a)} ${rounded(b)}`).join('L'))
      .map((path) => `M${path}`)
      .join('');
    const few = points.flat().length <= 40;
    const [endX = box.right] = points.at(-1)?.at(-1) ?? [];
    const height = heights[index] ?? 0;
    const start = box.right + letters * 1.1;
    return [
      element('path', {
        d,
        fill: 'none',
        stroke: theme.ink,
        'stroke-width': 1.75,
        'stroke-linejoin': 'round',
        'stroke-dasharray': dashes[index % dashes.length],
      }),
      ...(few
        ? points.flat().map(([cx, cy]) => element('circle', { cx, cy, r: 2.4, fill: theme.ink }))
        : []),
      line([endX + 3, ends[index] ?? 0], [start - letters * 0.2, height], theme.edge),
      lettering(start, height + letters * 0.34, shortened(name, roomRight(box, letters), letters), {
        ...{ fill: theme.ink, size: letters },
      }),
    ];
  });
}

const roomRight = ({ right }: Box, letters: number): number => Math.max(letters * 6, right * 0.45);

/** As near to where they would be as they can stand without running into each other. */
function spread(wanted: readonly number[], apart: number, { top, bottom }: Box): readonly number[] {
  const order = wanted.map((at, index) => ({ at, index })).toSorted((a, b) => a.at - b.at);
  const placed: number[] = [];
  let last = -Infinity;
  for (const { at, index } of order) {
    last = Math.max(at, last + apart, top);
    placed[index] = last;
  }
  const over = Math.max(0, last - bottom);
  return placed.map((at) => at - Math.min(over, Math.max(0, at - top)));
}
