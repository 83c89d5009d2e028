/** Numbers that look random and are the same for the same seed (mulberry32). */
export class Random {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** 0 to 1, without 1. */
  unit(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let t = this.#state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number below `most`. */
  below(most: number): number {
    return Math.floor(this.unit() * most);
  }

  pick<T>(list: readonly T[]): T {
    const item = list[this.below(list.length)];
    if (item === undefined) throw new Error('nothing to pick from');
    return item;
  }

  chance(share: number): boolean {
    return this.unit() < share;
  }

  shuffled<T>(list: readonly T[]): T[] {
    const rest = [...list];
    return list.flatMap(() => rest.splice(this.below(rest.length), 1));
  }
}
