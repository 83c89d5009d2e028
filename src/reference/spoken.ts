import type { Case, Fence, Typeset } from './typeset.ts';
import { words } from '../words/words.ts';

const signs: Readonly<Record<string, string>> = {
  '·': words.reference.times,
  '−': words.reference.minusSign,
  '+': words.reference.plus,
  '/': words.reference.overSign,
  '=': words.reference.equalsSign,
  '≤': words.reference.atMost,
  '≥': words.reference.atLeast,
  '<': words.reference.lessThan,
  '>': words.reference.moreThan,
  π: words.reference.pi,
  Σ: words.reference.sumOf,
};

const fences: Readonly<Record<Fence, (of: string) => string>> = {
  brackets: (of) => words.reference.brackets(of),
  size: (of) => words.reference.sizeOf(of),
  floor: (of) => words.reference.roundedDown(of),
  ceiling: (of) => words.reference.roundedUp(of),
};

/** Mathematics in words, for those who hear it. */
export function spoken(set: Typeset): string {
  if (set.kind === 'row') return set.parts.map(spoken).join(' ').replaceAll(' ,', ',');
  if (set.kind === 'fraction') return fraction(set);
  if (set.kind === 'power') return `${spoken(set.base)} ${powered(set.exponent)}`;
  if (set.kind === 'logarithm') return words.reference.logarithm(set.base);
  if (set.kind === 'root') return words.reference.squareRoot(spoken(set.of));
  if (set.kind === 'fence') return fences[set.fence](spoken(set.of));
  if (set.kind === 'cases') return set.cases.map(spokenCase).join('; ');
  return signs[set.text] ?? set.text.replace('−', words.reference.minus);
}

/** Where more than a word stands above or below, it is said where the fraction begins and ends. */
function fraction({ over, under }: Extract<Typeset, { kind: 'fraction' }>): string {
  const said = words.reference.over(spoken(over), spoken(under));
  return 'text' in over && 'text' in under ? said : words.reference.fraction(said);
}

function powered(exponent: Typeset): string {
  const written = spoken(exponent);
  return written === '2' ? words.reference.squared : words.reference.toPower(written);
}

const spokenCase = ({ is, when }: Case): string =>
  when ? words.reference.isIf(spoken(is), spoken(when)) : words.reference.isOtherwise(spoken(is));
