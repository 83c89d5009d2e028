import { hashOf } from './packed.ts';
import { thinned, versionKinds, type KeptVersion, type VersionKind } from './versions.ts';
import type { VersionStore } from './versionstore.ts';

export interface ToKeep {
  readonly book: string;
  /** The id that the version gets. */
  readonly id: string;
  readonly kind: VersionKind;
  readonly name: string;
  readonly at: string;
  /** The book’s file. */
  readonly text: string;
}

/** Says in words what changed between two files of a book; the earlier one may be missing. */
export type SayChanges = (before: string | undefined, after: string) => string;

/**
 * Keeps a version and thins the others. When nothing has changed since the last one, that is the
 * version, under the new name or reason if these say more; `undefined` if they do not.
 */
export async function keepVersion(
  store: VersionStore,
  { text, ...wanted }: ToKeep,
  say: SayChanges,
): Promise<KeptVersion | undefined> {
  const hash = await hashOf(text);
  const [newest] = await store.list(wanted.book);
  if (newest?.hash === hash && !(newest.kind === 'named' && wanted.kind === 'named')) {
    if (versionKinds.indexOf(wanted.kind) >= versionKinds.indexOf(newest.kind)) return undefined;
    const better = { ...newest, kind: wanted.kind, name: wanted.name, at: wanted.at };
    await store.describe([better]);
    return better;
  }
  const version = { ...wanted, size: text.length, hash, changes: '', since: null };
  await store.put(version, text);
  await thin(store, wanted.book, new Date(wanted.at));
  return redescribed(store, wanted.book, say).then((all) => all.find(({ id }) => id === wanted.id));
}

async function thin(store: VersionStore, book: string, now: Date): Promise<void> {
  const away = thinned(await store.list(book), now);
  if (away.length > 0)
    await store.remove(
      book,
      away.map(({ id }) => id),
    );
}

/** A version says what changed since the one before it, which may have become another. */
async function redescribed(
  store: VersionStore,
  book: string,
  say: SayChanges,
): Promise<readonly KeptVersion[]> {
  const versions = await store.list(book);
  const changed: KeptVersion[] = [];
  for (const [index, version] of versions.entries()) {
    const before = versions[index + 1];
    const since = before?.id ?? '';
    if (version.since === since) continue;
    const old = before && (await store.text(book, before.id));
    const now = await store.text(book, version.id);
    if (now !== undefined) changed.push({ ...version, since, changes: say(old, now) });
  }
  if (changed.length > 0) await store.describe(changed);
  return versions.map((version) => changed.find(({ id }) => id === version.id) ?? version);
}
