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
  const [first] = choices.choices;
  const brightest = choices.choices.reduce((a, b) => (b.off > a.off ? b : a), first as Choice);
  const those = (standing: Choice['standing']) =>
    choices.choices.filter((one) => one.standing === standing).map(({ name }) => name);
  const [passed, unfit] = [those('passed'), those('unfit')];
  return [
    best
      ? words.cost.cheapestEnough(best.name, said('money', best.cost, writing), off(best))
      : words.cost.noneReaches(brightest.name, off(brightest)),
    ...(passed.length > 0 ? [words.cost.passedOver(listed(passed), passed.length)] : []),
    ...(unfit.length > 0 ? [words.cost.unfit(listed(unfit), unfit.length)] : []),
    words.cost.count(choices.choices.length),
  ];
}
