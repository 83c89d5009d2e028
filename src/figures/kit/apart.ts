/** Something on a scale and how much room its label needs, middle on `at`. */
export interface Labelled {
  readonly at: number;
  readonly room: number;
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
