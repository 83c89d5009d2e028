import type { Id } from './types.ts';

const pattern = /^[A-Za-z0-9_-]{1,40}$/;

/** Ids are up to 40 letters, digits, `_` and `-`, so that they need no quoting anywhere. */
export function isId(text: string): text is Id {
  return pattern.test(text);
}
