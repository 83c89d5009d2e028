import { ticks } from 'd3-array';
import type { Size, Surroundings } from '../../figure.ts';
import { element, group, rounded as short, type Drawing, type Drawn } from '../../kit/element.ts';
import { line } from '../../kit/ground.ts';
import type { Theme } from '../../kit/theme.ts';
import { lettering, roughly, said, widthOf } from '../../kit/words.ts';
import { rounded } from './describe.ts';
import type { Curve, Polar } from './read.ts';
import { words } from '../../../words/words.ts';

/** The aim line points down the page, as photometric files count. */
export function drawPolar(
  polar: Polar,
  theme: Theme,
  { width, letters }: Size,
  { writing }: Surroundings,
): Drawing {
  const small = letters * 0.88;
  const radius = Math.min((width - letters * 7) / 2, letters * (polar.whole ? 14 : 19));
  const [x, y] = [width / 2, letters * 1.8 + (polar.whole ? radius + letters : 0)];
  const rings = ticks(0, polar.peak, 4).filter((candela) => candela > 0);
  const most = Math.max(polar.peak, rings.at(-1) ?? 0);
  const spot = (degrees: number, share: number) => {
    const turn = (degrees * Math.PI) / 180;
    return [x + Math.sin(turn) * radius * share, y + Math.cos(turn) * radius * share] as const;
  };
  const quiet = { fill: theme.mute, size: small } as const;
  const furthest = polar.whole ? 180 : 90;
  const rays = Array.from({ length: furthest / 15 + 1 }, (_, index) => index * 15);
  const grid = [
    ...rings.map((candela) => arc(x, y, (radius * candela) / most, furthest, theme.line2)),
    arc(x, y, radius, furthest, theme.edge),
    ...rays.flatMap((degrees) =>
      (degrees % 180 === 0 ? [degrees] : [degrees, -degrees]).map((one) => {
        const [outX, outY] = spot(one, 1);
        return line([x, y], [outX, outY], theme.line);
      }),
    ),
  ];
  const degrees = rays
    .filter((one) => one % 30 === 0)
    .flatMap((one) =>
      (one % 180 === 0 ? [one] : [one, -one]).map((way) => {
        const [tx, ty] = spot(way, 1 + (letters * 1.1) / radius);
        const text = `${String(one)}°`;
        return lettering(tx, ty + small * 0.34, text, { ...quiet, anchor: 'middle' });
      }),
    );
  // From the outermost in, each that has room beside the one before.
  let taken = Infinity;
  const numbers = rings.toReversed().flatMap((candela) => {
    const [tx, ty] = spot(furthest === 90 ? 75 : 105, candela / most);
    const text = roughly('intensity', candela, writing);
    const half = widthOf(text, small * 0.92) / 2;
    if (tx + half > taken) return [];
    taken = tx - half - small * 0.6;
    return lettering(tx, ty + small * 0.34, text, {
      ...{ fill: theme.faint, size: small * 0.92, anchor: 'middle', halo: theme.sheet },
    });
  });
  const path = (curve: Curve) =>
    `M${curve
      .filter(([angle]) => Math.abs(angle) <= furthest)
      .map(([angle, candela]) =>
        spot(angle, candela / most)
          .map(short)
          .join(' '),
      )
      .join('L')}`;
  const heavy = { stroke: theme.lamp, 'stroke-width': 2.25 };
  const dashed = { stroke: theme.ink, 'stroke-width': 1.5, 'stroke-dasharray': '5 3.5' };
  const below = y + radius + letters * 3;
  const told = legend(polar, { theme, small, letters, width, below, heavy, dashed });
  return {
    width,
    height: told.bottom,
    children: [
      group({}, grid),
      element('path', { d: `${path(polar.level)}Z`, fill: theme.glow, 'fill-opacity': 0.2 }),
      group({}, [
        ...edgeMarks(polar.beam.level, theme.mute, '7 3'),
        ...edgeMarks(polar.field.level, theme.mute, '1.5 3.5'),
      ]),
      element('path', {
        d: path(polar.upright),
        fill: 'none',
        'stroke-linejoin': 'round',
        ...dashed,
      }),
      element('path', { d: path(polar.level), fill: 'none', 'stroke-linejoin': 'round', ...heavy }),
      group({}, numbers),
      group({}, degrees),
      lettering(
        x + radius + letters * 0.2,
        letters * 0.9,
        said('intensity', polar.peak, writing).split(' ').at(-1) ?? '',
        {
          ...quiet,
          anchor: 'end',
        },
      ),
      group({}, told.drawn),
    ],
  };

  /** To either side as far as half the angle; seldom is a beam lopsided. */
  function edgeMarks(full: number | undefined, stroke: string, dash: string): Drawn[] {
    if (full === undefined || full > 2 * furthest) return [];
    return [full / 2, -full / 2].map((angle) => {
      const [outX, outY] = spot(angle, 1);
      return line([x, y], [outX, outY], stroke, { 'stroke-dasharray': dash });
    });
  }
}

/** A circle, or the half of it below its middle. */
function arc(x: number, y: number, r: number, furthest: number, stroke: string): Drawn {
  const look = { fill: 'none', stroke };
  if (furthest === 180) return element('circle', { cx: x, cy: y, r, ...look });
  const size = short(r);
  return element('path', {
    d: `M${short(x - r)} ${short(y)}A${size} ${size} 0 0 0 ${short(x + r)} ${short(y)}`,
    ...look,
  });
}

interface Look {
  readonly theme: Theme;
  readonly small: number;
  readonly letters: number;
  readonly width: number;
  readonly below: number;
  readonly heavy: Drawn['attributes'];
  readonly dashed: Drawn['attributes'];
}

function legend(
  { beam, field }: Polar,
  { theme, small, letters, width, below, heavy, dashed }: Look,
): { readonly drawn: readonly Drawn[]; readonly bottom: number } {
  const angle = (degrees: number | undefined) =>
    degrees === undefined ? words.polar.noEdge : `${String(rounded(degrees))}°`;
  const entries: readonly (readonly [string, Drawn['attributes']])[] = [
    [words.polar.level, heavy],
    [words.polar.upright, dashed],
    [words.polar.beam(angle(beam.level)), { stroke: theme.mute, 'stroke-dasharray': '7 3' }],
    [words.polar.field(angle(field.level)), { stroke: theme.mute, 'stroke-dasharray': '1.5 3.5' }],
  ];
  const dash = letters * 2.4;
  let [x, y] = [letters * 0.5, below];
  const drawn = entries.map(([text, look]) => {
    const room = dash + small * 0.5 + widthOf(text, small) * 1.05;
    if (x > letters && x + room > width) [x, y] = [letters * 0.5, y + small * 1.75];
    const from = x;
    x += room + letters * 1.5;
    return group({}, [
      element('line', {
        x1: from,
        x2: from + dash,
        y1: y - small * 0.34,
        y2: y - small * 0.34,
        ...look,
      }),
      lettering(from + dash + small * 0.5, y, text, { fill: theme.mute, size: small }),
    ]);
  });
  return { drawn, bottom: y + small * 0.6 };
}
