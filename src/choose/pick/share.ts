/** Work that is a part of other work: its shares from 0 to 1 count as those from `from` to `to`. */
export function* part<Done>(
  work: Generator<number, Done>,
  from: number,
  to: number,
): Generator<number, Done> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}

/** Work done in one go. */
export function inOneGo<Done>(work: Generator<number, Done>): Done {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
