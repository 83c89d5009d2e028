import { offAt, type LitSet, type SetPoint } from './set.ts';
import { waysOf, type Way } from './ways.ts';

/** A way with what it leaves at the light’s worst point, in stops. */
export interface Advised {
  readonly way: Way;
  readonly leaves: number;
}

/** What to do with one light: nothing, or any one of the ways. */
export interface LightAdvice {
  readonly light: number;
  /** What its own light is to be multiplied by; 1 leaves it alone. */
  readonly factor: number;
  readonly ways: readonly Advised[];
}

interface Advice {
  /** In the order in which to set them: the light of the key first. */
  readonly lights: readonly LightAdvice[];
  /** How far off each point is once all of it is done. */
  readonly left: readonly number[];
}

/** Rounds until lights that spill on one another’s points have settled. */
const mostRounds = 200;
const grace = 1e-9;

/**
 * What to set so that every point comes to what is wanted: the light of the key first, then the
 * others, each by its own share of its points. A light whose points are all within tolerance is left
 * alone. Each light is changed in one way, so the best of its ways says how far it can go.
 */
export function advise(set: LitSet): Advice {
  const factors = set.lights.map(() => 1);
  const order = [...new Set(set.points.map(({ light }) => light))];
  for (let round = 0; round < mostRounds; round += 1) {
    let moved = false;
    for (const light of order) {
      const own = set.points.filter((point) => point.light === light);
      const isOff = own.some((point) => Math.abs(offAt(point, factors)) > set.tolerance + grace);
      if (!isOff) continue;
      const next = within(set, light, nearest(own, light, factors));
      if (Math.abs(Math.log2(next / (factors[light] ?? 1))) > 1e-6) moved = true;
      factors[light] = next;
    }
    if (!moved) break;
  }
  return {
    lights: order.map((light) => {
      const factor = factors[light] ?? 1;
      const points = set.points.filter((point) => point.light === light);
      const ways =
        factor === 1
          ? []
          : waysFor(set, light, points, factors).toSorted(
              (one, other) => Math.abs(one.leaves) - Math.abs(other.leaves),
            );
      return { light, factor, ways };
    }),
    left: set.points.map((point) => offAt(point, factors)),
  };
}

function waysFor(
  { lights, kit }: LitSet,
  light: number,
  points: readonly SetPoint[],
  factors: readonly number[],
): readonly Advised[] {
  const one = lights[light];
  if (!one) return [];
  return waysOf(one, kit, factors[light] ?? 1).map((way) => {
    const so = factors.with(light, way.factor);
    const offs = points.map((point) => offAt(point, so));
    return { way, leaves: offs.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0) };
  });
}

/** The factor that the best way of a light comes to; any where nothing is known of the light. */
function within({ lights, kit }: LitSet, light: number, factor: number): number {
  const one = lights[light];
  const reached = one ? waysOf(one, kit, factor).map((way) => way.factor) : [];
  if (one && one.distance === undefined && one.output === undefined) return factor;
  const off = (reach: number) =>
    Math.abs(Math.log2(Math.max(reach, 1e-9) / Math.max(factor, 1e-9)));
  return reached.reduce((best, reach) => (off(reach) < off(best) ? reach : best), 1);
}

/** Where the worst of a light’s points is nearest to what is wanted: each goes up with the light. */
function nearest(points: readonly SetPoint[], light: number, factors: readonly number[]): number {
  const [first] = points;
  if (points.length === 1 && first) {
    const own = first.gives[light] ?? 0;
    const others = first.gives.reduce(
      (sum, gives, at) => (at === light ? sum : sum + gives * (factors[at] ?? 1)),
      first.rest,
    );
    return own > 0 ? Math.max(0, (first.wanted - others) / own) : 1;
  }
  const worst = (stops: number) =>
    Math.max(...points.map((point) => Math.abs(offAt(point, factors.with(light, 2 ** stops)))));
  let [low, high] = [-20, 20];
  while (high - low > 1e-9) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (worst(a) <= worst(b)) high = b;
    else low = a;
  }
  return 2 ** ((low + high) / 2);
}
