import { max, min } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Size, Surroundings } from '../../figure.ts';
import { thatFit } from '../../kit/apart.ts';
import { group, element, type Drawing, type Drawn } from '../../kit/element.ts';
import { filled, hatched, line, type Box } from '../../kit/ground.ts';
import { paintOf, signAt } from '../../kit/signs.ts';
import type { Theme } from '../../kit/theme.ts';
import { said, saidNumber, shortened, widthOf, words } from '../../kit/words.ts';
import type { Ladder, Rung } from './read.ts';

/** Below this many letters across, a name stands over its rung and no longer beside it. */
const narrowBelow = 46;

interface Plan extends Surroundings {
  readonly ladder: Ladder;
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly width: number;
  readonly narrow: boolean;
  readonly box: Box;
  /** Height of a rung and where the middle of the first one is. */
  readonly step: number;
  x(stops: number): number;
  y(index: number): number;
}

export function drawLadder(
  ladder: Ladder,
  theme: Theme,
  size: Size,
  surroundings: Surroundings,
): Drawing {
  const plan = planOf(ladder, theme, size, surroundings);
  return {
    width: size.width,
    height: plan.box.bottom + plan.letters * (ladder.level ? 3.6 : 2.2),
    children: [
      group({}, ground(plan)),
      group({}, stopsScale(plan)),
      group({}, signalScale(plan)),
      ...ladder.rungs.map((rung, index) => drawRung(plan, rung, index)),
    ],
  };
}

function planOf(
  ladder: Ladder,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): Plan {
  const { rungs } = ladder;
  const narrow = width < narrowBelow * letters;
  const widest = (texts: readonly string[]) => max(texts, (text) => widthOf(text, letters)) ?? 0;
  const beside = Math.min(widest(rungs.map(({ name }) => name)), width * 0.26) + letters;
  const behind =
    Math.min(widest(rungs.map((rung) => sideWords(rung, surroundings, ladder))), width * 0.34) +
    letters;
  const step = letters * (narrow ? 3.3 : 2.3);
  const top = letters * ((ladder.signal ? 3.2 : 0) + ((ladder.high ?? ladder.low) ? 1.9 : 0.6));
  const box: Box = {
    left: narrow ? letters : beside,
    right: width - (narrow ? letters : behind),
    top,
    bottom: top + step * rungs.length + letters * 0.5,
  };
  const scale = scaleLinear(domainOf(ladder, surroundings.tolerance), [box.left, box.right]);
  return {
    ...surroundings,
    ...{ ladder, theme, letters, width, narrow, box, step },
    small: letters * 0.88,
    x: (stops) => scale(stops),
    y: (index) => top + letters * 0.25 + step * (index + (narrow ? 0.72 : 0.5)),
  };
}

/** Whole stops around everything that is drawn. */
function domainOf({ rungs, low, high }: Ladder, tolerance: number): readonly [number, number] {
  const all = [
    0,
    ...rungs.flatMap(({ at, wanted }) => [
      ...(at === undefined ? [] : [at]),
      ...(wanted === undefined ? [] : [wanted - tolerance, wanted + tolerance]),
    ]),
    ...[low, high].filter((end) => end !== undefined),
  ];
  return [Math.floor((min(all) ?? 0) - 0.4), Math.ceil((max(all) ?? 0) + 0.4)];
}

/** What the camera holds is plain ground; what it does not is hatched. */
function ground({ ladder: { low, high }, box, x, theme, letters, small }: Plan) {
  if (low === undefined && high === undefined) return [];
  const from = low === undefined ? box.left : x(low);
  const to = high === undefined ? box.right : x(high);
  const end = (at: number, text: string, anchor: 'start' | 'end', toward: -1 | 1) => [
    line([at, box.top - letters * 0.5], [at, box.bottom], theme.edge, { 'stroke-width': 1.5 }),
    words(at + toward * small * 0.5, box.top - letters * 0.55, text, {
      ...{ fill: theme.mute, size: small, anchor, halo: theme.sheet },
    }),
  ];
  return [
    filled({ ...box, left: from, right: to }, theme.paper),
    hatched({ ...box, right: from }, theme.line2),
    hatched({ ...box, left: to }, theme.line2),
    ...(low === undefined ? [] : end(from, `holds ${amount(low)}`, 'start', 1)),
    ...(high === undefined ? [] : end(to, `clips at ${amount(high)}`, 'end', -1)),
  ];
}

const amount = (stops: number): string =>
  `${stops < 0 ? '−' : '+'}${stopsInWords(stops).replace(/ stops?$/, '')}`;

