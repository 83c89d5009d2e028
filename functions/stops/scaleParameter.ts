import type { Parameter } from '../define.ts';
import { above, oneOf, type Domain } from '../domains.ts';

/** Which engraved scale is meant. */
export const parts = {
  name: 'parts',
  quantity: 'number',
  domain: oneOf(1, 2, 3),
} as const satisfies Omit<Parameter, 'help'>;

/** An f-number that can be written: no lens or meter goes past f/1024. */
export const writable: Domain = { ...above(0, 1024), needsLight: true, samples: [0.7, 128] };
