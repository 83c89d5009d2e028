import { ticks } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { line as pathLine } from 'd3-shape';
import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Size, Surroundings } from '../../figure.ts';
import { thatFit } from '../../kit/apart.ts';
import { element, group, rounded, type Drawing, type Drawn } from '../../kit/element.ts';
import { filled, hatched, line, type Box } from '../../kit/ground.ts';
import type { Theme } from '../../kit/theme.ts';
import { roughly, said, saidNumber, signedWhole, widthOf, lettering } from '../../kit/words.ts';
import { lengthFormat } from './describe.ts';
import type { Curve, Falloff } from './read.ts';
import { words } from '../../../words/words.ts';

interface Plan extends Surroundings {
  readonly falloff: Falloff;
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly box: Box;
  readonly stops: readonly [low: number, high: number];
  x(distance: number): number;
  y(stops: number): number;
}

export function drawFalloff(
  falloff: Falloff,
  theme: Theme,
  size: Size,
  surroundings: Surroundings,
): Drawing {
  const plan = planOf(falloff, theme, size, surroundings);
  return {
    width: size.width,
    height: plan.box.bottom + size.letters * 3.2,
    children: [
      group({}, depth(plan)),
      group({}, levels(plan)),
      group({}, distances(plan)),
      group({}, curves(plan)),
      group({}, mark(plan)),
    ],
  };
}

function planOf(
  falloff: Falloff,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): Plan {
  const { shown, face, point } = falloff;
  const [near, far] = shown;
  const all = [point, ...(face ? [face] : [])].flatMap((curve) => [
    curve.stopsAt(near),
    curve.stopsAt(far),
  ]);
  const stops = [Math.floor(Math.min(...all) + 0.02), Math.ceil(Math.max(...all) - 0.02)] as const;
  const tall = Math.min(Math.max(width * 0.5, letters * 15), letters * 20);
  const box = {
    left: letters * 3.2,
    right: width - letters * 4.6,
    top: letters * 2.6,
    bottom: letters * 2.6 + tall,
  };
  const across = scaleLinear(shown, [box.left, box.right]);
  const up = scaleLinear(stops, [box.bottom, box.top]);
  return {
    ...surroundings,
    ...{ falloff, theme, letters, box, stops },
    small: letters * 0.88,
    x: (distance) => across(distance),
    y: (value) => up(value),
  };
}

/** Where the light stays within the tolerance: a strip from top to bottom, said above it. */
function depth({ falloff, box, x, theme, small, writing, tolerance }: Plan) {
  const [near, far] = falloff.depth;
  const left = Math.max(box.left, x(near));
  const right = Math.min(box.right, x(far));
  const strip = { ...box, left, right };
  const [from, to] = [near, far].map((end) =>
    saidNumber('length', end, writing, lengthFormat(end, writing)),
  );
  const unit = writing.length === 'm' ? ' m' : '';
  const end = `${to ?? ''}${unit}`;
  const text =
    near === 0
      ? words.falloff.to(end, stopsInWords(tolerance))
      : words.falloff.nearTo(from ?? '', end, stopsInWords(tolerance));
  const half = widthOf(text, small) / 2;
  const middle = Math.min(Math.max((left + right) / 2, box.left + half), box.right - half);
  return [
    filled(strip, theme.lampbg),
    hatched(strip, theme.line2, 8),
    ...[left, right].map((at) => line([at, box.top], [at, box.bottom], theme.lamp)),
    lettering(middle, box.top - small * 0.6, text, {
      ...{ fill: theme.ink, size: small, anchor: 'middle', weight: 600 },
    }),
  ];
}

