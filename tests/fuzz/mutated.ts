/** The next of evenly spread numbers from 0 to 1. */
export type Chance = () => number;

export const pick = <T>(list: readonly T[], next: Chance): T =>
  list[Math.floor(next() * list.length)]!;

const mutations: readonly ((text: string, odd: readonly string[], next: Chance) => string)[] = [
  (text, _, next) => text.slice(0, Math.floor(next() * text.length)),
  (text, odd, next) => replaceWord(text, pick(odd, next), next),
  (text, _, next) => replaceWord(text, String(Math.round((next() - 0.2) * 1000) / 10), next),
  (text, _, next) => {
    const at = Math.floor(next() * text.length);
    return text.slice(0, at) + String.fromCharCode(Math.floor(next() * 300)) + text.slice(at + 1);
  },
  (text, _, next) => {
    const lines = text.split('\n');
    const at = Math.floor(next() * lines.length);
    const other = pick(lines, next);
    lines.splice(at, next() < 0.5 ? 1 : 0, ...(next() < 0.5 ? [other] : []));
    return lines.join('\n');
  },
  (text, _, next) => text.replaceAll('\n', pick(['\r', '\r\n', ' ', ',', '\n\n'], next)),
  (text, _, next) => {
    const [from, to] = [next(), next()].map((place) => Math.floor(place * text.length));
    return text.slice(0, from) + text.slice(to);
  },
];

function replaceWord(text: string, by: string, next: Chance): string {
  const words = [...text.matchAll(/[^\s,]+/g)];
  if (words.length === 0) return by;
  const word = pick(words, next);
  return text.slice(0, word.index) + by + text.slice(word.index + word[0].length);
}

/** A text changed once to thrice: cut short, words for odd ones, lines doubled, letters and ends of lines. */
export function mutated(text: string, odd: readonly string[], next: Chance): string {
  let changed = text;
  for (let times = Math.ceil(next() * 3); times > 0; times -= 1)
    if (changed.trim() !== '') changed = pick(mutations, next)(changed, odd, next);
  return changed;
}
