/** Why a version was kept; what says most comes first. */
export const versionKinds = ['named', 'saved', 'restored', 'automatic'] as const;
/**
 * `named` by its planner, `saved` to a file, `restored`: what stood there before another version was
 * put in its place, `automatic` after ten minutes of work.
 */
export type VersionKind = (typeof versionKinds)[number];

/** A state of a book that is kept beside it, as the list of versions shows it. */
export interface KeptVersion {
  readonly book: string;
  readonly id: string;
  /** When it was kept, as an ISO 8601 instant. */
  readonly at: string;
  readonly kind: VersionKind;
  /** What its planner calls it; empty for none. */
  readonly name: string;
  /** Characters of the book’s file. */
  readonly size: number;
  /** Of the book’s file: two versions with the same hash are the same book. */
  readonly hash: string;
  /** What changed since the version before, in words, and which version that was. */
  readonly changes: string;
  readonly since: string | null;
}

const hour = 60 * 60 * 1_000;
const day = 24 * hour;

/**
 * How versions are thinned: everything of the last hour; then, of each hour for a day, of each day
 * for thirty days, and of each week after that, the one that says most, the last of those. Named
 * versions stay for good, and so does the newest. Days and weeks are counted from midnight UTC.
 */
const spans = [
  { until: hour, of: 0 },
  { until: day, of: hour },
  { until: 30 * day, of: day },
  { until: Infinity, of: 7 * day },
] as const;

/** The versions of one book that need not be kept any longer. */
export function thinned(versions: readonly KeptVersion[], now: Date): readonly KeptVersion[] {
  const newestFirst = versions.toSorted((a, b) => (a.at < b.at ? 1 : -1));
  const best = new Map<string, KeptVersion>();
  for (const version of newestFirst) {
    const slot = slotOf(version, now);
    const other = best.get(slot);
    if (!other || weight(version) < weight(other)) best.set(slot, version);
  }
  const stays = new Set([newestFirst[0], ...best.values()]);
  return newestFirst.filter((version) => version.kind !== 'named' && !stays.has(version));
}

const weight = ({ kind }: KeptVersion): number => versionKinds.indexOf(kind);

function slotOf({ at, id }: KeptVersion, now: Date): string {
  const time = Date.parse(at);
  const age = now.getTime() - time;
  const of = spans.find(({ until }) => age < until)?.of ?? 0;
  return of === 0 ? id : `${String(of)} ${String(Math.floor(time / of))}`;
}
