import { panelDistance, panelFactor } from '../../../functions/distance/panel.ts';
import type { Piece, SetLight } from './set.ts';

/** One way to change a light, and the factor that it comes to: not always the one that is wanted. */
export type Way =
  | { readonly kind: 'output'; readonly from: number; readonly to: number; readonly factor: number }
  | {
      readonly kind: 'distance';
      readonly from: number;
      readonly to: number;
      readonly factor: number;
    }
  | {
      readonly kind: 'pieces';
      readonly into: readonly string[];
      readonly out: readonly string[];
      readonly factor: number;
    };

/** Every way there is to multiply a light by a factor, as near as each can come. */
export function waysOf(light: SetLight, kit: readonly Piece[], factor: number): readonly Way[] {
  return [output(light, factor), distance(light, factor), pieces(light, kit, factor)].flatMap(
    (way) => way ?? [],
  );
}

function output({ output: from }: SetLight, factor: number): Way | undefined {
  if (from === undefined || from <= 0) return undefined;
  const to = Math.min(1, from * factor);
  return { kind: 'output', from, to, factor: to / from };
}

function distance(light: SetLight, factor: number): Way | undefined {
  const { distance: from, nearest = 0, farthest = Infinity, face } = light;
  if (from === undefined || from <= 0) return undefined;
  const asked =
    factor <= 0 ? farthest : face ? faceDistance(face, from, factor) : from / Math.sqrt(factor);
  const to = Math.min(Math.max(asked, nearest), farthest);
  if (!Number.isFinite(to) || to <= 0) return undefined;
  return { kind: 'distance', from, to, factor: factorAt(light, from, to) };
}

/** What a move does to the light of a small source, or of an even face. */
function factorAt({ face }: SetLight, from: number, to: number): number {
  if (!face) return (from / to) ** 2;
  const at = (metres: number) => panelFactor(face.width, face.height, metres);
  return at(to) / at(from);
}

function faceDistance(
  { width, height }: NonNullable<SetLight['face']>,
  from: number,
  factor: number,
): number {
  const wanted = panelFactor(width, height, from) * factor;
  // Right before the face there is π times its luminance, and no more anywhere.
  return wanted >= Math.PI ? 0 : panelDistance(width, height, wanted);
}

/** Nobody hangs more than two pieces of one kit into a lamp. */
const mostInto = 2;
/** A set of fewer pieces is preferred to one this much nearer, in stops. */
const worthAPiece = 0.05;

function pieces(
  { pieces: there }: SetLight,
  kit: readonly Piece[],
  factor: number,
): Way | undefined {
  const known = there.flatMap((name) => kit.find((piece) => isCalled(piece, name)) ?? []);
  const wanted = -Math.log2(Math.max(factor, 1e-6));
  let best: { readonly way: Way; readonly cost: number } | undefined;
  for (const out of subsets(known, known.length))
    for (const into of subsets(kit, mostInto)) {
      if (into.some((piece) => out.includes(piece))) continue;
      const lost = stopsOf(into) - stopsOf(out);
      const cost = Math.abs(lost - wanted) + worthAPiece * (into.length + out.length);
      if (best && cost >= best.cost - 1e-12) continue;
      const names = (some: readonly Piece[]) => some.map(({ name }) => name);
      const way = {
        kind: 'pieces',
        into: names(into),
        out: names(out),
        factor: 2 ** -lost,
      } as const;
      best = { way, cost };
    }
  const { way } = best ?? {};
  return way?.kind === 'pieces' && way.into.length + way.out.length > 0 ? way : undefined;
}

const isCalled = (piece: Piece, name: string) =>
  piece.name.trim().toLowerCase() === name.trim().toLowerCase();

const stopsOf = (some: readonly Piece[]) => some.reduce((sum, { stops }) => sum + stops, 0);

/** Every choice of at most so many, the empty one first. */
function subsets<Item>(items: readonly Item[], most: number): readonly (readonly Item[])[] {
  return items.reduce<readonly (readonly Item[])[]>(
    (sets, item) => [
      ...sets,
      ...sets.flatMap((set) => (set.length < most ? [[...set, item]] : [])),
    ],
    [[]],
  );
}
