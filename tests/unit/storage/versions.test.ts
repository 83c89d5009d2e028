import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { openDatabase } from '../../../src/storage/database.ts';
import { keepVersion } from '../../../src/storage/keepversion.ts';
import { createPace } from '../../../src/storage/pace.ts';
import { hashOf, pack, unpack } from '../../../src/storage/packed.ts';
import { thinned, versionKinds, type KeptVersion } from '../../../src/storage/versions.ts';
import { runs } from '../../support/runs.ts';

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const now = new Date('2026-11-25T18:00:00Z');

let next = 0;
const version = (ago: number, kind: KeptVersion['kind'] = 'automatic'): KeptVersion => ({
  book: 'loft',
  id: `v${String(next++)}`,
  at: new Date(now.getTime() - ago).toISOString(),
  kind,
  name: '',
  size: 1,
  hash: '',
  changes: '',
  since: null,
});
const kept = (versions: readonly KeptVersion[], at = now) => {
  const away = new Set(thinned(versions, at));
  return versions.filter((one) => !away.has(one));
};

describe('versions thinned with age', () => {
  test('all of the last hour stay', () => {
    const versions = [5, 15, 25, 35, 45, 55].map((ago) => version(ago * minute));
    expect(thinned(versions, now)).toEqual([]);
  });

  test('of a day, one an hour: the last', () => {
    const early = version(3 * hour + 50 * minute);
    const late = version(3 * hour + 10 * minute);
    expect(kept([version(minute), late, early]).slice(1)).toEqual([late]);
  });

  test('of a month, one a day; after that, one a week', () => {
    const inTens = Array.from({ length: 90 * 24 * 6 }, (_, i) => version(i * 10 * minute));
    const ages = kept(inTens).map(({ at }) => (now.getTime() - Date.parse(at)) / day);
    expect(ages.filter((age) => age < 1 / 24)).toHaveLength(6);
    // 23 whole hours, and the parts of an hour at both ends.
    expect(ages.filter((age) => age >= 1 / 24 && age < 1).length).toBeGreaterThanOrEqual(23);
    expect(ages.filter((age) => age >= 1 / 24 && age < 1).length).toBeLessThanOrEqual(24);
    expect(ages.filter((age) => age >= 1 && age < 30).length).toBeGreaterThanOrEqual(29);
    expect(ages.filter((age) => age >= 1 && age < 30).length).toBeLessThanOrEqual(31);
    expect(ages.filter((age) => age >= 30).length).toBeGreaterThanOrEqual(8);
    expect(ages.filter((age) => age >= 30).length).toBeLessThanOrEqual(10);
  });

  test('a save point stays rather than a later automatic one', () => {
    const saved = version(3 * hour + 50 * minute, 'saved');
    const later = version(3 * hour + 10 * minute);
    expect(kept([version(minute), later, saved]).slice(1)).toEqual([saved]);
  });

  test('those with a name stay for good, and so does the newest', () => {
    const named = Array.from({ length: 5 }, (_, i) => version(400 * day + i * minute, 'named'));
    const newest = version(300 * day);
    expect(kept([...named, newest])).toEqual([...named, newest]);
  });

  test('thinned every ten minutes or once at the end, as many ages are covered', () => {
    const ages = fc.array(
      fc.record({
        ago: fc.integer({ min: 0, max: 80 * 24 * 60 }),
        kind: fc.constantFrom(...versionKinds),
      }),
      { maxLength: 60 },
    );
    const property = fc.property(ages, (drawn) => {
      const all = drawn.map(({ ago, kind }) => version(ago * minute, kind));
      const inTime = all.toSorted((a, b) => (a.at < b.at ? -1 : 1));
      let stepwise: KeptVersion[] = [];
      for (const one of inTime) stepwise = kept([...stepwise, one], new Date(one.at));
      const days = (versions: readonly KeptVersion[]) =>
        new Set(versions.map(({ at }) => Math.floor(Date.parse(at) / (7 * day))));
      expect(days(kept(stepwise))).toEqual(days(all));
      const once = kept(all);
      expect(kept(once)).toEqual(once);
      for (const { id, kind } of all)
        if (kind === 'named') expect(stepwise.map((each) => each.id)).toContain(id);
    });
    fc.assert(property, { numRuns: runs(100) });
  });
});

