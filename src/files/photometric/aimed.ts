/** A floodlight (B) or a headlamp (A) is measured in angles about two axes, level and upright. */
export type Axes = 'A' | 'B';

const degrees = (radians: number) => (radians * 180) / Math.PI;
const radians = (angle: number) => (angle * Math.PI) / 180;
const step = 0.5;

interface Turn {
  readonly planes: Float64Array;
  readonly gammas: Float64Array;
  readonly candela: Float64Array;
}

/**
 * Intensities by vertical and horizontal angle as planes about the aim line. Type B turns about a
 * level axis: the vertical angle picks a plane through it, the horizontal angle lies in that plane.
 * Type A turns about an upright axis, the other way about (CIE 121, from memory). Positive is up and
 * right as seen from behind. Planes stand every degree, angles in them every half degree and at all
 * that the file states, so that nothing is lost along the two axes. Beyond what is stated it is dark.
 */
export function aimedTurn(
  axes: Axes,
  verticals: readonly number[],
  horizontals: readonly number[],
  rows: readonly Float64Array[],
): Turn {
  const look = lookUp(mirrored(verticals), mirrored(horizontals), rows);
  const stated = [...verticals, ...horizontals].map(Math.abs);
  const end = reach(axes, verticals, horizontals);
  const even = Array.from({ length: Math.floor(end / step) + 1 }, (_, index) => index * step);
  const gammas = Float64Array.from(
    [...new Set([...even, ...stated.filter((angle) => angle <= end), end])].sort((a, b) => a - b),
  );
  const planes = Float64Array.from({ length: 361 }, (_, index) => index);
  const candela = new Float64Array(planes.length * gammas.length);
  planes.forEach((c, plane) => {
    gammas.forEach((gamma, index) => {
      const { vertical, horizontal } = anglesOf(axes, gamma, c);
      candela[plane * gammas.length + index] = look(vertical, horizontal);
    });
  });
  return { planes, gammas, candela };
}

function anglesOf(axes: Axes, gamma: number, c: number) {
  // Whole quarters exactly, so that a direction on an axis stays on it.
  const sine = exactSine(gamma);
  const [x, y, z] = [sine * exactSine(c + 90), sine * exactSine(c), exactSine(gamma + 90)];
  return axes === 'B'
    ? { vertical: degrees(Math.atan2(y, z)), horizontal: degrees(Math.atan2(x, Math.hypot(y, z))) }
    : { vertical: degrees(Math.atan2(y, Math.hypot(x, z))), horizontal: degrees(Math.atan2(x, z)) };
}

function exactSine(angle: number): number {
  const turned = ((angle % 360) + 360) % 360;
  return turned % 180 === 0 ? 0 : Math.sin(radians(turned));
}

/** How far from the aim line the stated angles go. */
function reach(axes: Axes, verticals: readonly number[], horizontals: readonly number[]): number {
  const [v, h] = [verticals, horizontals].map((angles) => Math.max(...angles.map(Math.abs)));
  const [turn, within] = axes === 'B' ? [v!, h!] : [h!, v!];
  if (turn > 90) return 180;
  const corner = degrees(
    Math.acos(Math.cos(radians(turn)) * Math.cos(radians(Math.min(90, within)))),
  );
  return Math.max(turn, Math.min(90, within), corner);
}

interface Angles {
  readonly stated: readonly number[];
  /** Stated from 0 on: the other side is the same. */
  readonly mirrored: boolean;
}

function mirrored(stated: readonly number[]): Angles {
  return { stated, mirrored: stated[0] === 0 };
}

function lookUp(verticals: Angles, horizontals: Angles, rows: readonly Float64Array[]) {
  return (vertical: number, horizontal: number): number => {
    const down = placeOf(verticals, vertical);
    const across = placeOf(horizontals, horizontal);
    if (!down || !across) return 0;
    const at = (row: number) => {
      const values = rows[row]!;
      const here = values[down.index]!;
      return here + down.share * ((values[down.index + 1] ?? here) - here);
    };
    const here = at(across.index);
    return across.share === 0 ? here : here + across.share * (at(across.index + 1) - here);
  };
}

const grace = 1e-9;

function placeOf({ stated, mirrored: both }: Angles, given: number) {
  const angle = both ? Math.abs(given) : given;
  const last = stated.length - 1;
  if (stated.length === 1) return { index: 0, share: 0 };
  if (angle < stated[0]! - grace || angle > stated[last]! + grace) return undefined;
  const found = stated.findLastIndex((one) => one <= angle);
  const index = Math.max(0, Math.min(last - 1, found));
  const share = (angle - stated[index]!) / (stated[index + 1]! - stated[index]!);
  return { index, share: Math.max(0, Math.min(1, share)) };
}
