/** A number that depends on another; undefined where there is none: an error, a wait. */
export type Dependence = (at: number) => number | undefined;

export interface Search {
  readonly from: number;
  readonly to: number;
  /** What the number should be. */
  readonly wanted: number;
}

export interface Answer {
  readonly at: number;
  readonly value: number;
}

/** Where the number passes over what is wanted without being it: a table, a rounding, a pole. */
export interface Jump {
  readonly before: Answer;
  readonly after: Answer;
}

export interface Answers {
  /** In rising order. */
  readonly answers: readonly Answer[];
  readonly jumps: readonly Jump[];
  /** What comes nearest, where there is no answer. */
  readonly nearest?: Answer;
  /** How many places were looked at, and at how many of them there was no number. */
  readonly tried: number;
  readonly without: number;
}

/** Places between the bounds at which a change of sign is looked for. */
export const places = 1000;

interface Tried extends Answer {
  /** Value less what is wanted. */
  readonly off: number;
}

/**
 * Every value between the bounds that makes a number what it should be, as far as a grid of a
 * thousand places tells: each change of sign between neighbours is halved down to its place. Where
 * the number only touches what is wanted, the three nearest approaches are followed to their lowest.
 * Yields the share that is done.
 */
export function* solve(
  dependence: Dependence,
  { from, to, wanted }: Search,
): Generator<number, Answers> {
  let tried = 0;
  let without = 0;
  const look = (at: number): Tried | undefined => {
    const value = dependence(at);
    tried += 1;
    if (value === undefined || !Number.isFinite(value)) {
      without += 1;
      return undefined;
    }
    return { at, value, off: value - wanted };
  };
  const grid: (Tried | undefined)[] = [];
  for (let index = 0; index <= places; index += 1) {
    grid.push(look(index === places ? to : from + ((to - from) * index) / places));
    if (index % 20 === 0) yield (index / places) * 0.9;
  }
  const answers: Tried[] = grid.filter((one): one is Tried => one?.off === 0);
  const jumps: Jump[] = [];
  for (let index = 1; index <= places; index += 1) {
    const [before, after] = [grid[index - 1], grid[index]];
    if (!before || !after || Math.sign(before.off) * Math.sign(after.off) >= 0) continue;
    const found = halved(look, before, after);
    if ('off' in found) answers.push(found);
    else jumps.push(found);
    yield 0.9 + (index / places) * 0.05;
  }
  const near = answers.length === 0 ? approaches(look, grid) : [];
  answers.push(...near.filter(({ off }) => Math.abs(off) <= slack(wanted)));
  const nearest = nearestOf([...grid, ...near]);
  return {
    answers: answers.toSorted((a, b) => a.at - b.at).map(plain),
    jumps,
    ...(answers.length === 0 && nearest && { nearest: plain(nearest) }),
    tried,
    without,
  };
}

const plain = ({ at, value }: Tried): Answer => ({ at, value });

/** How far off a lowest approach may be and still be the thing itself: the sum's own rounding. */
const slack = (wanted: number) => 1e-9 * Math.max(1, Math.abs(wanted));

type Look = (at: number) => Tried | undefined;

/** Between two places of unlike sign: the place where it is neither, or the jump over it. */
function halved(look: Look, before: Tried, after: Tried): Tried | Jump {
  let [low, high] = [before, after];
  for (;;) {
    const middle = (low.at + high.at) / 2;
    if (middle <= Math.min(low.at, high.at) || middle >= Math.max(low.at, high.at)) break;
    const here = look(middle);
    if (!here) return { before: plain(low), after: plain(high) };
    if (here.off === 0) return here;
    if (Math.sign(here.off) === Math.sign(low.off)) low = here;
    else high = here;
    if (Math.abs(high.at - low.at) <= 1e-12 * Math.max(1e-3, Math.abs(high.at))) break;
  }
  // A slope shrinks with its width; a step stays as high as it was.
  const shrunk = Math.abs(high.off - low.off) <= 1e-3 * Math.abs(after.off - before.off);
  if (!shrunk) return { before: plain(low), after: plain(high) };
  return Math.abs(low.off) <= Math.abs(high.off) ? low : high;
}

const golden = (Math.sqrt(5) - 1) / 2;

/** The three lowest dips of the distance to what is wanted, each followed down. */
function approaches(look: Look, grid: readonly (Tried | undefined)[]): Tried[] {
  const dips = grid.flatMap((here, index) => {
    const [before, after] = [grid[index - 1], grid[index + 1]];
    if (!here || !before || !after) return [];
    const low = Math.abs(here.off);
    return low <= Math.abs(before.off) && low <= Math.abs(after.off)
      ? [{ before, after, low }]
      : [];
  });
  return dips
    .toSorted((a, b) => a.low - b.low)
    .slice(0, 3)
    .flatMap(({ before, after }) => lowest(look, before.at, after.at) ?? []);
}

/** Golden section: sixty steps shrink the stretch by 10¹². */
function lowest(look: Look, from: number, to: number): Tried | undefined {
  let [low, high] = [from, to];
  let best: Tried | undefined;
  const off = (at: number) => {
    const here = look(at);
    if (here && (!best || Math.abs(here.off) < Math.abs(best.off))) best = here;
    return here ? Math.abs(here.off) : Infinity;
  };
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  let [atLeft, atRight] = [off(left), off(right)];
  for (let step = 0; step < 60; step += 1) {
    if (atLeft <= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - golden * (high - low);
      atLeft = off(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + golden * (high - low);
      atRight = off(right);
    }
  }
  return best;
}

function nearestOf(all: readonly (Tried | undefined)[]): Tried | undefined {
  let best: Tried | undefined;
  for (const one of all) if (one && (!best || Math.abs(one.off) < Math.abs(best.off))) best = one;
  return best;
}
