import { partsOf, sizeOf, type Term } from './term.ts';

export interface Abbreviated {
  readonly term: Term;
  /** What the letters stand for, in the order in which they come up. */
  readonly where: readonly { readonly letter: string; readonly is: Term }[];
}

/** A formula up to this size is read at one glance. */
const atOneGlance = 30;
/** A letter is worth its line from here on: this much less to read. */
const worthwhile = 3;
const letters = 'abcdefghk';

/** Gives what comes again and again in a long formula a letter, as one would on paper. */
export function abbreviate(whole: Term): Abbreviated {
  let term = whole;
  let where: Abbreviated['where'] = [];
  if (sizeOf(whole) <= atOneGlance) return { term, where };
  const taken = new Set(wordsIn(whole));
  for (const letter of [...letters].filter((one) => !taken.has(one))) {
    const again = mostRepeated([term, ...where.map(({ is }) => is)]);
    if (!again) break;
    const key = JSON.stringify(again);
    const short = (one: Term) => replaced(one, key, letter);
    term = short(term);
    where = [...where.map((one) => ({ ...one, is: short(one.is) })), { letter, is: again }];
  }
  return { term, where };
}

function wordsIn(term: Term): readonly string[] {
  return term.kind === 'word' ? [term.text] : partsOf(term).flatMap(wordsIn);
}

function mostRepeated(terms: readonly Term[]): Term | undefined {
  const counts = new Map<string, { readonly term: Term; count: number }>();
  const count = (term: Term): void => {
    const key = JSON.stringify(term);
    const known = counts.get(key);
    if (known) known.count += 1;
    else counts.set(key, { term, count: 1 });
    partsOf(term).forEach(count);
  };
  terms.forEach(count);
  const [best] = [...counts.values()]
    .map(({ term, count: times }) => ({ term, saved: (times - 1) * (sizeOf(term) - 1) - 2 }))
    .filter(({ term, saved }) => saved >= worthwhile && !isPower(term))
    .sort((a, b) => sizeOf(b.term) - sizeOf(a.term));
  return best?.term;
}

/** What is squared gets the letter, and not its square. */
const isPower = (term: Term) => term.kind === 'binary' && term.operator === '^';

function replaced(term: Term, key: string, letter: string): Term {
  if (JSON.stringify(term) === key) return { kind: 'word', text: letter };
  const inner = (part: Term) => replaced(part, key, letter);
  if (term.kind === 'call') return { ...term, of: term.of.map(inner) };
  if (term.kind === 'minus') return { ...term, of: inner(term.of) };
  if (term.kind === 'binary') return { ...term, left: inner(term.left), right: inner(term.right) };
  return term;
}