/** Stops from the mark on the left, the same in lux on the right. */
function levels({ falloff, box, stops, y, theme, letters, small, writing }: Plan): Drawn[] {
  const [low, high] = stops;
  const every = Math.max(1, Math.ceil((letters * 1.7) / (y(0) - y(1))));
  const whole = Array.from({ length: high - low + 1 }, (_, index) => low + index).filter(
    (value) => value % every === 0,
  );
  const unit = writing.illuminance;
  const head = box.top - small * 0.95;
  const quiet = { fill: theme.mute, size: small } as const;
  return [
    lettering(box.left - letters * 0.6, head, words.falloff.stops, { ...quiet, anchor: 'end' }),
    lettering(box.right + letters * 0.6, head, unit, quiet),
    ...whole.flatMap((value) => [
      line([box.left, y(value)], [box.right, y(value)], value === 0 ? theme.mute : theme.line, {
        'stroke-width': value === 0 ? 1.25 : 1,
      }),
      lettering(box.left - letters * 0.6, y(value) + letters * 0.34, signedWhole(value), {
        ...{ fill: value === 0 ? theme.ink : theme.mute, size: letters, anchor: 'end' },
      }),
      lettering(
        box.right + letters * 0.6,
        y(value) + letters * 0.34,
        roughly('illuminance', falloff.lux * 2 ** value, writing),
        { fill: value === 0 ? theme.ink : theme.mute, size: letters },
      ),
    ]),
  ];
}

const metresInFoot = 0.3048;

function distances({ falloff, box, x, theme, letters, writing }: Plan): Drawn[] {
  const feet = writing.length === 'ft';
  const scale = feet ? metresInFoot : 1;
  const [near, far] = falloff.shown.map((end) => end / scale) as [number, number];
  const count = Math.max(2, Math.floor((box.right - box.left) / (letters * 5)));
  const labels = thatFit(
    ticks(near, far, count).map((tick) => {
      const text = `${saidNumber('number', tick, writing)} ${writing.length}`;
      return { text, at: x(tick * scale), room: widthOf(text, letters) };
    }),
    letters * 0.6,
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

/** A point every few pixels: both laws are smooth. */
function curves({ falloff, box, x, y, theme, letters, small }: Plan): Drawn[] {
  const { point, face, shown } = falloff;
  const [near, far] = shown;
  const count = 120;
  const along = Array.from(
    { length: count + 1 },
    (_, index) => near + ((far - near) * index) / count,
  );
  const path = (curve: Curve) =>
    pathLine<number>(
      (distance) => rounded(x(distance)),
      (distance) => rounded(y(curve.stopsAt(distance))),
    )(along) ?? '';
  const drawn = (curve: Curve, stroke: string, more: Drawn['attributes']) =>
    element('path', { d: path(curve), fill: 'none', stroke, 'stroke-linejoin': 'round', ...more });
  const heavy = { 'stroke-width': 2.5 };
  const dotted = { 'stroke-width': 1.75, 'stroke-dasharray': '1.75 4' };
  const key = (row: number, text: string, stroke: string, look: Drawn['attributes']) => {
    const level = box.top + letters * (1 + row * 1.5);
    const start = box.right - letters * 0.8 - widthOf(text, small);
    return group({}, [
      line([start - letters * 2.6, level], [start - letters * 0.6, level], stroke, look),
      lettering(start, level + small * 0.34, text, {
        fill: theme.mute,
        size: small,
        halo: theme.sheet,
      }),
    ]);
  };
  if (!face)
    return [
      drawn(point, theme.lamp, heavy),
      key(0, words.falloff.inverseSquare, theme.lamp, heavy),
    ];
  return [
    drawn(point, theme.mute, dotted),
    drawn(face, theme.lamp, heavy),
    key(0, words.falloff.fromFace, theme.lamp, heavy),
    key(1, words.falloff.inverseSquare, theme.mute, dotted),
  ];
}

function mark({ falloff, x, y, theme, letters, small, writing }: Plan): Drawn[] {
  const [at, level] = [x(falloff.mark), y(0)];
  const text = words.falloff.mark(said('length', falloff.mark, writing));
  return [
    element('circle', {
      ...{ cx: at, cy: level, r: letters * 0.38, fill: theme.ink },
      ...{ stroke: theme.sheet, 'stroke-width': 2 },
    }),
    lettering(at + letters * 0.7, level - letters * 0.6, text, {
      ...{ fill: theme.ink, size: small, halo: theme.sheet },
    }),
  ];
}
