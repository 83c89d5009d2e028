/** CIE 1976 L*, a*, b*. */
export interface Lab {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const cosine = (degrees: number) => Math.cos(radians(degrees));

/** Degrees from 0 to 360; 0 for grey. */
function hue(a: number, b: number): number {
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return degrees < 0 ? degrees + 360 : degrees;
}

/** CIEDE2000 colour difference with all three weights 1: ISO/CIE 11664-6. */
export function ciede2000(one: Lab, other: Lab): number {
  const chroma = (Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2;
  const stretch = 1 + seventh(chroma) / 2;
  const [a1, a2] = [one.a * stretch, other.a * stretch];
  const [C1, C2] = [Math.hypot(a1, one.b), Math.hypot(a2, other.b)];
  const [h1, h2] = [hue(a1, one.b), hue(a2, other.b)];
  const grey = C1 * C2 === 0;

  const turn = wrapped(h2 - h1);
  const dL = other.L - one.L;
  const dC = C2 - C1;
  const dH = grey ? 0 : 2 * Math.sqrt(C1 * C2) * Math.sin(radians(turn / 2));

  const L = (one.L + other.L) / 2;
  const C = (C1 + C2) / 2;
  const h = grey ? h1 + h2 : middle(h1, h2);
  const T =
    1 -
    0.17 * cosine(h - 30) +
    0.24 * cosine(2 * h) +
    0.32 * cosine(3 * h + 6) -
    0.2 * cosine(4 * h - 63);
  const l = dL / (1 + (0.015 * (L - 50) ** 2) / Math.sqrt(20 + (L - 50) ** 2));
  const c = dC / (1 + 0.045 * C);
  const t = dH / (1 + 0.015 * C * T);
  const blue = 30 * Math.exp(-(((h - 275) / 25) ** 2));
  const rotation = -2 * (1 - seventh(C)) * Math.sin(radians(2 * blue));
  return Math.sqrt(Math.max(0, l ** 2 + c ** 2 + t ** 2 + rotation * c * t));
}

/** One where there is no chroma, towards none where there is much. */
function seventh(chroma: number): number {
  return 1 - Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7));
}

function wrapped(turn: number): number {
  if (turn > 180) return turn - 360;
  return turn < -180 ? turn + 360 : turn;
}

function middle(one: number, other: number): number {
  const sum = one + other;
  if (Math.abs(one - other) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}
