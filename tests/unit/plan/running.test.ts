import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { bestOrder } from '../../../src/plan/running/best.ts';
import { goodOrder } from '../../../src/plan/running/good.ts';
import { orderSetUps } from '../../../src/plan/running/order.ts';
import { costOf, type Turns } from '../../../src/plan/running/turns.ts';
import { words } from '../../../src/words/words.ts';
import { buildBook, run } from '../../../templates/build.ts';
import type { PlannedSheet } from '../../../templates/plan.ts';
import { opened } from '../repeat/place.ts';

/** Chance that comes out the same each time (Park and Miller, 1988). */
function chance(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647;
}

/** Costs drawn by chance, whole tenths so that there are ties, with some things that stay. */
function drawn(seed: number, count: number, held = 0): Turns {
  const next = chance(seed);
  const tenths = () => Math.floor(next() * 20) / 10;
  const begins = Array.from({ length: count }, tenths);
  const ends = begins.map(tenths);
  const table = begins.map(() => Array.from({ length: count }, tenths));
  const places = Array.from({ length: count }, (_, at) => at).toSorted(() => next() - 0.5);
  return {
    count,
    first: (one) => begins[one] ?? 0,
    change: (from, to) => table[from]?.[to] ?? 0,
    last: (one) => ends[one] ?? 0,
    stays: new Map(places.slice(0, held).map((place, at) => [at * 2, place])),
  };
}

function* ordersOf(things: readonly number[]): Generator<readonly number[]> {
  if (things.length === 0) yield [];
  for (const [at, one] of things.entries())
    for (const rest of ordersOf(things.toSpliced(at, 1))) yield [one, ...rest];
}

const keeps = ({ stays }: Turns, order: readonly number[]): boolean =>
  [...stays].every(([one, place]) => order[place] === one);

/** Every order there is, each summed by itself. */
const leastOf = (turns: Turns): number =>
  Math.min(
    ...[...ordersOf(Array.from({ length: turns.count }, (_, at) => at))]
      .filter((order) => keeps(turns, order))
      .map((order) => costOf(turns, order)),
  );

const isWhole = (order: readonly number[]): boolean =>
  order.toSorted((one, other) => one - other).every((one, at) => one === at);

describe('the best order against every order there is', () => {
  it.each([1, 2, 3, 4, 5, 6, 7])('of %d things', (count) => {
    for (const seed of [11, 12, 13]) {
      const turns = drawn(seed, count);
      const order = bestOrder(turns);
      expect(order.length).toBe(count);
      expect(isWhole(order)).toBe(true);
      expect(costOf(turns, order)).toBeCloseTo(leastOf(turns), 9);
    }
  });

  it('with things that stay where they are', () => {
    for (const seed of [21, 22, 23, 24]) {
      const turns = drawn(seed, 6, 2);
      const order = bestOrder(turns);
      expect(keeps(turns, order)).toBe(true);
      expect(costOf(turns, order)).toBeCloseTo(leastOf(turns), 9);
    }
  });

  it('a good order of many is whole, keeps what stays, and is never worse than the one given', () => {
    for (const seed of [31, 32, 33]) {
      const turns = drawn(seed, 20, 3);
      const heldAt = new Map([...turns.stays].map(([one, place]) => [place, one]));
      const loose = Array.from({ length: 20 }, (_, at) => at).filter((at) => !turns.stays.has(at));
      const given = Array.from({ length: 20 }, (_, at) => heldAt.get(at) ?? loose.shift() ?? 0);
      const order = goodOrder(turns, given);
      expect(isWhole(order)).toBe(true);
      expect(keeps(turns, order)).toBe(true);
      expect(costOf(turns, order)).toBeLessThan(costOf(turns, given));
    }
  });

  it('a good order of few comes near the best: within a third on ten draws', () => {
    for (let seed = 41; seed < 51; seed += 1) {
      const turns = drawn(seed, 9);
      const order = goodOrder(turns, [0, 1, 2, 3, 4, 5, 6, 7, 8]);
      const [good, best] = [costOf(turns, order), costOf(turns, bestOrder(turns))];
      expect(good).toBeGreaterThanOrEqual(best - 1e-9);
      expect(good).toBeLessThanOrEqual(best * 1.34 + 1e-9);
    }
  });
});

/** Moves now, out of the sentence. */
const sum = (made: object): number =>
  Number(/(\d+) moves? and \S+ h now/.exec('says' in made ? String(made.says) : '')?.[1]);

