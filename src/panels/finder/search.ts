/** One thing the finder can take you to. */
export interface Found {
  readonly kind: string;
  readonly label: string;
  /** Keys, a meaning or a summary, at the right. */
  readonly aside: string;
  /** Further words to be found by. */
  readonly words: readonly string[];
  readonly unavailable?: string;
  readonly go: () => void;
}

const split = (text: string) =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/** 0 if some word is nowhere; more when the label, or else some of the words, begins as typed. */
function score(one: Found, wanted: readonly string[]): number {
  const label = one.label.toLowerCase();
  const inLabel = split(one.label);
  const everywhere = [...inLabel, ...one.words.flatMap(split)];
  if (!wanted.every((word) => everywhere.some((known) => known.startsWith(word)))) return 0;
  if (label.startsWith(wanted.join(' '))) return 3;
  if (wanted.every((word) => inLabel.some((known) => known.startsWith(word)))) return 2;
  const phrase = wanted.join(' ');
  return one.words.some((words) => split(words).join(' ').startsWith(phrase)) ? 1.5 : 1;
}

/** The best first; things alike keep their order. Nothing typed: everything but functions. */
export function search(text: string, things: readonly Found[], most = 40): readonly Found[] {
  const wanted = split(text);
  if (wanted.length === 0) return things.filter(({ kind }) => kind !== 'function').slice(0, most);
  return things
    .map((one) => ({ one, points: score(one, wanted) - (one.unavailable ? 0.5 : 0) }))
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points)
    .slice(0, most)
    .map(({ one }) => one);
}
