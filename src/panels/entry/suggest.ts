import type { AnyDefinition } from '../../../functions/define.ts';

export interface Suggestion {
  readonly kind: 'function' | 'name';
  readonly name: string;
  readonly summary: string;
}

/** What the caret stands at the end of: the words since the last sign, and where they begin. */
export interface Stem {
  readonly words: string;
  readonly from: number;
}

/**
 * People search by what they want to know ("how far"), so a stem may hold blanks.
 * Nothing is suggested inside a text or where a reference is being typed.
 */
export function stemAt(text: string, caret: number): Stem | undefined {
  const before = text.slice(0, caret);
  if (!before.startsWith('=') || (before.split('"').length - 1) % 2 === 1) return undefined;
  const words = /[\p{L}_][\p{L}\p{N}_. ]*$/u.exec(before)?.[0];
  if (!words || (/^[a-z]{1,3}\d*$/i.test(words) && /\d/.test(words))) return undefined;
  return { words, from: caret - words.length };
}

const split = (text: string) =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/** How well a definition answers the words; 0 if it does not. */
function score(definition: AnyDefinition, stem: string): number {
  const name = definition.name.toLowerCase();
  const wanted = split(stem);
  const last = wanted.at(-1) ?? '';
  if (wanted.length === 1 && name.startsWith(last)) return 100 - name.length;
  const phrase = wanted.join(' ');
  const asked = definition.search.map((words) => words.toLowerCase());
  if (asked.includes(phrase)) return 70;
  if (asked.some((words) => words.includes(phrase))) return 60;
  const known = split(
    [
      name,
      ...definition.search,
      definition.summary,
      ...definition.parameters.map(({ name }) => name),
    ].join(' '),
  );
  const found = wanted.filter((word) => known.some((one) => one.startsWith(word)));
  if (found.length === wanted.length) return wanted.length === 1 && last.length < 3 ? 0 : 30;
  return wanted.length === 1 && last.length > 2 && name.includes(last) ? 20 : 0;
}

/** The functions that answer the words, best first. */
export function functionsFor(
  words: string,
  functions: readonly AnyDefinition[],
): readonly AnyDefinition[] {
  return functions
    .map((definition) => ({ definition, points: score(definition, words) }))
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points || (a.definition.name < b.definition.name ? -1 : 1))
    .map(({ definition }) => definition);
}

/** The best few, best first. */
export function suggest(
  stem: string,
  functions: readonly AnyDefinition[],
  names: readonly { readonly name: string; readonly meaning: string }[],
  most = 8,
): readonly Suggestion[] {
  const begins = stem.trim().toLowerCase();
  if (begins === '') return [];
  const named = names
    .filter(({ name }) => name.toLowerCase().startsWith(begins))
    .map(({ name, meaning }) => ({ kind: 'name' as const, name, summary: meaning }));
  const called = functionsFor(begins, functions).map(({ name, summary }) => ({
    kind: 'function' as const,
    name,
    summary,
  }));
  return [...named, ...called].slice(0, most);
}

/** The text with the suggestion in place of its stem, and where the caret goes. */
export function accept(
  text: string,
  caret: number,
  stem: Stem,
  { kind, name }: Suggestion,
): { readonly text: string; readonly caret: number } {
  const after = text.slice(caret);
  const written = kind === 'function' && !after.trimStart().startsWith('(') ? `${name}(` : name;
  return {
    text: text.slice(0, stem.from) + written + after,
    caret: stem.from + written.length,
  };
}
