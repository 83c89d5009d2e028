import type { Case, Fence, Typeset } from './typeset.ts';

const signs: Readonly<Record<string, string>> = {
  '·': 'times',
  '−': 'minus',
  '+': 'plus',
  '/': 'over',
  '=': 'equals',
  '≤': 'is at most',
  '≥': 'is at least',
  '<': 'is less than',
  '>': 'is more than',
  π: 'pi',
  Σ: 'the sum of',
};

const fences: Readonly<Record<Fence, (of: string) => string>> = {
  brackets: (of) => `open bracket ${of} close bracket`,
  size: (of) => `the size of ${of}`,
  floor: (of) => `${of} rounded down`,
  ceiling: (of) => `${of} rounded up`,
};

/** Mathematics in words, for those who hear it. */
export function spoken(set: Typeset): string {
  if (set.kind === 'row') return set.parts.map(spoken).join(' ').replaceAll(' ,', ',');
  if (set.kind === 'fraction') return fraction(set);
  if (set.kind === 'power') return `${spoken(set.base)} ${powered(set.exponent)}`;
  if (set.kind === 'logarithm') return `the logarithm to base ${set.base} of`;
  if (set.kind === 'root') return `the square root of ${spoken(set.of)}`;
  if (set.kind === 'fence') return fences[set.fence](spoken(set.of));
  if (set.kind === 'cases') return set.cases.map(spokenCase).join('; ');
  return signs[set.text] ?? set.text.replace('−', 'minus ');
}

/** Where more than a word stands above or below, it is said where the fraction begins and ends. */
function fraction({ over, under }: Extract<Typeset, { kind: 'fraction' }>): string {
  const words = `${spoken(over)} over ${spoken(under)}`;
  return 'text' in over && 'text' in under ? words : `the fraction ${words}, end of fraction,`;
}

function powered(exponent: Typeset): string {
  const written = spoken(exponent);
  return written === '2' ? 'squared' : `to the power of ${written}`;
}

const spokenCase = ({ is, when }: Case): string =>
  when ? `${spoken(is)} if ${spoken(when)}` : `${spoken(is)} otherwise`;
