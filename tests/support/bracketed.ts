type Leaf = string | ((...given: never[]) => string);
interface Branch {
  readonly [key: string]: Leaf | Branch | readonly Leaf[];
}

/** A language that is English in brackets: what a screen shows without them is not in the catalogue. */
export function bracketed<Said>(said: Said): Said {
  return inBrackets(said as Branch) as Said;
}

function inBrackets(said: Leaf | Branch | readonly Leaf[]): unknown {
  if (typeof said === 'string') return `[${said}]`;
  if (typeof said === 'function') return (...given: never[]) => `[${said(...given)}]`;
  if (Array.isArray(said)) return said.map(inBrackets);
  return Object.fromEntries(Object.entries(said).map(([key, inner]) => [key, inBrackets(inner)]));
}
