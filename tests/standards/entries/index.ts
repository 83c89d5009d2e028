import { colour } from './colour.ts';
import { exposure } from './exposure.ts';
import { light } from './light.ts';
import { others } from './others.ts';
import { plain } from './plain.ts';
import type { Accepted } from './row.ts';
import { space } from './space.ts';
import { walks } from './walks.ts';

/** Entries as people write them, each with what it must mean. */
export const accepted: readonly Accepted[] = [
  ...light,
  ...space,
  ...exposure,
  ...colour,
  ...others,
  ...plain,
  ...walks,
];

export { refused } from './refused.ts';
export type { Accepted } from './row.ts';
