import { ticks } from 'd3-array';
import type { XY } from '../../../../functions/colour/chromaticity.ts';
import { words } from '../../../words/words.ts';
import { clipped } from '../../kit/clipped.ts';
import { element, type Drawn } from '../../kit/element.ts';
import { line, type Box } from '../../kit/ground.ts';
import { lettering, saidNumber, widthOf } from '../../kit/words.ts';
import {
  daylightLocus,
  isotherm,
  isotherms,
  planckianLocus,
  spectralLocus,
  wavelengthXY,
  type Spot,
} from './diagram.ts';
import type { View } from './view.ts';

/** The scales of both ways, and a hairline at each number. */
export function scales({ box, shown, onScale, theme, letters, small, colours, writing }: View) {
  const [across, up] = words.chromaticity.axes[colours.diagram];
  const quiet = { fill: theme.mute, size: small } as const;
  const room = box.right - box.left;
  const digits = (step: number) => (step < 0.1 ? (step < 0.01 ? 3 : 2) : 1);
  const drawn: Drawn[] = [];
  const numbers = ([from, to]: Spot, count: number) => {
    const found = ticks(from, to, count).filter((value) => value >= -1e-9);
    const step = (found[1] ?? 1) - (found[0] ?? 0);
    return found.map((value) => ({
      value,
      text: saidNumber('chromaticity', value, writing, { decimals: digits(step + 1e-9) }),
    }));
  };
  for (const { value, text } of numbers(shown[0], Math.max(2, Math.floor(room / (letters * 6))))) {
    const [x] = onScale([value, 0]);
    drawn.push(
      line([x, box.top], [x, box.bottom], theme.line),
      lettering(x, box.bottom + letters * 1.4, text, { ...quiet, anchor: 'middle' }),
    );
  }
  for (const { value, text } of numbers(shown[1], 5)) {
    const [, y] = onScale([0, value]);
    drawn.push(
      line([box.left, y], [box.right, y], theme.line),
      lettering(box.left - letters * 0.5, y + small * 0.34, text, { ...quiet, anchor: 'end' }),
    );
  }
  return [
    ...drawn,
    lettering(box.right, box.bottom + letters * 2.7, across, { ...quiet, anchor: 'end' }),
    lettering(box.left - letters * 0.5, box.top - small * 0.7, up, { ...quiet, anchor: 'end' }),
  ];
}

const curve = (
  { box, spot }: View,
  colours: readonly XY[],
  look: Drawn['attributes'],
): Drawn | undefined => {
  const d = clipped(colours.map(spot), box);
  return d === '' ? undefined : element('path', { d, fill: 'none', ...look });
};

export const planckianLook = (view: View): Drawn['attributes'] => ({
  stroke: view.theme.ink,
  'stroke-width': 1.5,
});

export const daylightLook = (view: View): Drawn['attributes'] => ({
  ...{ stroke: view.theme.mute, 'stroke-width': 1.5, 'stroke-dasharray': '6 3' },
});

/** Light of one wavelength, of black bodies and of the sky. */
export function loci(view: View): readonly (Drawn | undefined)[] {
  const { theme, colours } = view;
  return [
    curve(view, spectralLocus, { stroke: theme.edge, 'stroke-width': 1.25 }),
    ...(colours.whole ? wavelengths(view) : []),
    curve(view, planckianLocus(), planckianLook(view)),
    curve(view, daylightLocus, daylightLook(view)),
  ];
}

function wavelengths({ spot, theme, small, box }: View): Drawn[] {
  const [midX, midY] = spot({ x: 1 / 3, y: 1 / 3 });
  return [460, 480, 500, 520, 540, 560, 580, 600, 620].flatMap((nanometres) => {
    const [x, y] = spot(wavelengthXY(nanometres));
    const far = Math.hypot(x - midX, y - midY);
    const [tx, ty] = [x + ((x - midX) / far) * small * 1.7, y + ((y - midY) / far) * small * 1.3];
    if (tx < box.left || tx > box.right || ty < box.top || ty > box.bottom) return [];
    return [
      lettering(tx, ty + small * 0.34, String(nanometres), {
        ...{ fill: theme.faint, size: small * 0.92, anchor: 'middle' },
      }),
    ];
  });
}

/** Lines of equal colour temperature, named at their magenta end where there is room. */
export function temperatures(view: View): (Drawn | undefined)[] {
  const { spot, theme, small, box, places, colours } = view;
  const reach = colours.whole ? 0.03 : 0.02;
  return isotherms.flatMap((kelvin) => {
    const ends = isotherm(kelvin, reach);
    const [end] = ends.map(spot);
    if (!end) return [];
    const text = `${kelvin} K`;
    const label = below(end, widthOf(text, small * 0.92), small);
    const free = places.isFree(label);
    const across = clipped(ends.map(spot), box);
    if (!free) return colours.whole ? [] : [faint(across)];
    places.take(label);
    return [
      faint(across),
      lettering((label.left + label.right) / 2, label.bottom - small * 0.25, text, {
        ...{ fill: theme.faint, size: small * 0.92, anchor: 'middle' },
      }),
    ];
  });

  function faint(d: string): Drawn | undefined {
    return d === ''
      ? undefined
      : element('path', { d, fill: 'none', stroke: theme.line2, 'stroke-width': 1 });
  }
}

const below = ([x, y]: Spot, wide: number, small: number): Box => ({
  ...{ left: x - wide / 2 - 3, right: x + wide / 2 + 3 },
  ...{ top: y + small * 0.2, bottom: y + small * 1.25 },
});
