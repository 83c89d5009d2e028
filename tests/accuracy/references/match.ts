import type { TableRow } from '../../../functions/values.ts';
import type { Chance, References } from '../measure.ts';
import { across } from './colour.ts';

/** Name, mired, Duv and loss of a piece. */
type Piece = readonly [name: string, mired: number, duv: number, loss: number];
type Light = readonly [kelvin: number, duv: number];

const cells = (rows: readonly (readonly (string | number)[])[]): readonly TableRow[] =>
  rows.map((row) => row.map((value) => ({ value })));

const short = (value: number, digits: number) => Number(value.toFixed(digits));

/** Some oranges and blues, some greens and magentas. */
function kitOf(chance: Chance): readonly Piece[] {
  const shift = (sign: number, index: number): Piece => [
    `shift ${String(index)}`,
    short(sign * (15 + 150 * chance()), 0),
    short(0.002 * (chance() - 0.5), 4),
    short(0.1 + 1.2 * chance(), 2),
  ];
  const tint = (sign: number, index: number): Piece => [
    `tint ${String(index)}`,
    short(6 * (chance() - 0.5), 0),
    short(sign * (0.002 + 0.012 * chance()), 4),
    short(0.1 + 0.7 * chance(), 2),
  ];
  return [1, -1, 1, -1].flatMap((sign, index) => [shift(sign, index), tint(sign, index)]);
}

const light = (chance: Chance): Light => [2200 + 6000 * chance(), 0.024 * (chance() - 0.5)];
const white = (chance: Chance): Light => [3000 + 3000 * chance(), 0.004 * (chance() - 0.5)];

const rowsIn = (table: readonly TableRow[]): readonly Piece[] =>
  table.map(([name, mired, duv, loss]) => [
    String(name?.value),
    Number(mired?.value),
    Number(duv?.value),
    Number(loss?.value),
  ]);

/** u′, v′ by summing Planck’s law anew, with the direction across from two sums close together. */
function prime([kelvin, duv]: Light): readonly [number, number] {
  const { u, v } = across(kelvin, duv);
  return [u, 1.5 * v];
}

/** Every way to put on none, one, or one of either sort, by brute force. */
function nearest(from: Light, to: Light, kit: readonly Piece[]): readonly Piece[] {
  const goal = prime(to);
  const away = (pieces: readonly Piece[]): number => {
    const mired = pieces.reduce((sum, piece) => sum + piece[1], 1e6 / from[0]);
    const duv = pieces.reduce((sum, piece) => sum + piece[2], from[1]);
    if (mired < 10 || mired > 1000) return Infinity;
    const [u, v] = prime([1e6 / mired, duv]);
    return Math.hypot(u - goal[0], v - goal[1]);
  };
  /** Each brings nearer what it is for. */
  const sensible = (pieces: readonly Piece[]): boolean => {
    const off = 1e6 / from[0] - 1e6 / to[0];
    const carried = pieces.reduce((sum, piece) => sum + (isTint(piece) ? 0 : piece[2]), 0);
    const tint = from[1] - to[1] + carried;
    return pieces.every((piece) =>
      isTint(piece) ? (tint + piece[2]) ** 2 < tint ** 2 : (off + piece[1]) ** 2 < off ** 2,
    );
  };
  const isTint = ([, mired, duv]: Piece) => Math.abs(duv) / 0.003 > Math.abs(mired) / 10;
  const least = (sets: readonly (readonly Piece[])[]) =>
    sets
      .filter(sensible)
      .reduce<readonly Piece[]>((best, next) => (away(next) < away(best) ? next : best), []);
  const one = least(kit.map((piece) => [piece]));
  const two = least(
    kit.flatMap((a) => kit.filter((b) => !isTint(a) && isTint(b)).map((b) => [a, b])),
  );
  return [one, two].reduce<readonly Piece[]>(
    (best, next) => (away(next) < away(best) - 0.0011 ? next : best),
    [],
  );
}

const loss = (pieces: readonly Piece[]) => pieces.reduce((sum, piece) => sum + piece[3], 0);

type Table = readonly TableRow[];

/** What stands in a column of the pieces that a text names, picked from the kit by hand. */
const summed = (column: 1 | 2 | 3) => ({
  against: 'the pieces named, picked out and added',
  limit: 1e-12,
  sample: (chance: Chance) => {
    const kit = kitOf(chance);
    const [one, other] = [kit[Math.floor(8 * chance())], kit[Math.floor(8 * chance())]];
    const text = chance() < 0.4 ? String(one?.[0]) : `${String(one?.[0])} + ${String(other?.[0])}`;
    return [text, cells(kit)];
  },
  work: ([text, kit]: readonly [string, Table]) =>
    text
      .split(' + ')
      .reduce((sum, name) => sum + rowsIn(kit).find(([known]) => known === name)![column], 0),
});

export const match: References = {
  FILTERFOR: {
    against: 'every piece and every pair of the kit, summed anew',
    limit: 0,
    oneIn: 5,
    sample: (chance) => [...light(chance), ...white(chance), cells(kitOf(chance))],
    work: ([kelvin, duv, to, toDuv, kit]: readonly [number, number, number, number, Table]) =>
      nearest([kelvin, duv], [to, toDuv], rowsIn(kit))
        .map(([name]) => name)
        .join(' + ') || 'none',
  },
  FILTERSHIFT: summed(1),
  FILTERTINT: summed(2),
  FILTERLOSS: summed(3),
  MATCHLOSS: {
    against: 'every piece and every pair of the kit, for each source',
    limit: 1e-12,
    oneIn: 10,
    sample: (chance) => [
      ...white(chance),
      cells([1, 2, 3].map(() => [...light(chance), chance() < 0.2 ? 'no' : 'yes'])),
      cells(kitOf(chance)),
    ],
    work: ([kelvin, duv, sources, kit]: readonly [number, number, Table, Table]) =>
      sources
        .filter(([, , may]) => may?.value !== 'no')
        .map(([from, tint]): Light => [Number(from?.value), Number(tint?.value)])
        .reduce((sum, from) => sum + loss(nearest(from, [kelvin, duv], rowsIn(kit))), 0),
  },
};
