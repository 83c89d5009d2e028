import { counts } from './missing.ts';
import type { Package } from './package.ts';
import type { Rig } from './rigs.ts';

/** Where a rig stands: as its other rows say, as its own words say, or in the one place there is. */
export function placeOf(
  { needs, places }: Package,
  rig: Rig,
): Package['places'][number] | undefined {
  const named = (name: string | undefined) => places.find((place) => place.name === name);
  const told = places.filter(({ name }) => rig.told.includes(name.toLowerCase()));
  const only = (all: Package['places']) => (all.length === 1 ? all[0] : undefined);
  return named(needs.list.find((need) => counts(need, rig))?.place) ?? only(told) ?? only(places);
}
