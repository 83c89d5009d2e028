/** Something on a scale and how much room its label needs, middle on `at`. */
export interface Labelled {
  readonly at: number;
  readonly room: number;
}

/** As `thatFit`, at even steps from the one at `count` 0 where some step lets them all fit: a scale skips none here and two there. */
export function evenly<T extends Labelled & { readonly count: number }>(
  labels: readonly T[],
  gap: number,
): readonly T[] {
  for (let step = 1; step <= 4; step += 1) {
    const every = labels.filter(({ count }) => count % step === 0);
    if (every.length > 2 && thatFit(every, gap).length === every.length) return every;
  }
  return thatFit(labels, gap);
}

/** Those labels that fit beside one another, the earlier in the list the more wanted. */
export function thatFit<T extends Labelled>(labels: readonly T[], gap: number): readonly T[] {
  const kept: T[] = [];
  for (const one of labels) {
    const free = kept.every(
      (other) => Math.abs(other.at - one.at) >= (other.room + one.room) / 2 + gap,
    );
    if (free) kept.push(one);
  }
  return kept;
}
