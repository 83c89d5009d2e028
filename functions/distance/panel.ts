/**
 * Illuminance for each candela per square metre of a uniform Lambertian rectangle, on a receiver
 * parallel to it: ∬ cos²θ / r² dA in closed form, with the receiver `across` and `up` from the
 * middle of the face (configuration factor of a rectangle times π).
 */
export function panelFactor(
  width: number,
  height: number,
  distance: number,
  across = 0,
  up = 0,
): number {
  const sides = [across - width / 2, across + width / 2] as const;
  const ends = [up - height / 2, up + height / 2] as const;
  return (
    (edge(sides[1], ends, distance) -
      edge(sides[0], ends, distance) +
      edge(ends[1], sides, distance) -
      edge(ends[0], sides, distance)) /
    2
  );
}

/** One edge of the face, `offset` from the receiver's axis: the angle it spans times its slant. */
function edge(offset: number, [from, to]: readonly [number, number], distance: number): number {
  const slant = Math.hypot(offset, distance);
  // The difference of two arctangents in one, so that a far panel loses no digits.
  const span = Math.atan2((to - from) * slant, slant ** 2 + from * to);
  return (offset / slant) * span;
}

/**
 * Distance on the axis at which the factor is the one wanted, which must be less than π.
 * The largest disc inside the face gives less, the inverse square law promises more:
 * the answer lies between, and halving finds it to the last digit.
 */
export function panelDistance(width: number, height: number, factor: number): number {
  const inner = (Math.min(width, height) / 2) * Math.sqrt(Math.PI / factor - 1);
  let [near, far] = [inner, Math.sqrt((width * height) / factor)];
  for (let halvings = 0; halvings < 200; halvings++) {
    const middle = (near + far) / 2;
    if (middle <= near || middle >= far) break;
    if (panelFactor(width, height, middle) > factor) near = middle;
    else far = middle;
  }
  return (near + far) / 2;
}
