/** Complex numbers stand for the colour plane: hue is their angle, chroma their length. */
interface Plane {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

function lab([X = 0, Y = 0, Z = 0]: readonly number[]): Plane {
  const root = (share: number) =>
    share > 216 / 24_389 ? share ** (1 / 3) : (841 / 108) * share + 16 / 116;
  return { L: 116 * root(Y) - 16, a: 500 * (root(X) - root(Y)), b: 200 * (root(Y) - root(Z)) };
}

/**
 * CIEDE2000 of two colours given by X, Y, Z over the white’s: with the difference of hue by the
 * chords of the plane, 2(C₁C₂ − a₁a₂ − b₁b₂), and the mean hue by the sum of the two directions.
 */
export function colourDifference(first: readonly number[], second: readonly number[]): number {
  const [one, other] = [lab(first), lab(second)];
  const about = (Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2;
  const root = (C: number) => Math.sqrt(1 / (1 + (25 / C) ** 7));
  const G = (1 - (about > 0 ? root(about) : 0)) / 2;
  const [a1, a2] = [one.a * (1 + G), other.a * (1 + G)];
  const [C1, C2] = [Math.hypot(a1, one.b), Math.hypot(a2, other.b)];
  const side = Math.sign(a1 * other.b - a2 * one.b);
  const dH = side * Math.sqrt(Math.max(0, 2 * (C1 * C2 - a1 * a2 - one.b * other.b)));
  const [dL, dC] = [other.L - one.L, C2 - C1];
  const unit = (a: number, b: number, C: number) => (C > 0 ? [a / C, b / C] : [0, 0]);
  const [x1 = 0, y1 = 0] = unit(a1, one.b, C1);
  const [x2 = 0, y2 = 0] = unit(a2, other.b, C2);
  const h = Math.atan2(y1 + y2, x1 + x2);
  const turn = (degrees: number) => (degrees * Math.PI) / 180;
  const T =
    1 -
    0.17 * Math.cos(h - turn(30)) +
    0.24 * Math.cos(2 * h) +
    0.32 * Math.cos(3 * h + turn(6)) -
    0.2 * Math.cos(4 * h - turn(63));
  const [L, C] = [(one.L + other.L) / 2, (C1 + C2) / 2];
  const l = dL / (1 + (0.015 * (L - 50) ** 2) / Math.sqrt(20 + (L - 50) ** 2));
  const c = dC / (1 + 0.045 * C);
  const t = dH / (1 + 0.015 * C * T);
  const degrees = ((h * 180) / Math.PI + 360) % 360;
  const blue = turn(60 * Math.exp(-(((degrees - 275) / 25) ** 2)));
  const twist = C > 0 ? -2 * root(C) * Math.sin(blue) : 0;
  return Math.sqrt(Math.max(0, l * l + c * c + t * t + twist * c * t));
}
