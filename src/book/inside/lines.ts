import type { Axis, Id, LineProperties } from '../types.ts';

/**
 * The rows or columns of a sheet: one list in order, in which deleted lines stay where they were,
 * marked gone, so that undo and the corners of ranges find their place again.
 */
export class Lines implements Axis {
  #entries: Id[];
  readonly #gone = new Set<Id>();
  readonly #properties = new Map<Id, LineProperties>();
  #living: Id[] | undefined;
  /** Living lines: their index. Gone ones: -1 minus the number of living lines before them. */
  #positions: Map<Id, number> | undefined;

  constructor(ids: readonly Id[] = []) {
    this.#entries = [...ids];
  }

  get ids(): readonly Id[] {
    return this.#inOrder();
  }

  get length(): number {
    return this.#entries.length - this.#gone.size;
  }

  idAt(index: number): Id | undefined {
    return this.#inOrder()[index];
  }

  indexOf(id: Id): number {
    return Math.max(-1, this.#positionOf(id));
  }

  /** See `Layout.nearest`; -1 for an unknown line. */
  nearest(id: Id, end: 'from' | 'to'): number {
    const position = this.#positionOf(id);
    if (position >= 0 || position === unknown) return Math.max(-1, position);
    const before = -1 - position;
    return end === 'from' ? before : before - 1;
  }

  properties(id: Id): LineProperties | undefined {
    return this.#properties.get(id);
  }

  /** Known, living or gone. */
  knows(id: Id): boolean {
    return this.#positionOf(id) !== unknown;
  }

  isGone(id: Id): boolean {
    return this.#gone.has(id);
  }

  get anyGone(): boolean {
    return this.#gone.size > 0;
  }

  /** The line in the list, living or gone, right before this one; `null` before the first. */
  before(id: Id): Id | null {
    return this.#entries[this.#entries.indexOf(id) - 1] ?? null;
  }

  /** The last line in the list, living or gone. */
  get last(): Id | null {
    return this.#entries.at(-1) ?? null;
  }

  /** Every line, living or gone, in order. */
  get entries(): readonly Id[] {
    return this.#entries;
  }

  setProperties(id: Id, properties: LineProperties | null): void {
    if (properties) this.#properties.set(id, properties);
    else this.#properties.delete(id);
  }

  insert(ids: readonly Id[], after: Id | null): void {
    if (after === this.last) this.#append(ids);
    else {
      const at = after === null ? 0 : this.#entries.indexOf(after) + 1;
      this.#entries = [...this.#entries.slice(0, at), ...ids, ...this.#entries.slice(at)];
      this.#forget();
    }
  }

  /** Lines are mostly added at the end, while someone types: that keeps the index. */
  #append(ids: readonly Id[]): void {
    const count = this.length;
    const shared = this.#living === this.#entries;
    ids.forEach((id, i) => {
      this.#positions?.set(id, count + i);
      this.#entries.push(id);
      if (!shared) this.#living?.push(id);
    });
  }

  drop(ids: readonly Id[]): void {
    const dropped = new Set(ids);
    const tail = this.#entries.slice(-ids.length).every((id) => dropped.has(id));
    if (tail && !this.anyGone) {
      this.#entries.length -= ids.length;
      if (this.#living !== this.#entries) this.#living = undefined;
      for (const id of ids) this.#positions?.delete(id);
    } else {
      this.#entries = this.#entries.filter((id) => !dropped.has(id));
      this.#forget();
    }
    for (const id of ids) this.#properties.delete(id);
  }

  remove(ids: readonly Id[]): void {
    for (const id of ids) this.#gone.add(id);
    this.#forget();
  }

  revive(ids: readonly Id[]): void {
    for (const id of ids) this.#gone.delete(id);
    this.#forget();
  }

  /** Puts `ids[i]` right after `after[i]`, one after the other. */
  move(ids: readonly Id[], after: readonly (Id | null)[]): void {
    const moved = new Set(ids);
    const next = new Map<Id | null, Id[]>();
    ids.forEach((id, i) => {
      const anchor = after[i] ?? null;
      next.set(anchor, [id, ...(next.get(anchor) ?? [])]);
    });
    const order: Id[] = [];
    const waiting: Id[] = [];
    const place = (id: Id | null) => {
      waiting.push(...(next.get(id) ?? []).toReversed());
      for (let follower = waiting.pop(); follower !== undefined; follower = waiting.pop()) {
        order.push(follower);
        waiting.push(...(next.get(follower) ?? []).toReversed());
      }
    };
    place(null);
    for (const id of this.#entries) {
      if (moved.has(id)) continue;
      order.push(id);
      place(id);
    }
    this.#entries = order;
    this.#forget();
  }

  #forget(): void {
    this.#living = undefined;
    this.#positions = undefined;
  }

  #inOrder(): Id[] {
    this.#living ??= this.anyGone
      ? this.#entries.filter((id) => !this.#gone.has(id))
      : this.#entries;
    return this.#living;
  }

  #positionOf(id: Id): number {
    if (!this.#positions) {
      const positions = new Map<Id, number>();
      let count = 0;
      for (const entry of this.#entries)
        positions.set(entry, this.#gone.has(entry) ? -1 - count : count++);
      this.#positions = positions;
    }
    return this.#positions.get(id) ?? unknown;
  }
}

const unknown = Number.NEGATIVE_INFINITY;
