import { enter } from '../../book/make/enter.ts';
import { made, refused, type Made } from '../../book/make/made.ts';
import type { Means } from '../../book/types.ts';
import type { Look } from '../../panels/views/look.ts';
import { words } from '../../words/words.ts';
import { bestOrder, mostForBest } from './best.ts';
import { goodOrder } from './good.ts';
import { sumOf, turnsOf } from './moves.ts';
import { runningOn, type RunningTable } from './table.ts';
import { costOf } from './turns.ts';

const template = 'running-order';

/**
 * Writes into the list of a running order the order that takes the fewest hours, and of equal hours
 * the fewest moves; what stays, stays. One transaction, with a sentence of before and after.
 */
export function orderSetUps(
  look: Look,
  means: Means,
  shown: string,
): Made & { readonly says?: string } {
  const lists = look.document.sheets.filter(({ properties }) => properties.template === template);
  // A list of one's own needs no template to be put in order.
  const sheet = runningOn(look, shown) ? shown : (lists[0]?.id ?? shown);
  const table = runningOn(look, sheet);
  if (!table) return refused(words.plan.noList);
  const { setUps, shotAs } = table;
  if (setUps.length < 2) return refused(words.plan.nothingToOrder);
  const stays = staying(table);
  if ('reason' in stays) return stays;
  const turns = turnsOf(table, stays);
  const given = asNumbered(table, stays);
  const isBest = setUps.length <= mostForBest;
  const found = isBest ? bestOrder(turns) : goodOrder(turns, given);
  const [before, after] = [sumOf(table, given), sumOf(table, found)];
  // An order that is no worse is left as its author has it.
  const isKept = costOf(turns, given) <= costOf(turns, found) + 1e-9;
  const order = isKept ? given : found;
  const says = isKept
    ? words.plan.asGood(sentence(before), isBest)
    : words.plan.ordered(sentence(before), sentence(after), isBest);
  const entries = order.map((at, index) => ({
    ...{ sheet, row: setUps[at]?.row ?? 0, column: shotAs },
    text: String(index + 1),
  }));
  const entered = enter(look.document, means, entries, { label: words.plan.order });
  if (!entered.ok) return entered;
  return { ...made(words.plan.order, entered.transaction.steps), says };
}

const sentence = ({ moves, hours }: { readonly moves: number; readonly hours: number }): string =>
  words.plan.moves(moves, hours.toFixed(1));

/** Set-ups that stay where their number puts them, or which of them cannot. */
function staying({
  setUps,
}: RunningTable): ReadonlyMap<number, number> | { readonly ok: false; readonly reason: string } {
  const stays = new Map<number, number>();
  const taken = new Set<number>();
  for (const [at, { name, stays: held, shotAs = 0 }] of setUps.entries()) {
    if (!held) continue;
    const place = shotAs - 1;
    if (!Number.isInteger(place) || place < 0 || place >= setUps.length || taken.has(place))
      return refused(words.plan.cannotStay(name, setUps.length));
    stays.set(at, place);
    taken.add(place);
  }
  return stays;
}

/** As it is numbered now: what stays at its place, the others by their numbers, unnumbered ones last. */
function asNumbered(
  { setUps }: RunningTable,
  stays: ReadonlyMap<number, number>,
): readonly number[] {
  const number = (at: number) => setUps[at]?.shotAs ?? Infinity;
  const loose = setUps
    .map((_, at) => at)
    .filter((at) => !stays.has(at))
    .toSorted((one, other) => number(one) - number(other) || one - other);
  const heldAt = new Map([...stays].map(([at, place]) => [place, at]));
  return setUps.map((_, place) => heldAt.get(place) ?? loose.shift() ?? 0);
}
