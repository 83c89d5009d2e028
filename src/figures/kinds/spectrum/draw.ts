import { ticks } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { area, line as pathLine } from 'd3-shape';
import { longest, shortest } from '../../../../functions/spectrum/spectrum.ts';
import type { Size, Surroundings } from '../../figure.ts';
import { element, group, rounded, type Drawing, type Drawn } from '../../kit/element.ts';
import { hatched, line, type Box } from '../../kit/ground.ts';
import { wavelengthColour } from '../../kit/screen.ts';
import type { Theme } from '../../kit/theme.ts';
import { lettering, saidNumber, shortened, widthOf } from '../../kit/words.ts';
import { nameOfReference, titleOf } from './describe.ts';
import type { Curve, SpectrumRead } from './read.ts';
import { words } from '../../../words/words.ts';

interface Plan extends Surroundings {
  readonly read: SpectrumRead;
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly box: Box;
  readonly top: number;
  x(nm: number): number;
  y(value: number): number;
}

const said = words.spectrumFigure;

export function drawSpectrum(
  read: SpectrumRead,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): Drawing {
  const small = letters * 0.88;
  const keys = read.reference ? 2 : 1;
  const head = letters * (0.6 + keys * 1.5);
  const tall = Math.min(Math.max(width * 0.42, letters * 13), letters * 19);
  const box = {
    left: letters * 3.4,
    right: width - letters * 1.2,
    top: head + letters * 0.4,
    bottom: head + letters * 0.4 + tall,
  };
  const top =
    read.measures === 'transmission'
      ? 1
      : Math.max(read.most, ...(read.reference?.curve ?? []).map(([, value]) => value));
  const across = scaleLinear([shortest, longest], [box.left, box.right]);
  const up = scaleLinear([0, top], [box.bottom, box.top]);
  const plan: Plan = {
    ...surroundings,
    ...{ read, theme, letters, small, box, top },
    x: (nm) => across(nm),
    y: (value) => up(value),
  };
  return {
    width,
    height: box.bottom + letters * 4.6,
    children: [
      group({}, unread(plan)),
      group({}, levels(plan)),
      group({}, curves(plan)),
      group({}, wavelengths(plan)),
      group({}, legend(plan)),
    ],
  };
}

/** Where nothing was read: hatched, since what is drawn there is made up. */
const unread = ({ read, box, x, theme }: Plan): (Drawn | undefined)[] =>
  read.madeUp
    .filter(({ kind }) => kind !== 'noise')
    .map(({ from, to }) =>
      hatched(
        {
          ...box,
          left: Math.max(box.left, x(from)),
          right: Math.min(box.right, x(to)),
        },
        theme.line2,
      ),
    );

/** In the unit that it was read in; of a shape in percent of its highest. */
function levels({ read, box, top, y, theme, letters, small, writing }: Plan): Drawn[] {
  const [unit, one] =
    read.measures === 'irradiance'
      ? ([said.milliwatts, 1000] as const)
      : ([read.measures === 'shape' ? said.ofHighest : said.share, 100 / shareOf(read)] as const);
  const quiet = { fill: theme.mute, size: small } as const;
  return [
    lettering(0, box.top - small * 0.7, unit, quiet),
    ...ticks(0, top * one, 4).flatMap((value) => [
      line([box.left, y(value / one)], [box.right, y(value / one)], theme.line),
      lettering(
        box.left - letters * 0.5,
        y(value / one) + small * 0.34,
        saidNumber('number', value, writing),
        { ...quiet, anchor: 'end' },
      ),
    ]),
  ];
}

const shareOf = ({ measures, most }: SpectrumRead): number => (measures === 'shape' ? most : 1);

function curves({ read, x, y, theme }: Plan): Drawn[] {
  const { curve, reference } = read;
  const along = (points: Curve) =>
    pathLine<readonly [number, number]>(
      ([nm]) => rounded(x(nm)),
      ([, value]) => rounded(y(value)),
    )([...points]) ?? '';
  const under =
    area<readonly [number, number]>()
      .x(([nm]) => rounded(x(nm)))
      .y0(rounded(y(0)))
      .y1(([, value]) => rounded(y(value)))([...curve]) ?? '';
  const look = { fill: 'none', 'stroke-linejoin': 'round' } as const;
  return [
    element('path', { d: under, fill: theme.glow, 'fill-opacity': 0.16 }),
    ...(reference
      ? [element('path', { d: along(reference.curve), ...look, ...dashed(theme) })]
      : []),
    element('path', { d: along(curve), ...look, ...heavy(theme) }),
  ];
}

const heavy = (theme: Theme) => ({ stroke: theme.lamp, 'stroke-width': 2.25 });
const dashed = (theme: Theme) => ({
  ...{ stroke: theme.ink, 'stroke-width': 1.5, 'stroke-dasharray': '5 3.5' },
});

/** The scale, with what colour about each wavelength is. */
function wavelengths({ box, x, theme, letters, small, writing }: Plan): Drawn[] {
  const height = letters * 0.55;
  const step = 5;
  const strip = Array.from({ length: (longest - shortest) / step }, (_, index) => {
    const nm = shortest + index * step;
    const width = rounded(x(nm + step) - x(nm)) + 0.5;
    const fill = wavelengthColour(nm + step / 2);
    return element('rect', { x: rounded(x(nm)), y: box.bottom + 1, width, height, fill });
  });
  const every = box.right - box.left > letters * 30 ? 50 : 100;
  const quiet = { fill: theme.mute, size: letters, anchor: 'middle' } as const;
  return [
    line([box.left, box.bottom], [box.right, box.bottom], theme.edge),
    group({ class: 'screen-colours' }, strip),
    ...[400, 450, 500, 550, 600, 650, 700, 750]
      .filter((nm) => nm % every === 0)
      .map((nm) =>
        lettering(x(nm), box.bottom + letters * 2, saidNumber('number', nm, writing), quiet),
      ),
    lettering(box.right, box.bottom + letters * 2, said.nm, { ...quiet, anchor: 'end' }),
    lettering(box.left, box.bottom + letters * 3.7, said.colours, {
      ...{ fill: theme.faint, size: small },
    }),
  ];
}

function legend({ read, box, theme, letters, small, writing }: Plan): Drawn[] {
  const entries = [
    { text: titleOf(read), look: heavy(theme) },
    ...(read.reference
      ? [
          {
            text: said.withAsMuch(nameOfReference(read.reference, writing)),
            look: dashed(theme),
          },
        ]
      : []),
  ];
  const room = box.right - box.left - letters * 3;
  return entries.map(({ text, look }, row) => {
    const level = letters * (0.7 + row * 1.5);
    const shown = shortened(text, room, small);
    const start = box.right - widthOf(shown, small) * 1.04;
    return group({}, [
      line([start - letters * 2.8, level], [start - letters * 0.6, level], theme.ink, look),
      lettering(start, level + small * 0.34, shown, { fill: theme.ink, size: small }),
    ]);
  });
}
