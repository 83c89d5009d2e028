type Span = readonly [from: number, to: number];

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
  const sides: Span = [across - width / 2, across + width / 2];
  const ends: Span = [up - height / 2, up + height / 2];
  return (edges(sides, ends, distance) + edges(ends, sides, distance)) / 2;
}

/**
 * x₂/s₂ · A(x₂) − x₁/s₁ · A(x₁) with s = √(x² + d²) and A(x) = atan(y₂/s) − atan(y₁/s): what the
 * two edges at x₁ and x₂ give. Both terms nearly cancel far aside, so the difference is taken
 * apart into differences that lose no digits.
 */
function edges([x1, x2]: Span, [y1, y2]: Span, distance: number): number {
  const [s1, s2] = [Math.hypot(x1, distance), Math.hypot(x2, distance)];
  const [length, product] = [y2 - y1, y1 * y2];
  const spanned = (s: number) => Math.atan2(length * s, s ** 2 + product);
  const spannedMore = Math.atan2(
    (length * ((x2 - x1) * (x2 + x1)) * (product - s1 * s2)) / (s1 + s2),
    (s1 ** 2 + product) * (s2 ** 2 + product) + length ** 2 * s1 * s2,
  );
  const [lean1, lean2] = [Math.atan(x1 / distance), Math.atan(x2 / distance)];
  const turned = Math.atan2((x2 - x1) * distance, distance ** 2 + x1 * x2);
  const leaningMore = 2 * Math.cos((lean1 + lean2) / 2) * Math.sin(turned / 2);
  return (leaningMore * (spanned(s1) + spanned(s2)) + (x1 / s1 + x2 / s2) * spannedMore) / 2;
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
