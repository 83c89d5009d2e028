import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import { evenly, thatFit } from '../../kit/apart.ts';
import type { Drawn } from '../../kit/element.ts';
import { filled, hatched, line } from '../../kit/ground.ts';
import { roughly, said, saidNumber, widthOf, lettering } from '../../kit/words.ts';
import { domainOf, type Plan } from './plan.ts';
import type { Ladder } from './read.ts';
import { words } from '../../../words/words.ts';

/** What the camera holds is plain ground; what it does not is hatched. */
export function ground({ ladder: { low, high }, box, strips, x, theme, letters, small }: Plan) {
  if (low === undefined && high === undefined) return [];
  const from = low === undefined ? box.left : x(low);
  const to = high === undefined ? box.right : x(high);
  const end = (at: number, text: string, anchor: 'start' | 'end', toward: -1 | 1) => [
    ...[{ top: box.top - letters * 1.3, bottom: box.top - letters * 0.3 }, ...strips].map(
      ({ top, bottom }) => line([at, top], [at, bottom], theme.edge, { 'stroke-width': 1.5 }),
    ),
    lettering(at + toward * small * 0.5, box.top - letters * 0.6, text, {
      ...{ fill: theme.mute, size: small, anchor },
    }),
  ];
  return [
    ...strips.flatMap((strip) => [
      filled({ ...strip, left: from, right: to }, theme.paper),
      hatched({ ...strip, right: from }, theme.line2),
      hatched({ ...strip, left: to }, theme.line2),
    ]),
    ...(low === undefined ? [] : end(from, words.ladder.lostBelow(amount(low)), 'start', 1)),
    ...(high === undefined ? [] : end(to, words.ladder.clipsAbove(amount(high)), 'end', -1)),
  ];
}

const amount = (stops: number): string =>
  `${stops < 0 ? '−' : '+'}${stopsInWords(stops).replace(/ stops?$/, '')}`;

/** A line for each whole stop, and under it how many, and what that is on the meter. */
export function stopsScale(plan: Plan): Drawn[] {
  const { ladder, box, strips, x, theme, letters } = plan;
  const [first, last] = domainOf(ladder, plan.tolerance);
  const every = [1, 2, 5, 10].find((each) => each * (x(1) - x(0)) >= letters * 1.6) ?? 20;
  const whole = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const labels = thatFit(
    [0, ...whole.filter((stops) => stops % every === 0 && stops !== 0)].map((stops) => {
      const text = stops === 0 ? ladder.zero : amount(stops);
      return { stops, text, at: x(stops), room: widthOf(text, letters) };
    }),
    letters * 0.5,
  );
  return [
    ...whole.flatMap((stops) =>
      strips.map(({ top, bottom }) =>
        line([x(stops), top], [x(stops), bottom], stops === 0 ? theme.ink : theme.line2, {
          'stroke-width': stops === 0 ? 1.5 : 0.75,
        }),
      ),
    ),
    line([box.left, box.bottom], [box.right, box.bottom], theme.line2),
    ...labels.map(({ stops, text, at }) =>
      lettering(at, box.bottom + letters * 1.3, text, {
        ...{ fill: stops === 0 ? theme.ink : theme.mute, size: letters, anchor: 'middle' },
        ...(stops === 0 && { weight: 600 }),
      }),
    ),
    ...levelScale(plan, labels),
  ];
}

/** No lens opens wider: such an f-number means nothing on a barrel. */
const widest = 0.7;

function levelScale(
  { ladder: { level }, box, theme, letters, small, writing }: Plan,
  labels: readonly { readonly stops: number; readonly at: number }[],
): Drawn[] {
  if (!level) return [];
  const marks = level.quantity === 'fNumber';
  const texts = labels.flatMap(({ stops, at }) => {
    const value = level.value * 2 ** (marks ? stops / 2 : stops);
    if (marks && value < widest) return [];
    const number = roughly(level.quantity, value, writing);
    const text = marks || stops === 0 ? said(level.quantity, value, writing) : number;
    return [{ text, at, count: stops, room: widthOf(text, small) }];
  });
  return evenly(texts, small * 0.7).map(({ text, at }) =>
    lettering(at, box.bottom + letters * 2.6, text, {
      ...{ fill: theme.faint, size: small, anchor: 'middle' },
    }),
  );
}

/** The user's own table, over the ladder: a tick for each row of it. */
export function signalScale({ ladder, box, x, theme, letters, small, writing }: Plan): Drawn[] {
  const { signal } = ladder;
  if (!signal) return [];
  const y = letters * 2.6;
  const inside = signal.rows.filter(([at]) => x(at) >= box.left - 0.5 && x(at) <= box.right + 0.5);
  const labels = thatFit(
    inside.map(([at, level]) => {
      const text = saidNumber(signal.quantity, level, writing);
      return { text, at: x(at), room: widthOf(text, small) };
    }),
    small * 0.6,
  );
  const [low, high] = [inside[0], inside.at(-1)];
  return [
    lettering(box.left, letters * 0.9, signalName(signal), { fill: theme.mute, size: small }),
    ...(low && high ? [line([x(low[0]), y], [x(high[0]), y], theme.edge)] : []),
    ...inside.map(([at]) =>
      line([x(at), y - letters * 0.25], [x(at), y + letters * 0.25], theme.edge),
    ),
    ...labels.map(({ text, at }) =>
      lettering(at, y - letters * 0.5, text, { fill: theme.ink, size: small, anchor: 'middle' }),
    ),
  ];
}

const signalName = ({ quantity }: NonNullable<Ladder['signal']>): string =>
  quantity === 'share' ? words.ladder.signalPercent : words.ladder.signalName;