describe('keeping a version', () => {
  const fresh = () => openDatabase(`versions-${String(next++)}`);
  const say = (before: string | undefined, after: string) => `${before ?? 'nothing'} → ${after}`;
  const wanted = (text: string, minutes: number, more: object = {}) => ({
    book: 'loft',
    id: `k${String(next++)}`,
    kind: 'automatic' as const,
    name: '',
    at: new Date(now.getTime() + minutes * minute).toISOString(),
    text,
    ...more,
  });

  it('gives the text back, the newest first, each with what changed since the one before', async () => {
    const { versions } = fresh();
    await keepVersion(versions, wanted('f/2', 0), say);
    const second = await keepVersion(versions, wanted('f/2.8', 10), say);
    const list = await versions.list('loft');
    expect(list.map(({ changes }) => changes)).toEqual(['f/2 → f/2.8', 'nothing → f/2']);
    expect(await versions.text('loft', second?.id ?? '')).toBe('f/2.8');
    expect(await versions.list('shed')).toEqual([]);
  });

  it('keeps none where nothing has changed, but a name given to it stays', async () => {
    const { versions } = fresh();
    await keepVersion(versions, wanted('f/2', 0), say);
    expect(await keepVersion(versions, wanted('f/2', 10), say)).toBeUndefined();
    await keepVersion(versions, wanted('f/2', 20, { kind: 'named', name: 'As rigged' }), say);
    expect(await versions.list('loft')).toMatchObject([{ kind: 'named', name: 'As rigged' }]);
    expect(await keepVersion(versions, wanted('f/2', 30), say)).toBeUndefined();
    expect(await versions.list('loft')).toHaveLength(1);
  });

  it('says anew what changed when the one before has been thinned away', async () => {
    const { versions } = fresh();
    await keepVersion(versions, wanted('f/2', 1), say);
    await keepVersion(versions, wanted('f/2.8', 10), say);
    await keepVersion(versions, wanted('f/4', 20), say);
    await keepVersion(versions, wanted('f/5.6', 30 * 60), say);
    expect((await versions.list('loft')).map(({ changes }) => changes)).toEqual([
      'f/4 → f/5.6',
      'nothing → f/4',
    ]);
  });

  it('a book taken away for good takes its versions with it, and nobody else’s', async () => {
    const store = fresh();
    const pages = { snapshot: { text: '', remains: null }, journal: [] };
    for (const id of ['loft', 'loft2'])
      await store.begin({ id, title: id, changed: '', size: 1 }, pages);
    await keepVersion(store.versions, wanted('f/2', 0), say);
    await keepVersion(store.versions, wanted('f/2', 0, { book: 'loft2' }), say);
    await store.remove('loft');
    expect(await store.versions.list('loft')).toEqual([]);
    expect(await store.versions.list('loft2')).toHaveLength(1);
  });
});

test('a long text is packed to a fraction of its size and comes back as it was', async () => {
  const text = JSON.stringify(
    Array.from({ length: 5_000 }, (_, i) => ({ reading: `${i % 50} lx ⅔` })),
  );
  const packed = await pack(text);
  expect(packed.length).toBeLessThan(text.length / 10);
  expect(await unpack(packed)).toBe(text);
  expect(await unpack('as it is')).toBe('as it is');
  // FIPS 180-4, the example of one block.
  expect(await hashOf('abc')).toBe(
    'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  );
});

describe('the pace of automatic versions', () => {
  function desk() {
    let at = now.getTime();
    let waiting: { run: () => void; when: number } | undefined;
    const keptAt: number[] = [];
    const pace = createPace({
      now: () => new Date(at),
      last: now,
      keep: () => keptAt.push((at - now.getTime()) / minute),
      later(run, milliseconds) {
        waiting = { run, when: at + milliseconds };
        return () => (waiting = undefined);
      },
    });
    const until = (minutes: number) => {
      const end = now.getTime() + minutes * minute;
      while (waiting && waiting.when <= end) {
        const { run, when } = waiting;
        at = when;
        waiting = undefined;
        run();
      }
      at = end;
    };
    return { pace, until, keptAt };
  }

  test('one ten minutes after the last, however much is typed', () => {
    const { pace, until, keptAt } = desk();
    for (let at = 0; at <= 30; at++) {
      until(at);
      pace.worked();
    }
    expect(keptAt).toEqual([10, 20, 30]);
  });

  test('none while nothing is done, and at once when work goes on after a rest', () => {
    const { pace, until, keptAt } = desk();
    until(60);
    expect(keptAt).toEqual([]);
    pace.worked();
    until(61);
    expect(keptAt).toEqual([60]);
  });

  test('a save point begins the ten minutes anew', () => {
    const { pace, until, keptAt } = desk();
    pace.worked();
    until(8);
    pace.kept();
    pace.worked();
    until(17);
    expect(keptAt).toEqual([]);
    until(18);
    expect(keptAt).toEqual([18]);
  });
});
