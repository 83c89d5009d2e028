import type { RunningTable, SetUp } from './table.ts';
import type { Turns } from './turns.ts';

interface Change {
  readonly moves: number;
  readonly hours: number;
}

/** What is rigged, struck and moved from one set-up to the next; from nothing, and at the end to nothing. */
function changeTo(
  to: SetUp | undefined,
  from: SetUp | undefined,
  hours: RunningTable['hours'],
): Change {
  const samePlace = from?.place === to?.place;
  const count = { rig: 0, strike: 0, move: 0 };
  for (const [index] of (to ?? from)?.lights.entries() ?? []) {
    const [before, now] = [from?.lights[index] ?? '', to?.lights[index] ?? ''];
    if (samePlace && before !== '' && now !== '') count.move += before === now ? 0 : 1;
    else {
      count.rig += now === '' ? 0 : 1;
      count.strike += before === '' ? 0 : 1;
    }
  }
  const { rig, strike, move } = count;
  const way = from && to && !samePlace ? hours.travel : 0;
  return {
    moves: rig + strike + move,
    hours: rig * hours.rig + strike * hours.strike + move * hours.move + way,
  };
}

/** Next to a tenth of a second a move weighs nothing: of what takes equally long, the fewer moves. */
const aMove = 1e-6;

/** Hours first, and of equal hours the moves. */
export function turnsOf({ setUps, hours }: RunningTable, stays: Turns['stays']): Turns {
  const cost = (to: SetUp | undefined, from: SetUp | undefined): number => {
    const change = changeTo(to, from, hours);
    return change.hours + change.moves * aMove;
  };
  const table = setUps.map((from) => setUps.map((to) => cost(to, from)));
  return {
    count: setUps.length,
    first: (one) => cost(setUps[one], undefined),
    change: (from, to) => table[from]?.[to] ?? 0,
    last: (one) => cost(undefined, setUps[one]),
    stays,
  };
}

/** Moves and hours of a whole order, until the last rig is struck. */
export function sumOf({ setUps, hours }: RunningTable, order: readonly number[]): Change {
  const shot = order.map((at) => setUps[at]);
  return [...shot, undefined].reduce<Change>(
    (sum, to, index) => {
      const change = changeTo(to, shot[index - 1], hours);
      return { moves: sum.moves + change.moves, hours: sum.hours + change.hours };
    },
    { moves: 0, hours: 0 },
  );
}
