import type { Words } from './words.ts';

/**
 * Languages besides English by their tags, such as `de`. Each is a folder beside this, fetched when
 * it is spoken: `de: async () => (await import('./german.ts')).german`.
 */
export const others: Readonly<Record<string, () => Promise<Words>>> = {};