function sheet() {
  const file = new URL('../../../templates/running-order/book.json', import.meta.url);
  const read = readBook(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  const place = opened(createBook(read.document));
  const on = (cell: string) => place.valueOf('Running order', cell);
  const numbers = (count: number) => Array.from({ length: count }, (_, at) => on(`C${6 + at}`));
  const order = () => orderSetUps(place.look, place.means, place.idOf('Running order'));
  /** Moves and hours as the sheet itself sums them. */
  const summed = () =>
    /^(\d+) moves, ([\d.]+) h/
      .exec(String(on('B3')))
      ?.slice(1)
      .map(Number);
  return {
    ...place,
    on,
    order,
    numbers,
    summed,
    type: (cell: string, text: string) => place.type('Running order', cell, text),
  };
}

describe('set-ups put in the order of their light', () => {
  it('the order written is the least of all that the sheet sums, and one undo takes it back', () => {
    const { book, document, order, numbers, summed, type } = sheet();
    // As they are listed.
    for (let at = 0; at < 6; at += 1) type(`C${6 + at}`, String(at + 1));
    const before = writeBook(document);
    expect(summed()?.[0]).toBe(38);
    const made = order();
    run(book, made);
    const found = numbers(6).map(Number);
    const steps = book.history.done.length;
    const [moves, hours] = summed() ?? [];
    expect(made).toMatchObject({ ok: true });
    expect('says' in made && made.says).toMatch(
      new RegExp(
        `^38 moves and [\\d.]+ h before, ${moves} moves and ${hours?.toFixed(1)} h now: no order takes less\\.`,
      ),
    );
    // The sheet’s own formulas sum every order in which two that follow one another change places.
    const tried = found.slice(1).map((_, one) => {
      const swapped = [...found];
      [swapped[one], swapped[one + 1]] = [found[one + 1]!, found[one]!];
      return swapped;
    });
    for (const list of tried) {
      for (const [at, number] of list.entries()) type(`C${6 + at}`, String(number));
      expect(summed()?.[1]).toBeGreaterThanOrEqual(hours!);
    }
    while (book.history.done.length > steps) book.undo();
    expect(numbers(6)).toEqual(found);
    book.undo();
    expect(writeBook(document)).toBe(before);
  });

  it('says so where the order is the best already, and keeps it', () => {
    const { book, order, numbers } = sheet();
    run(book, order());
    const kept = numbers(6);
    const again = order();
    expect('says' in again && again.says).toMatch(
      /^It is in the best order already: \d+ moves and/,
    );
    expect(again.ok && again.transaction.steps).toEqual([]);
    expect(numbers(6)).toEqual(kept);
  });

  it('what stays is shot when it was; what cannot stay there is said', () => {
    const { book, order, numbers, type, summed } = sheet();
    // The launch waits for the tide: first in the morning.
    for (let at = 0; at < 6; at += 1) type(`C${6 + at}`, String(at + 1));
    type('C9', '1');
    type('C6', '4');
    type('P9', 'yes');
    run(book, order());
    expect(numbers(6)[3]).toBe(1);
    const withTide = summed()?.[1] ?? 0;
    type('P9', '');
    run(book, order());
    expect(summed()?.[1]).toBeLessThanOrEqual(withTide);
    type('P9', 'yes');
    type('C9', '7');
    expect(order()).toEqual({ ok: false, reason: words.plan.cannotStay('21 launch', 6) });
  });

  it('a list of one’s own with more than fifteen is put in a good order, and it says so', () => {
    const captions = ['Set-up', 'Place', 'Shot as', 'Shooting takes', 'Key', 'Fill', 'To rig'];
    const row = (texts: readonly string[], at: number) =>
      Object.fromEntries(texts.map((typed, column) => [`${'ABCDEFG'[column]}${at}`, { typed }]));
    const count = 17;
    const cells = Object.assign(
      row(captions, 1),
      ...Array.from({ length: count }, (_, at) =>
        row(
          [`${at}`, at % 2 ? 'Loft' : 'Shed', `${at + 1}`, '', `k${at % 4}`, `f${at % 3}`, '=0'],
          at + 2,
        ),
      ),
    ) as PlannedSheet['cells'];
    const named = Object.fromEntries(
      Object.entries(cells).map(([at, cell]) => [
        at,
        at.startsWith('A') ? { ...cell, quantity: 'text' as const } : cell,
      ]),
    );
    const plan = {
      name: 'List',
      title: 'List',
      purpose: '',
      phase: 'plan',
      template: '',
      widths: [],
      cells: named,
    } as const;
    const { book, look, means, idOf, valueOf } = opened(
      buildBook({ title: 'Own', sheets: [plan] }),
    );
    const made = orderSetUps(look, means, idOf('List'));
    expect('says' in made && made.says).toMatch(
      /^\d+ moves and 0\.0 h before, \d+ moves and 0\.0 h now: a good order, not proven to be the best of so many\./,
    );
    run(book, made);
    const numbers = Array.from({ length: count }, (_, at) => Number(valueOf('List', `C${at + 2}`)));
    expect(isWhole(numbers.map((number) => number - 1))).toBe(true);
    // All of one place comes before all of the other.
    const inLoft = numbers
      .map((number, at) => ({ number, loft: at % 2 === 1 }))
      .toSorted((one, other) => one.number - other.number)
      .map(({ loft }) => loft);
    expect(inLoft.filter((loft, at) => at > 0 && loft !== inLoft[at - 1]).length).toBe(1);
    const again = orderSetUps(look, means, idOf('List'));
    expect('says' in again && again.says).toBe(
      words.plan.asGood(words.plan.moves(sum(made), '0.0'), false),
    );
  });

  it('without a list, or with one set-up, it says why', () => {
    const { type, order } = sheet();
    for (let row = 7; row < 12; row += 1) type(`A${row}`, '');
    expect(order()).toEqual({ ok: false, reason: words.plan.nothingToOrder });
    type('C5', 'Number');
    expect(order()).toEqual({ ok: false, reason: words.plan.noList });
  });
});
