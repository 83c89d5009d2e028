import type { UV } from '../colour/chromaticity.ts';
import { coldest, hottest } from '../colour/nearestOnLocus.ts';
import { locusPoint, type LocusPoint } from '../colour/planck.ts';
import type { Piece } from './swatches.ts';

/** A light by colour temperature and distance from the locus. */
export interface Tinted {
  readonly kelvin: number;
  readonly duv: number;
}

/**
 * A further piece goes on only where it brings the light nearer by more than this in u′, v′: one
 * step of the circles of CIE TN 001 (from memory), which is hardly seen.
 */
const worth = 0.0011;

/** As many mired look as far apart as so much Duv: what a piece mostly does is what it does more of. */
const [miredStep, duvStep] = [10, 0.003];

const shifts = ({ mired, duv }: Piece): boolean =>
  Math.abs(mired) / miredStep >= Math.abs(duv) / duvStep;

/** What a light comes to behind pieces: shifts in mired and in Duv add. */
export function behind({ kelvin, duv }: Tinted, pieces: readonly Piece[]): Tinted {
  const mired = pieces.reduce((sum, piece) => sum + piece.mired, 1e6 / kelvin);
  return { kelvin: 1e6 / mired, duv: pieces.reduce((sum, piece) => sum + piece.duv, duv) };
}

/**
 * The piece of a kit, or the two of which one mostly warms or cools and the other mostly adds green
 * or magenta, behind which a light comes nearest to a wanted one in CIE 1976 u′, v′. Empty where
 * none is worth it.
 */
export function nearestPieces(
  light: Tinted,
  wanted: Tinted,
  kit: readonly Piece[],
): readonly Piece[] {
  const goal = primeOf(wanted);
  const away = (pieces: readonly Piece[]): number => {
    const after = behind(light, pieces);
    if (!(after.kelvin >= coldest && after.kelvin <= hottest)) return Infinity;
    const { u, v } = primeOf(after);
    return Math.hypot(u - goal.u, v - goal.v);
  };
  const helps = helping(light, wanted);
  const tints = kit.filter((piece) => !shifts(piece));
  const singles = kit.map((piece) => [piece]);
  const pairs = kit.filter(shifts).flatMap((one) => tints.map((other) => [one, other]));
  let best: Candidate = { pieces: [], away: away([]) };
  for (const choices of [singles, pairs]) {
    const next = nearest(choices.filter(helps).map((pieces) => ({ pieces, away: away(pieces) })));
    if (next && next.away < best.away - worth) best = next;
  }
  return best.pieces;
}

/**
 * Whether each piece brings nearer what it is for: no magenta goes on a light that is not too green,
 * although far from the white along the locus even that can be the shorter way in the diagram.
 */
function helping(light: Tinted, wanted: Tinted): (pieces: readonly Piece[]) => boolean {
  const mired = 1e6 / light.kelvin - 1e6 / wanted.kelvin;
  return (pieces) => {
    const others = pieces.filter(shifts).reduce((sum, piece) => sum + piece.duv, 0);
    const duv = light.duv - wanted.duv + others;
    return pieces.every((piece) =>
      shifts(piece)
        ? Math.abs(mired + piece.mired) < Math.abs(mired)
        : Math.abs(duv + piece.duv) < Math.abs(duv),
    );
  };
}

interface Candidate {
  readonly pieces: readonly Piece[];
  readonly away: number;
}

export const lossOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { loss }) => sum + loss, 0);

/** Of two that come as near, the one that takes less. */
function nearest(candidates: readonly Candidate[]): Candidate | undefined {
  return candidates.toSorted((a, b) => a.away - b.away || lossOf(a.pieces) - lossOf(b.pieces))[0];
}

/** A point of the locus is a long sum, and a sheet asks for the same ones again and again. */
const kept = new Map<number, LocusPoint>();
const most = 1000;

function pointAt(kelvin: number): LocusPoint {
  const known = kept.get(kelvin);
  if (known) return known;
  if (kept.size >= most) kept.clear();
  const point = locusPoint(kelvin);
  kept.set(kelvin, point);
  return point;
}

/** u′, v′ of a tinted light. */
function primeOf({ kelvin, duv }: Tinted): UV {
  const { at, green } = pointAt(kelvin);
  return { u: at.u + duv * green.u, v: 1.5 * (at.v + duv * green.v) };
}
