import type { Parameter } from '../define.ts';
import { above, type Domain } from '../domains.ts';

/** Which engraved scale is meant. */
export const parts = {
  name: 'parts',
  quantity: 'number',
  domain: {
    says: '1, 2 or 3',
    allows: (value) => value === 1 || value === 2 || value === 3,
    samples: [3, 3],
  },
} as const satisfies Omit<Parameter, 'help'>;

/** An f-number that can be written: no lens or meter goes past f/1024. */
export const writable: Domain = { ...above(0, 1024), needsLight: true, samples: [0.7, 128] };
