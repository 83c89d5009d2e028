import { extent, ticks } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { words } from '../../../words/words.ts';
import type { Size, Surroundings } from '../../figure.ts';
import { thatFit } from '../../kit/apart.ts';
import { element, group, rounded, type Drawing, type Drawn } from '../../kit/element.ts';
import { filled, hatched, line, type Box } from '../../kit/ground.ts';
import type { Theme } from '../../kit/theme.ts';
import { lettering, said, signedWhole, widthOf } from '../../kit/words.ts';
import { placed } from './labels.ts';
import type { Choice, Choices } from './read.ts';

interface Plan extends Surroundings, Choices {
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly box: Box;
  readonly stops: readonly [low: number, high: number];
  readonly costs: readonly [low: number, high: number];
  x(cost: number): number;
  y(stops: number): number;
}

export function drawChoices(
  data: Choices,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): Drawing {
  const { choices } = data;
  const [, dearest = 1] = extent(choices, ({ cost }) => cost);
  const [low = 0, high = 0] = extent([0, ...choices.map(({ off }) => off)]);
  const stops = [Math.floor(low - 0.25), Math.ceil(high + 0.25)] as const;
  const costs = [0, dearest > 0 ? dearest * 1.08 : 1] as const;
  const tall = Math.min(Math.max(width * 0.45, letters * 15), letters * 24);
  const box = {
    left: letters * 3.4,
    right: width - letters * 1.5,
    top: letters * 2.2,
    bottom: letters * 2.2 + tall,
  };
  const across = scaleLinear(costs, [box.left, box.right]);
  const up = scaleLinear(stops, [box.bottom, box.top]);
  const plan: Plan = {
    ...surroundings,
    ...{ choices, theme, letters, box, stops, costs },
    small: letters * 0.88,
    x: (cost) => across(cost),
    y: (value) => up(value),
  };
  const keys = legend(plan);
  return {
    width,
    height: keys.height,
    children: [
      group({}, enough(plan)),
      group({}, levels(plan)),
      group({}, prices(plan)),
      group({}, [frontier(plan)]),
      group({}, dots(plan)),
      group({}, keys.drawn),
    ],
  };
}

/** Where an option agrees with what is wanted: a strip as wide as the tolerance. */
function enough({ box, y, theme, tolerance, letters, small }: Plan) {
  const strip = { ...box, top: y(tolerance), bottom: y(-tolerance) };
  return [
    filled(strip, theme.lampbg),
    hatched(strip, theme.line2, 8),
    lettering(box.right - letters * 0.4, y(0) - small * 0.35, words.cost.wanted, {
      ...{ fill: theme.mute, size: small, anchor: 'end', halo: theme.lampbg },
    }),
  ];
}

function levels({ box, stops: [low, high], y, theme, letters, small }: Plan): Drawn[] {
  const every = Math.max(1, Math.ceil((letters * 1.7) / (y(0) - y(1))));
  const whole = Array.from({ length: high - low + 1 }, (_, index) => low + index).filter(
    (value) => value % every === 0,
  );
  return [
    lettering(box.left - letters * 0.6, box.top - small * 0.95, words.cost.stops, {
      ...{ fill: theme.mute, size: small, anchor: 'end' },
    }),
    ...whole.flatMap((value) => [
      line([box.left, y(value)], [box.right, y(value)], value === 0 ? theme.mute : theme.line, {
        'stroke-width': value === 0 ? 1.25 : 1,
      }),
      lettering(box.left - letters * 0.6, y(value) + letters * 0.34, signedWhole(value), {
        ...{ fill: value === 0 ? theme.ink : theme.mute, size: letters, anchor: 'end' },
      }),
    ]),
  ];
}

function prices({ box, costs, x, theme, letters, writing }: Plan): Drawn[] {
  const count = Math.max(2, Math.floor((box.right - box.left) / (letters * 7)));
  const labels = thatFit(
    ticks(...costs, count).map((tick) => {
      const text = said('money', tick, writing, { decimals: tick % 1 === 0 ? 0 : 2 });
      return { text, at: x(tick), room: widthOf(text, letters) };
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
  ];
}

/** A step line through what nothing else beats: the most light for each price. */
function frontier({ choices, x, y, box, theme }: Plan): Drawn | undefined {
  const best = choices.filter(({ standing }) => standing === 'best');
  const [first, ...others] = best;
  if (!first) return undefined;
  const steps = others.map(({ cost, off }) => `H${rounded(x(cost))}V${rounded(y(off))}`).join('');
  return element('path', {
    d: `M${rounded(x(first.cost))} ${rounded(y(first.off))}${steps}H${rounded(box.right)}`,
    fill: 'none',
    stroke: theme.edge,
    'stroke-width': 1.5,
    'stroke-dasharray': '1.75 4',
  });
}

/** A full dot for what is worth its price, an empty one for what is not, crossed out if it does not fit. */
function dot(standing: Choice['standing'], x: number, y: number, size: number, theme: Theme) {
  const full = standing === 'best';
  const stroke = full ? theme.lamp : theme.edge;
  return [
    element('circle', {
      ...{ cx: x, cy: y, r: size, fill: full ? theme.lamp : theme.sheet, stroke },
      'stroke-width': 1.75,
    }),
    ...(standing === 'unfit'
      ? [line([x - size, y + size], [x + size, y - size], stroke, { 'stroke-width': 1.75 })]
      : []),
  ];
}

function dots({ choices, x, y, box, theme, letters, small }: Plan): Drawn[] {
  const size = letters * 0.42;
  const labels = placed(
    choices.map(({ name, off, cost }) => ({ text: name, x: x(cost), y: y(off) })),
    { box, letters: small, gap: size + letters * 0.4 },
  );
  return choices.flatMap(({ off, cost, standing }, index) => {
    const label = labels[index];
    return [
      ...dot(standing, x(cost), y(off), size, theme),
      ...(label
        ? [
            lettering(label.x, label.y, label.text, {
              fill: standing === 'best' ? theme.ink : theme.mute,
              size: small,
              anchor: label.anchor,
              halo: theme.sheet,
            }),
          ]
        : []),
    ];
  });
}

/** What the dots mean, as far as they are there; below one another where they do not fit in line. */
function legend({ choices, theme, letters, small, box }: Plan): {
  readonly height: number;
  readonly drawn: Drawn[];
} {
  const there = (Object.keys(words.cost.standings) as Choice['standing'][]).filter((standing) =>
    choices.some((one) => one.standing === standing),
  );
  const size = letters * 0.36;
  let [x, y] = [box.left, box.bottom + letters * 3.6];
  const drawn = there.flatMap((standing) => {
    const text = words.cost.standings[standing];
    const width = letters * 1.1 + widthOf(text, small);
    if (x > box.left && x + width > box.right) [x, y] = [box.left, y + letters * 1.5];
    const at = x;
    x += width + letters * 1.6;
    return [
      ...dot(standing, at + size, y - small * 0.34, size, theme),
      lettering(at + letters * 1.1, y, text, { fill: theme.mute, size: small }),
    ];
  });
  return { drawn, height: y + letters * 0.9 };
}
