import type { Size, Surroundings } from '../../figure.ts';
import { element, group, rounded, type Drawing, type Drawn } from '../../kit/element.ts';
import { line } from '../../kit/ground.ts';
import { paintOf, signAt } from '../../kit/signs.ts';
import type { Theme } from '../../kit/theme.ts';
import { shortened, widthOf, lettering } from '../../kit/words.ts';
import { planOf, sideWords, type Plan } from './plan.ts';
import type { Ladder, Rung } from './read.ts';
import { ground, signalScale, stopsScale } from './scales.ts';

export function drawLadder(
  ladder: Ladder,
  theme: Theme,
  size: Size,
  surroundings: Surroundings,
): Drawing {
  const plan = planOf(ladder, theme, size, surroundings);
  return {
    width: size.width,
    height: plan.box.bottom + plan.letters * (ladder.level ? 3.2 : 1.9),
    children: [
      group({}, ground(plan)),
      group({}, stopsScale(plan)),
      group({}, signalScale(plan)),
      ...ladder.rungs.map((rung, index) => drawRung(plan, rung, index)),
    ],
  };
}

/** Name, where it was wanted, where it is, how far off in words. */
function drawRung(plan: Plan, rung: Rung, index: number): Drawn {
  const { box, x, theme, letters, narrow, width, tolerance } = plan;
  const { at, wanted, shape } = rung;
  const middle = plan.y(index);
  const side = sideWords(rung, plan.ladder, plan);
  const baseline = middle + letters * (narrow ? -1.15 : 0.34);
  const room = narrow ? width - letters - widthOf(side, letters) : box.left - letters * 0.8;
  return group({ class: 'point' }, [
    line([box.left, middle], [box.right, middle], theme.line2, { 'stroke-dasharray': '1 4' }),
    wanted !== undefined && gate(x(wanted - tolerance), x(wanted + tolerance), middle, plan),
    at !== undefined &&
      wanted !== undefined &&
      line([x(wanted), middle], [x(at), middle], paintOf(shape, theme), { 'stroke-width': 1.75 }),
    wanted !== undefined && target(x(wanted), middle, plan),
    signAt(x(at ?? wanted ?? 0), middle, shape, theme, letters / 12.5),
    lettering(0, baseline, shortened(rung.name, room, letters), { fill: theme.ink, size: letters }),
    lettering(width, baseline, side, {
      fill: sidePaint(shape, theme),
      size: letters,
      anchor: 'end',
    }),
  ]);
}

const sidePaint = (shape: Rung['shape'], theme: Theme): string =>
  shape === 'dot' || shape === 'agrees' || shape === 'waits' ? theme.mute : paintOf(shape, theme);

/** Where a reading may fall and still agree: an open bracket at each end. */
function gate(from: number, to: number, y: number, { letters, theme }: Plan): Drawn {
  const [top, bottom] = [y - letters * 0.6, y + letters * 0.6];
  const lip = Math.min(letters * 0.22, (to - from) / 3);
  const half = (edge: number, inward: number) =>
    `M${rounded(edge + inward)} ${rounded(top)}H${rounded(edge)}V${rounded(bottom)}H${rounded(edge + inward)}`;
  return element('path', {
    d: half(from, lip) + half(to, -lip),
    ...{ fill: 'none', stroke: theme.edge, 'stroke-width': 1.25 },
  });
}

/** What was wanted: a ring. */
const target = (x: number, y: number, { letters, theme }: Plan): Drawn =>
  element('circle', {
    ...{ cx: x, cy: y, r: letters * 0.2, fill: theme.paper },
    ...{ stroke: theme.edge, 'stroke-width': 1.25 },
  });
