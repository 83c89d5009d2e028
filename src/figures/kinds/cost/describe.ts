import { verdictWords } from '../../../../functions/stops/verdictWords.ts';
import { words } from '../../../words/words.ts';
import type { Surroundings } from '../../figure.ts';
import { listed, said } from '../../kit/words.ts';
import { cheapestEnough, type Choice, type Choices } from './read.ts';

export function describeChoices(
  choices: Choices,
  { writing, tolerance }: Surroundings,
): readonly string[] {
  const off = (one: Choice) => verdictWords(one.off, tolerance);
  const best = cheapestEnough(choices);
  const brightest = choices.choices.reduce((a, b) => (b.off > a.off ? b : a));
  const left = choices.choices.filter(({ passedOver }) => passedOver);
  return [
    best
      ? words.cost.cheapestEnough(best.name, said('money', best.cost, writing), off(best))
      : words.cost.noneReaches(brightest.name, off(brightest)),
    ...(left.length === 0
      ? []
      : [words.cost.passedOver(listed(left.map(({ name }) => name)), left.length)]),
    words.cost.count(choices.choices.length),
  ];
}
