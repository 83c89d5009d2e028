export type Place = readonly [x: number, y: number, z: number];

/** A lamp as its shape is stated where it was invented: candela at γ and C, before its aim. */
export interface Lamp {
  readonly at: Place;
  readonly aim: Place;
  readonly share: number;
  readonly candela: (gamma: number, c: number) => number;
}

/** A matt rectangle that hangs level, as patches. */
export interface Lit {
  readonly middle: Place;
  readonly normal: Place;
  readonly width: number;
  readonly height: number;
}

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const unit = (a: Place): Place => {
  const size = Math.sqrt(dot(a, a));
  return [a[0] / size, a[1] / size, a[2] / size];
};
const degrees = 180 / Math.PI;

/** Right and up of something that looks along a direction. */
function sides([x, y, z]: Place): readonly [right: Place, up: Place] {
  const right = unit([y, -x, 0]);
  return [right, [right[1] * z, -right[0] * z, right[0] * y - right[1] * x]];
}

export const looking = (azimuth: number, tilt = 0): Place => [
  Math.cos(tilt / degrees) * Math.sin(azimuth / degrees),
  Math.cos(tilt / degrees) * Math.cos(azimuth / degrees),
  Math.sin(tilt / degrees),
];

/** How much of light from so far aside a receptor counts. */
export type Weight = (cosine: number) => number;
export const flat: Weight = (cosine) => Math.max(0, cosine);
export const dome: Weight = (cosine) => (1 + cosine) / 2;

/** Lux of a lamp at a point: inverse square and the receptor’s weight. */
export function direct(lamp: Lamp, at: Place, look: Place, weight: Weight): number {
  const to = minus(at, lamp.at);
  const squared = dot(to, to);
  const ahead = unit(minus(lamp.aim, lamp.at));
  const [right, up] = sides(ahead);
  const way = unit(to);
  const gamma = Math.acos(Math.min(1, dot(way, ahead))) * degrees;
  const c = Math.atan2(dot(way, up), dot(way, right)) * degrees;
  return (lamp.share * lamp.candela(gamma, c) * weight(-dot(way, look))) / squared;
}

function* patches({ middle, normal, width, height }: Lit, count: number): Generator<Place> {
  const [right, up] = sides(normal);
  for (let row = 0; row < count; row += 1) {
    for (let column = 0; column < count; column += 1) {
      const across = width * ((column + 0.5) / count - 0.5);
      const high = height * ((row + 0.5) / count - 0.5);
      yield [
        middle[0] + across * right[0] + high * up[0],
        middle[1] + across * right[1] + high * up[1],
        middle[2] + across * right[2] + high * up[2],
      ];
    }
  }
}

/** cd/m² of a sheet that a lamp lights from the side `from`: the mean of 100 × 100 patches. */
export function luminanceOf(sheet: Lit, lamp: Lamp, from: Place, kept: number): number {
  let sum = 0;
  for (const at of patches(sheet, 100)) sum += direct(lamp, at, from, flat) / 100 ** 2;
  return (kept * sum) / Math.PI;
}

/** Lux of a matt sheet at a point: 100 × 100 patches. */
export function fromSheet(sheet: Lit, luminance: number, at: Place, look: Place, weight: Weight) {
  const area = (sheet.width * sheet.height) / 100 ** 2;
  let lux = 0;
  for (const patch of patches(sheet, 100)) {
    const to = minus(at, patch);
    const squared = dot(to, to);
    const way = unit(to);
    lux +=
      (luminance * area * Math.max(0, dot(way, sheet.normal)) * weight(-dot(way, look))) / squared;
  }
  return lux;
}

export const towards = (from: Place, to: Place): Place => unit(minus(to, from));
export const along = (from: Place, to: Place, metres: number): Place => {
  const way = towards(from, to);
  return [from[0] + metres * way[0], from[1] + metres * way[1], from[2] + metres * way[2]];
};
