import { ticks } from 'd3-array';
import { element, group, rounded, type Drawn } from '../../kit/element.ts';
import { line } from '../../kit/ground.ts';
import { saidNumber, lettering } from '../../kit/words.ts';
import type { Layout } from './layout.ts';

const metresInFoot = 0.3048;

/** The unit of the book in metres, and a round number of them that is about so long on the page. */
export function measureOf(
  { writing, metre }: Pick<Layout, 'writing' | 'metre'>,
  pixels: number,
): { readonly unit: number; readonly every: number } {
  const unit = writing.length === 'm' ? 1 : metresInFoot;
  const wanted = pixels / metre / unit;
  const power = 10 ** Math.floor(Math.log10(wanted));
  const times = [1, 2, 5, 10].find((one) => one * power >= wanted * 0.999) ?? 10;
  return { unit, every: times * power };
}

/** The floor’s own measure: hairlines and the numbers that the cells hold. */
export function grid(layout: Layout): Drawn[] {
  const { box, frame, metre, theme, small, letters, writing } = layout;
  const { unit, every } = measureOf(layout, letters * 3.2);
  const steps = (low: number, high: number) =>
    ticks(low / unit, high / unit, Math.max(1, Math.round((high - low) / unit / every)));
  const number = (value: number) => saidNumber('length', value * unit, writing);
  const hair = { 'stroke-width': 1, 'stroke-opacity': 0.8 };
  const look = { fill: theme.faint, size: small * 0.92 };
  const across = steps(frame.left, frame.right).map((value) => {
    const x = box.left + (value * unit - frame.left) * metre;
    return { x, text: number(value) };
  });
  const up = steps(frame.bottom, frame.top).map((value) => {
    const y = box.bottom - (value * unit - frame.bottom) * metre;
    return { y, text: number(value) };
  });
  const near = letters * 0.8;
  return [
    ...across.map(({ x }) => line([x, box.top], [x, box.bottom], theme.line, hair)),
    ...up.map(({ y }) => line([box.left, y], [box.right, y], theme.line, hair)),
    ...across
      .filter(({ x }) => x > box.left + near / 2 && x < box.right - near)
      .map(({ x, text }) =>
        lettering(x, box.bottom + letters * 1.15, text, { ...look, anchor: 'middle' }),
      ),
    ...up
      .filter(({ y }) => y > box.top + near && y < box.bottom - near / 2)
      .map(({ y, text }) =>
        lettering(box.left - letters * 0.5, y + small * 0.34, text, { ...look, anchor: 'end' }),
      ),
  ];
}

export const border = ({ box, theme }: Layout): Drawn =>
  element('rect', {
    ...{ x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top },
    ...{ fill: 'none', stroke: theme.line2 },
  });

/** Walls and edges that were given, and the floor of a section. */
export function walls(layout: Layout): Drawn {
  const { set, spot, theme, box, frame, metre } = layout;
  const paths = set.outlines.map(
    (corners) =>
      `M${corners
        .map(spot)
        .map(([x, y]) => `${rounded(x)} ${rounded(y)}`)
        .join('L')}`,
  );
  const look = { fill: 'none', stroke: theme.ink, 'stroke-width': 2, 'stroke-linejoin': 'round' };
  const floor = box.bottom + frame.bottom * metre;
  const standing = set.axes[1] === 2;
  return group({}, [
    paths.length > 0 && !standing && element('path', { d: paths.join(''), ...look }),
    standing &&
      floor <= box.bottom + 0.5 &&
      line([box.left, floor], [box.right, floor], theme.ink, { 'stroke-width': 2 }),
  ]);
}
