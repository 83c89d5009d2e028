/** Whether two numbers agree to 1e-12 · max(1, |value|), or to the share given instead. */
export function near(value: number, expected: number, share = 1e-12): boolean {
  return Math.abs(value - expected) <= share * Math.max(1, Math.abs(value), Math.abs(expected));
}
