import type { Words } from '../words/words.ts';

/**
 * Languages besides English by their tags, such as `de`. Each is a folder of src/words, fetched when
 * it is spoken: `de: async () => (await import('../words/german.ts')).german`.
 */
export const languages: Readonly<Record<string, () => Promise<Words>>> = {};

/** The first language that a person asks for and the app speaks; English is spoken without one. */
export function languageFor<Known>(
  asked: readonly string[],
  known: Readonly<Record<string, Known>>,
): { readonly tag: string; readonly load: Known } | undefined {
  for (const wanted of asked) {
    const tag = wanted.split('-')[0]?.toLowerCase() ?? '';
    if (tag === 'en') return undefined;
    const load = Object.hasOwn(known, tag) ? known[tag] : undefined;
    if (load !== undefined) return { tag, load };
  }
  return undefined;
}
