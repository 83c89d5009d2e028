import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Size, Surroundings } from '../../figure.ts';
import { element, group, type Drawing, type Drawn } from '../../kit/element.ts';
import { filled, hatched, type Box } from '../../kit/ground.ts';
import { signAt } from '../../kit/signs.ts';
import type { Theme } from '../../kit/theme.ts';
import { lettering, said, saidNumber, widthOf } from '../../kit/words.ts';
import { tenth } from './describe.ts';
import type { Evenness, Patch } from './read.ts';
import { words } from '../../../words/words.ts';

interface Look extends Surroundings {
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly evenness: Evenness;
}

/** The area as it hangs: a box for each reading. */
export function drawEvenness(
  evenness: Evenness,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): Drawing {
  const look = { ...surroundings, theme, letters, small: letters * 0.88, evenness };
  const { rows } = evenness;
  const columns = Math.max(...rows.map(({ length }) => length));
  const wide = Math.min((width - 2) / columns, letters * 12);
  const high = Math.min(Math.max(wide * 0.62, letters * 1.9), letters * 5.5);
  const left = (width - wide * columns) / 2;
  const boxOf = (row: number, column: number): Box => ({
    left: left + column * wide,
    right: left + (column + 1) * wide,
    top: 1 + row * high,
    bottom: 1 + (row + 1) * high,
  });
  const patches = rows.flatMap((row, down) =>
    row.map((patch, across) => drawPatch(patch, boxOf(down, across), look)),
  );
  const told = legend(look, width, 1 + rows.length * high + letters * 1.9);
  return { width, height: told.bottom, children: [group({}, patches), group({}, told.drawn)] };
}

function drawPatch(patch: Patch, box: Box, look: Look): Drawn {
  const { theme, letters, small, writing, evenness } = look;
  const { highest, lowest, quantity } = evenness;
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const room = box.right - box.left - letters * 0.4;
  const edge = element('rect', {
    ...{ x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top },
    ...{ fill: 'none', stroke: theme.line2 },
  });
  if (patch.stops === undefined || patch.reading === undefined)
    return group({}, [
      edge,
      lettering(x, y + small * 0.34, '–', { fill: theme.faint, size: small, anchor: 'middle' }),
    ]);
  const stops = saidNumber('stops', tenth(patch.stops), writing);
  const level = said(
    quantity,
    quantity === 'fNumber' ? patch.reading : Number(patch.reading.toPrecision(3)),
    writing,
  );
  const both = box.bottom - box.top > letters * 2.9 && widthOf(level, small) <= room;
  const words = { size: letters, anchor: 'middle', halo: theme.sheet } as const;
  // In a small place the mark keeps clear of the number.
  const corner = letters * (both ? 0.75 : 0.36);
  const mark = patch.at === highest.at ? 'over' : patch.at === lowest.at ? 'under' : undefined;
  return group({ class: 'patch' }, [
    ...shade(patch.stops, box, look),
    edge,
    widthOf(stops, letters) <= room &&
      lettering(x, y + letters * (both ? -0.1 : 0.34), stops, {
        ...words,
        fill: theme.ink,
        weight: 600,
      }),
    both && lettering(x, y + letters * 1.1, level, { ...words, fill: theme.mute, size: small }),
    mark && signAt(box.right - corner, box.top + corner, mark, theme, corner / 11.25),
  ]);
}

/** A second frame, so that more light is told from enough without colour. */
const inner = ({ left, right, top, bottom }: Box, by: number, stroke: string): Drawn =>
  element('rect', {
    ...{ x: left + by, y: top + by, width: right - left - 2 * by, height: bottom - top - 2 * by },
    ...{ fill: 'none', stroke, 'stroke-opacity': 0.7 },
  });

/** More light is warmer, less is hatched, the darker the closer; what agrees is plain. */
function shade(
  stops: number,
  box: Box,
  { theme, tolerance, letters }: Look,
): (Drawn | undefined)[] {
  if (Math.abs(stops) <= tolerance + 1e-9) return [filled(box, theme.paper)];
  const over = Math.abs(stops) - tolerance;
  if (stops > 0) {
    const warm = filled(box, theme.glow);
    const strength = Math.min(0.7, 0.2 + over * 0.4);
    const coat = warm && { ...warm, attributes: { ...warm.attributes, 'fill-opacity': strength } };
    return [coat, inner(box, letters * 0.22, theme.lamp)];
  }
  return [
    filled(box, theme.paper),
    hatched(box, theme.edge, Math.max(letters * 0.3, letters * (0.9 - over * 0.4))),
  ];
}

function legend(look: Look, width: number, from: number) {
  const { theme, small, letters, tolerance } = look;
  const side = letters * 1.5;
  const patch = (x: number, y: number): Box => ({
    left: x,
    right: x + side,
    top: y - small * 0.8,
    bottom: y + small * 0.2,
  });
  const shaded = (stops: number) => (x: number, y: number) => {
    const box = patch(x, y);
    return [
      ...shade(stops, box, look),
      element('rect', {
        x,
        y: box.top,
        width: side,
        height: box.bottom - box.top,
        fill: 'none',
        stroke: theme.line2,
      }),
    ];
  };
  const sign = (which: 'over' | 'under') => (x: number, y: number) => [
    signAt(x + side / 2, y - small * 0.34, which, theme, letters / 15),
  ];
  const entries = [
    { text: words.evenness.insideMark(stopsInWords(tolerance)), draw: shaded(0) },
    { text: words.evenness.moreMark, draw: shaded(tolerance + 0.5) },
    { text: words.evenness.lessMark, draw: shaded(-tolerance - 0.5) },
    { text: words.evenness.highMark, draw: sign('over') },
    { text: words.evenness.lowMark, draw: sign('under') },
  ];
  let [x, y] = [1, from];
  const drawn = entries.map(({ text, draw }) => {
    const room = side + small * 0.5 + widthOf(text, small) * 1.05;
    if (x > 1 && x + room > width) [x, y] = [1, y + small * 1.75];
    const at = x;
    x += room + letters * 1.4;
    return group({}, [
      ...draw(at, y),
      lettering(at + side + small * 0.5, y, text, { fill: theme.mute, size: small }),
    ]);
  });
  return { drawn, bottom: y + small * 0.6 };
}