/** A line for each whole stop, and under it how many, and what that is on the meter. */
function stopsScale({ ladder, box, x, theme, letters, small, writing }: Plan): Drawn[] {
  const { zero, level } = ladder;
  const [first, last] = domainOf(ladder, 0);
  const wide = x(1) - x(0);
  const every = [1, 2, 5, 10].find((each) => each * wide >= letters * 1.6) ?? 20;
  const whole = Array.from({ length: last - first + 1 }, (_, index) => first + index).filter(
    (stops) => x(stops) >= box.left - 0.5 && x(stops) <= box.right + 0.5,
  );
  const under = (row: number) => box.bottom + letters * row;
  const labels = thatFit(
    [0, ...whole.filter((stops) => stops % every === 0 && stops !== 0)].map((stops) => {
      const text = stops === 0 ? zero : amount(stops);
      return { stops, text, at: x(stops), room: widthOf(text, letters) };
    }),
    letters * 0.5,
  );
  const levels = level
    ? thatFit(
        labels.map(({ stops, at }) => {
          const value = level.value * 2 ** (level.quantity === 'fNumber' ? stops / 2 : stops);
          const text = said(level.quantity, value, writing);
          return { text, at, room: widthOf(text, small) };
        }),
        small * 0.7,
      )
    : [];
  return [
    ...whole.map((stops) =>
      line([x(stops), box.top], [x(stops), box.bottom], stops === 0 ? theme.mute : theme.line, {
        'stroke-width': stops === 0 ? 1.5 : 1,
      }),
    ),
    line([box.left, box.bottom], [box.right, box.bottom], theme.line2),
    ...labels.map(({ stops, text, at }) =>
      words(at, under(1.3), text, {
        ...{ fill: stops === 0 ? theme.ink : theme.mute, size: letters, anchor: 'middle' },
        ...(stops === 0 && { weight: 600 }),
      }),
    ),
    ...levels.map(({ text, at }) =>
      words(at, under(2.6), text, { fill: theme.faint, size: small, anchor: 'middle' }),
    ),
  ];
}

/** The user's own table, over the ladder: a tick for each row of it. */
function signalScale({ ladder: { signal }, box, x, theme, letters, small, writing }: Plan) {
  if (!signal) return [];
  const y = letters * 2.5;
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
    words(box.left, letters * 0.9, signal.quantity === 'share' ? 'signal, %' : 'signal', {
      ...{ fill: theme.mute, size: small },
    }),
    ...(low && high ? [line([x(low[0]), y], [x(high[0]), y], theme.edge)] : []),
    ...inside.map(([at]) =>
      line([x(at), y - letters * 0.25], [x(at), y + letters * 0.25], theme.edge),
    ),
    ...labels.map(({ text, at }) =>
      words(at, y - letters * 0.5, text, { fill: theme.ink, size: small, anchor: 'middle' }),
    ),
  ];
}

function drawRung(plan: Plan, rung: Rung, index: number): Drawn {
  const { box, x, y, theme, letters, narrow, width, tolerance } = plan;
  const [middle, { at, wanted, shape }] = [y(index), rung];
  const high = letters * 0.95;
  const side = sideWords(rung, plan, plan.ladder);
  const baseline = narrow ? middle - letters * 1.05 : middle + letters * 0.34;
  const room = narrow ? width - 2 * letters - widthOf(side, letters) : box.left - letters * 0.8;
  return group({ class: 'point' }, [
    line([box.left, middle], [box.right, middle], theme.line2, { 'stroke-dasharray': '1 4' }),
    wanted !== undefined && gate(x(wanted - tolerance), x(wanted + tolerance), middle, high, theme),
    at !== undefined &&
      wanted !== undefined &&
      line([x(wanted), middle], [x(at), middle], paintOf(shape, theme), { 'stroke-width': 1.5 }),
    signAt(x(at ?? wanted ?? 0), middle, shape, theme, letters / 12),
    words(narrow ? box.left : 0, baseline, shortened(rung.name, room, letters), {
      ...{ fill: theme.ink, size: letters, ...(narrow && { halo: theme.sheet }) },
    }),
    words(width - (narrow ? letters : 0), baseline, side, {
      ...{
        fill: sidePaint(shape, theme),
        size: letters,
        anchor: 'end',
        ...(narrow && { halo: theme.sheet }),
      },
    }),
  ]);
}

const sidePaint = (shape: Rung['shape'], theme: Theme): string =>
  shape === 'dot' || shape === 'agrees' || shape === 'waits' ? theme.mute : paintOf(shape, theme);

/** Where a reading may fall and still agree: an open bracket at each end. */
function gate(from: number, to: number, y: number, high: number, theme: Theme): Drawn {
  const [top, bottom, lip] = [y - high / 1.6, y + high / 1.6, Math.min(3, (to - from) / 3)];
  return element('path', {
    d: `M${round(from + lip)} ${round(top)}H${round(from)}V${round(bottom)}H${round(from + lip)}M${round(to - lip)} ${round(top)}H${round(to)}V${round(bottom)}H${round(to - lip)}`,
    fill: 'none',
    stroke: theme.edge,
    'stroke-width': 1.25,
  });
}

const round = (value: number): number => Math.round(value * 100) / 100;

/** "−1 2/3, 1/3 stop over, 34 %". */
function sideWords(rung: Rung, { writing }: Surroundings, { signal }: Ladder): string {
  if (rung.at === undefined) return rung.words;
  const parts = [
    saidNumber('stops', rung.at, writing),
    rung.words,
    rung.signal !== undefined && signal && said(signal.quantity, rung.signal, writing),
  ];
  return parts.filter(Boolean).join(' · ');
}
