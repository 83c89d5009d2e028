import type { Base } from '../book/form/remains.ts';

/** A book as the list of kept books shows it. */
export interface KeptBook {
  readonly id: string;
  readonly title: string;
  /** When it last changed, as an ISO 8601 instant. */
  readonly changed: string;
  /** Characters of the snapshot and the journal together. */
  readonly size: number;
  /** When it was put in the bin, as an ISO 8601 instant. */
  readonly binned?: string;
}

export type Snapshot = Base;
