import { others } from './others.ts';
import { speak } from './words.ts';

/** The first language that a person asks for and we speak; English is spoken without one. */
export function languageFor<Known>(
  asked: readonly string[],
  known: Readonly<Record<string, Known>>,
): { readonly tag: string; readonly load: Known } | undefined {
  for (const wanted of asked) {
    const tag = wanted.split(/[-_.]/)[0]?.toLowerCase() ?? '';
    if (tag === 'en') return undefined;
    const load = Object.hasOwn(known, tag) ? known[tag] : undefined;
    if (load !== undefined) return { tag, load };
  }
  return undefined;
}

/** Speaks it from now on, and says which: modules read their words as they load, so this comes first. */
export async function speakFirstOf(asked: readonly string[]): Promise<string> {
  const language = languageFor(asked, others);
  if (!language) return 'en';
  speak(await language.load());
  return language.tag;
}
