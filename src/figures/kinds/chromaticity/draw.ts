import { words } from '../../../words/words.ts';
import type { Size, Surroundings } from '../../figure.ts';
import { element, group, type Drawing, type Drawn } from '../../kit/element.ts';
import type { Theme } from '../../kit/theme.ts';
import { lettering, widthOf } from '../../kit/words.ts';
import type { Spot } from './diagram.ts';
import { daylightLook, loci, planckianLook, scales, temperatures } from './loci.ts';
import { cross, mark, sourceMarks, whiteMark } from './marks.ts';
import type { Colours } from './read.ts';
import { screenColour } from './screenColour.ts';
import { viewOf, type View } from './view.ts';

export function drawColours(
  colours: Colours,
  theme: Theme,
  size: Size,
  surroundings: Surroundings,
): Drawing {
  const view = viewOf(colours, theme, size, surroundings);
  const { box } = view;
  // The marks find room first: names of sources matter more than numbers of temperatures.
  const marks = sourceMarks(view);
  const keys = legend(view);
  return {
    width: size.width,
    height: keys.bottom,
    children: [
      group({}, scales(view)),
      group({}, temperatures(view)),
      group({}, loci(view)),
      element('rect', {
        ...{ x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top },
        ...{ fill: 'none', stroke: theme.line2 },
      }),
      group({}, whiteMark(view)),
      group({}, marks),
      group({}, keys.drawn),
    ],
  };
}

type Sample = (at: Spot) => Drawn;

/** What the signs mean, as far as they are there, and that tints are only about right. */
function legend(view: View): { readonly drawn: readonly Drawn[]; readonly bottom: number } {
  const { colours, theme, letters, small, box } = view;
  const { legend: said, tints } = words.chromaticity;
  const grey = screenColour({ x: 0.3127, y: 0.329 });
  const stroke =
    (look: Drawn['attributes']): Sample =>
    ([x, y]) =>
      element('line', { x1: x - letters, x2: x + letters, y1: y, y2: y, ...look });
  const entries: readonly (readonly [string, Sample] | false)[] = [
    [said.before, (at) => mark(at, 'before', grey, view)],
    colours.sources.some(({ then }) => then) && [said.after, (at) => mark(at, 'after', grey, view)],
    colours.white !== undefined && [said.white, (at) => cross(at, letters * 0.5, theme.lamp)],
    [said.planckian, stroke(planckianLook(view))],
    [said.daylight, stroke(daylightLook(view))],
  ];
  let [x, y] = [box.left, box.bottom + letters * 4.2];
  const room = letters * 2.6;
  const drawn = entries.flatMap((entry) => {
    if (!entry) return [];
    const [text, sample] = entry;
    const wide = room + widthOf(text, small) * 1.05;
    if (x > box.left && x + wide > box.right) [x, y] = [box.left, y + small * 1.75];
    const from = x;
    x += wide + letters * 1.4;
    return [
      sample([from + letters, y - small * 0.34]),
      lettering(from + room, y, text, { fill: theme.mute, size: small }),
    ];
  });
  y += small * 1.75;
  return {
    drawn: [...drawn, lettering(box.left, y, tints, { fill: theme.faint, size: small })],
    bottom: y + small * 0.7,
  };
}
